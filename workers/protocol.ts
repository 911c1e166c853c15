/**
 * What goes over the wire between the page and the solver's worker: types and the guards that tell them apart.
 * Every request has a run id; its reply carries the same one.
 */
import type { Project } from '../src/model/project.ts';
import type {
  ChassisReading,
  FailedBand,
  FitOutcome,
  ForceBand,
  ForceCurve,
  FoundByStart,
  InputFault,
  LiftOptions,
  LiftResult,
  PresentStacks,
  StackInput,
  StackSensitivity,
  StackTheories,
  TheoryChoice,
  ToleranceReading,
  ToleranceSamples,
  WantedCurve,
  WEIGHT_SPREADS,
} from '../src/solver/index.ts';
import type {
  CycleReading,
  CycleRequest,
  HysteresisRequest,
  HysteresisResult,
  TraceRequest,
  TraceResult,
} from './cycle-protocol.ts';
import type {
  ChassisRequest,
  FitChoicesRequest,
  FitChoicesResult,
  FitRequest,
  SearchPresentRequest,
  SearchStartRequest,
  SensitivityRequest,
  ToleranceReadingRequest,
  ToleranceSamplesRequest,
  WantedCurveRequest,
} from './page-jobs.ts';

/** Goes up with every change of this file that an older page or worker would misread. */
export const PROTOCOL_VERSION = 11;

export interface ForceCurvesRequest {
  readonly project: Project;
  readonly buildIds: readonly string[];
  /** Positive in compression [m/s]. */
  readonly speeds_m_s: readonly number[];
  readonly theory: TheoryChoice;
  /** Where the piston stands, from full extension [m]; when absent, mid-stroke. */
  readonly stroke_m?: number;
  /** With the fitted values that are kept with the builds, in place of the physical ones. */
  readonly fitted?: boolean;
}

/** The bands of curves that the page has: which takes several times as long as a curve, and is a fraction of its size. */
export type ForceBandsRequest = ForceCurvesRequest;

/** The forces alone, for sweeps: without stacks and what else a curve has. */
export type ForcesRequest = ForceCurvesRequest;

/** By speed, as asked for; null where a speed did not solve. */
export interface SpeedForces {
  /** Positive in compression [m/s]. */
  readonly shaftSpeed_m_s: readonly number[];
  /** Whole force at the shaft [N]. */
  readonly force_N: readonly (number | null)[];
  readonly gasForce_N: readonly (number | null)[];
  /** Why some did not solve, each once. */
  readonly reasons: readonly string[];
  readonly theories: StackTheories;
}

export type BuildForces =
  | { readonly status: 'solved'; readonly forces: SpeedForces }
  | { readonly status: 'failed'; readonly error: WireError };

export interface ForcesResult {
  /** By build id; one entry for each build asked for. */
  readonly builds: Readonly<Record<string, BuildForces>>;
}

/** Why a build has no curve, or a job no result. `fault` points at the input when the input is to blame. */
export interface WireError {
  readonly code: 'invalid-input' | 'solver-failed';
  readonly message: string;
  readonly fault?: InputFault;
}

export type BuildCurve =
  | { readonly status: 'solved'; readonly curve: ForceCurve }
  | { readonly status: 'failed'; readonly error: WireError };

export interface ForceCurvesResult {
  /** By build id; one entry for each build asked for. */
  readonly curves: Readonly<Record<string, BuildCurve>>;
}

/** What the ranges of all coefficients leave open at one speed; what each does alone stays with the worker. */
export type SpeedBand = Omit<ForceBand, 'parts'> | FailedBand;

export type BuildBands =
  /** By speed, as asked for; null where the force itself did not solve. */
  | { readonly status: 'solved'; readonly bands: readonly (SpeedBand | null)[] }
  | { readonly status: 'failed'; readonly error: WireError };

export interface ForceBandsResult {
  /** By build id; one entry for each build asked for. */
  readonly builds: Readonly<Record<string, BuildBands>>;
}

export interface LiftRequest {
  readonly stack: StackInput;
  readonly pressures_Pa: readonly number[];
  readonly options: LiftOptions;
}

export type BuildCycle =
  | { readonly status: 'finished'; readonly reading: CycleReading }
  | { readonly status: 'unfinished'; readonly reason: string }
  | { readonly status: 'failed'; readonly error: WireError };

export interface CycleResult {
  /** By build id; one entry for each build asked for. */
  readonly cycles: Readonly<Record<string, BuildCycle>>;
}

/** Viscosities at 40 °C under which oils of one weight number are sold. */
export type WeightSpread = (typeof WEIGHT_SPREADS)[number];

export interface WeightSpreadsResult {
  readonly spreads: readonly WeightSpread[];
}

