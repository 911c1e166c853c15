/**
 * The page's side of the solver, and the only way for it to get numbers. Every promise settles: with a result, or with a
 * SolverError whose code says why there is none.
 */
import { Dispatcher } from './dispatcher.ts';
import type {
  ChassisReading,
  ChassisRequest,
  CycleRequest,
  CycleResult,
  FitChoicesRequest,
  FitChoicesResult,
  FitOutcome,
  FitRequest,
  ForceBandsRequest,
  ForceBandsResult,
  ForceCurvesRequest,
  ForceCurvesResult,
  ForcesRequest,
  ForcesResult,
  FoundByStart,
  HysteresisRequest,
  HysteresisResult,
  Job,
  JobResults,
  LiftRequest,
  LiftResult,
  PresentStacks,
  SearchPresentRequest,
  SearchStartRequest,
  SensitivityRequest,
  SolverStatus,
  StackSensitivity,
  ToleranceReading,
  ToleranceReadingRequest,
  ToleranceSamples,
  ToleranceSamplesRequest,
  TraceRequest,
  TraceResult,
  WantedCurve,
  WantedCurveRequest,
  WeightSpreadsResult,
  WireReply,
} from './protocol.ts';
import { SolverError } from './solver-error.ts';
import { spawnSolverWorker } from './spawn.ts';
import { type CallOptions, createTicket } from './ticket.ts';
import type { WorkerLike } from './worker-link.ts';

export interface SolverClientOptions {
  readonly spawn?: () => WorkerLike;
  /** Called at every change of the worker's state, with a sentence for a person. */
  readonly onStatus?: (status: SolverStatus) => void;
  /** How long a run that nobody wants any more may take to end before its worker is replaced [ms]. */
  readonly graceMs?: number;
  /** Whether a running request can be asked to stop through shared memory; by default, where the browser allows it. */
  readonly sharedMemory?: boolean;
}

export interface SolverClient {
  /** Force curves of some builds of a project; a build that cannot be solved has its own error. @throws SolverError */
  forceCurves(request: ForceCurvesRequest, options?: CallOptions): Promise<ForceCurvesResult>;
  /** Forces of some builds of a project alone; a build that cannot be solved has its own error. @throws SolverError */
  forces(request: ForcesRequest, options?: CallOptions): Promise<ForcesResult>;
  /** The bands of such curves, speed by speed; a build that cannot be solved has its own error. @throws SolverError */
  forceBands(request: ForceBandsRequest, options?: CallOptions): Promise<ForceBandsResult>;
  /** Builds driven over time; a build that cannot be solved has its own error. @throws SolverError */
  cycles(request: CycleRequest, options?: CallOptions): Promise<CycleResult>;
  /** What the chassis of a project does with curves that the page has. @throws SolverError */
  chassis(request: ChassisRequest, options?: CallOptions): Promise<ChassisReading>;
  /** The forces that damping ratios ask for. @throws SolverError */
  wantedCurve(request: WantedCurveRequest, options?: CallOptions): Promise<WantedCurve>;
  /** A motion out of the text of a trace. @throws SolverError whose fault names line and column */
  trace(request: TraceRequest, options?: CallOptions): Promise<TraceResult>;
  /** The hysteresis of loops that the page has, at a speed of the person's. @throws SolverError */
  hysteresis(request: HysteresisRequest, options?: CallOptions): Promise<HysteresisResult>;
  /** How far oils of one weight number differ. @throws SolverError */
  weightSpreads(options?: CallOptions): Promise<WeightSpreadsResult>;
  /** Coefficients of a build fitted to its measurements. @throws SolverError */
  fit(request: FitRequest, options?: CallOptions): Promise<FitOutcome>;
  /** What a fit of a build may change. @throws SolverError */
  fitChoices(request: FitChoicesRequest, options?: CallOptions): Promise<FitChoicesResult>;
  /** What a search begins from. @throws SolverError */
  searchPresent(request: SearchPresentRequest, options?: CallOptions): Promise<PresentStacks>;
  /** One start of a search for stacks. @throws SolverError */
  searchStart(request: SearchStartRequest, options?: CallOptions): Promise<FoundByStart>;
  /** What each shim of one stack of a build does to the force. @throws SolverError */
  sensitivity(request: SensitivityRequest, options?: CallOptions): Promise<StackSensitivity>;
  /** Some samples of a build whose parts scatter. @throws SolverError */
  toleranceSamples(request: ToleranceSamplesRequest, options?: CallOptions): Promise<ToleranceSamples>;
  /** The band and the shares that such samples say. @throws SolverError */
  toleranceReading(request: ToleranceReadingRequest, options?: CallOptions): Promise<ToleranceReading>;
  /** Lift of one stack at given pressures. @throws SolverError */
  lift(request: LiftRequest, options?: CallOptions): Promise<LiftResult>;
  /** Ends the worker; whatever is not done rejects with `closed`. */
  close(): void;
}