export type Job =
  | { readonly kind: 'force-curves'; readonly request: ForceCurvesRequest }
  | { readonly kind: 'force-bands'; readonly request: ForceBandsRequest }
  | { readonly kind: 'forces'; readonly request: ForcesRequest }
  | { readonly kind: 'fit'; readonly request: FitRequest }
  | { readonly kind: 'fit-choices'; readonly request: FitChoicesRequest }
  | { readonly kind: 'lift'; readonly request: LiftRequest }
  | { readonly kind: 'cycle'; readonly request: CycleRequest }
  | { readonly kind: 'search-start'; readonly request: SearchStartRequest }
  | { readonly kind: 'search-present'; readonly request: SearchPresentRequest }
  | { readonly kind: 'chassis'; readonly request: ChassisRequest }
  | { readonly kind: 'wanted-curve'; readonly request: WantedCurveRequest }
  | { readonly kind: 'trace'; readonly request: TraceRequest }
  | { readonly kind: 'hysteresis'; readonly request: HysteresisRequest }
  | { readonly kind: 'sensitivity'; readonly request: SensitivityRequest }
  | { readonly kind: 'tolerance-samples'; readonly request: ToleranceSamplesRequest }
  | { readonly kind: 'tolerance-reading'; readonly request: ToleranceReadingRequest }
  | { readonly kind: 'weight-spreads' };

export interface JobResults {
  readonly 'force-curves': ForceCurvesResult;
  readonly fit: FitOutcome;
  readonly 'fit-choices': FitChoicesResult;
  readonly 'force-bands': ForceBandsResult;
  readonly forces: ForcesResult;
  readonly lift: LiftResult;
  readonly cycle: CycleResult;
  readonly 'search-start': FoundByStart;
  readonly 'search-present': PresentStacks;
  readonly chassis: ChassisReading;
  readonly 'wanted-curve': WantedCurve;
  readonly trace: TraceResult;
  readonly hysteresis: HysteresisResult;
  readonly sensitivity: StackSensitivity;
  readonly 'tolerance-samples': ToleranceSamples;
  readonly 'tolerance-reading': ToleranceReading;
  readonly 'weight-spreads': WeightSpreadsResult;
}

export interface WireRequest {
  readonly runId: number;
  readonly job: Job;
  /** One 32-bit whole number in shared memory; not 0 once the page wants the run to stop. */
  readonly stopFlag?: SharedArrayBuffer;
}

export type WireReply = { readonly runId: number } & (
  | { readonly status: 'done'; readonly result: JobResults[Job['kind']] }
  | { readonly status: 'stopped' }
  | { readonly status: 'failed'; readonly error: WireError }
);

export interface Greeting {
  readonly protocol: number;
}

/** From 0 to 1, how much of the run is done. */
export type Progress = (fraction: number) => void;

/** What the worker exposes. */
export interface SolverApi {
  /** First call of a page; `lifeline` names a lock that the worker holds for as long as it lives. */
  hello(lifeline: string): Promise<Greeting>;
  run(request: WireRequest, onProgress: Progress): Promise<WireReply>;
}

/**
 * How a request ends without a result.
 * - `invalid-input`: the solver refused the input; `fault` says where and why.
 * - `solver-failed`: the solver threw something else, which is a fault of ours.
 * - `superseded`: a newer request took its channel. `cancelled`: its signal was aborted. `closed`: the client was closed.
 * - `worker-crashed`: the worker failed or went away while the request was waiting or running.
 * - `unclonable`: the request or its reply cannot be sent between threads.
 * - `bad-reply`: the worker answered something that is not the reply to this request.
 * - `protocol-mismatch`: page and worker are of different releases.
 */
export type SolverErrorCode =
  | WireError['code']
  | 'superseded'
  | 'cancelled'
  | 'closed'
  | 'worker-crashed'
  | 'unclonable'
  | 'bad-reply'
  | 'protocol-mismatch';

export type SolverStatus = {
  readonly state: 'starting' | 'ready' | 'crashed' | 'protocol-mismatch' | 'closed';
  /** A sentence for a person. */
  readonly message: string;
};

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

export const isGreeting = (value: unknown): value is Greeting => isRecord(value) && typeof value.protocol === 'number';

export function isReplyTo(runId: number, value: unknown): value is WireReply {
  if (!isRecord(value) || value.runId !== runId) return false;
  if (value.status === 'failed') return isRecord(value.error) && typeof value.error.message === 'string';
  return value.status === 'stopped' || (value.status === 'done' && isRecord(value.result));
}

export const isInputFault = (value: unknown): value is InputFault =>
  isRecord(value) && ['code', 'path', 'got', 'wanted'].every((key) => typeof value[key] === 'string');

/** The page takes the solver's types from here, never from the solver. */
export type * from '../src/solver/index.ts';
export type * from './cycle-protocol.ts';
export type * from './page-jobs.ts';
export type { Project };