/** Long enough for the curves of a usual project to end by themselves, short enough not to be felt as a stall. */
const GRACE_MS = 150;

export function createSolverClient(options: SolverClientOptions = {}): SolverClient {
  const sharedMemory = options.sharedMemory ?? globalThis.crossOriginIsolated === true;
  const dispatcher = new Dispatcher({
    spawn: options.spawn ?? spawnSolverWorker,
    onStatus: options.onStatus ?? (() => {}),
    graceMs: options.graceMs ?? GRACE_MS,
    nameLifeline,
  });
  let lastRunId = 0;
  const ask = async <K extends Job['kind']>(job: Job & { kind: K }, call: CallOptions = {}): Promise<JobResults[K]> => {
    lastRunId += 1;
    const ticket = createTicket(lastRunId, job, call, sharedMemory);
    const cancel = () => dispatcher.drop(ticket, 'cancelled', 'The calculation was cancelled.');
    call.signal?.addEventListener('abort', cancel);
    try {
      if (call.signal?.aborted) cancel();
      else dispatcher.submit(ticket);
      return resultOf(await ticket.promise) as JobResults[K];
    } finally {
      call.signal?.removeEventListener('abort', cancel);
    }
  };
  return {
    forceCurves: (request, call) => ask({ kind: 'force-curves', request }, call),
    forceBands: (request, call) => ask({ kind: 'force-bands', request }, call),
    forces: (request, call) => ask({ kind: 'forces', request }, call),
    cycles: (request, call) => ask({ kind: 'cycle', request }, call),
    chassis: (request, call) => ask({ kind: 'chassis', request }, call),
    wantedCurve: (request, call) => ask({ kind: 'wanted-curve', request }, call),
    trace: (request, call) => ask({ kind: 'trace', request }, call),
    hysteresis: (request, call) => ask({ kind: 'hysteresis', request }, call),
    weightSpreads: (call) => ask({ kind: 'weight-spreads' }, call),
    fit: (request, call) => ask({ kind: 'fit', request }, call),
    fitChoices: (request, call) => ask({ kind: 'fit-choices', request }, call),
    searchPresent: (request, call) => ask({ kind: 'search-present', request }, call),
    searchStart: (request, call) => ask({ kind: 'search-start', request }, call),
    sensitivity: (request, call) => ask({ kind: 'sensitivity', request }, call),
    toleranceSamples: (request, call) => ask({ kind: 'tolerance-samples', request }, call),
    toleranceReading: (request, call) => ask({ kind: 'tolerance-reading', request }, call),
    lift: (request, call) => ask({ kind: 'lift', request }, call),
    close: () => dispatcher.close(),
  };
}

const nameLifeline = (): string => `shimwright-solver-${crypto.getRandomValues(new Uint32Array(4)).join('-')}`;

function resultOf(reply: WireReply): JobResults[Job['kind']] {
  if (reply.status === 'done') return reply.result;
  if (reply.status === 'stopped') throw new SolverError('cancelled', 'The calculation was stopped.');
  throw new SolverError(reply.error.code, reply.error.message, reply.error.fault);
}

export type { CallOptions, SolverStatus, WorkerLike };
export { SolverError };
