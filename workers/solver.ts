/** What the worker needs of the solver: the same functions that the command line calls. */
import type {
  BuildCycle,
  ChassisQuestion,
  ChassisReading,
  CycleRequest,
  FitChoice,
  FitOutcome,
  FitRequest,
  ForceCurve,
  ForceCurvesRequest,
  ForcesRequest,
  FoundByStart,
  HysteresisRequest,
  HysteresisResult,
  LiftOptions,
  LiftResult,
  PresentStacks,
  Project,
  RatioWish,
  Samples,
  SearchPresentRequest,
  SearchStartRequest,
  SensitivityQuestion,
  SolveHooks,
  SpeedForces,
  StackInput,
  StackSensitivity,
  ToleranceReading,
  ToleranceSamples,
  ToleranceSamplesQuestion,
  TraceRequest,
  TraceResult,
  WantedCurve,
  WeightSpread,
} from './protocol.ts';

/** What is asked of every build alike. */
type CurveOptions = Omit<ForceCurvesRequest, 'project' | 'buildIds'>;
type WithBands = { readonly bands?: boolean };

export interface Solver {
  forceCurveForBuild(
    project: Project,
    buildId: string,
    options: CurveOptions & WithBands,
    hooks: SolveHooks,
  ): ForceCurve;
  forcesForBuild(
    project: Project,
    buildId: string,
    options: Omit<ForcesRequest, 'project' | 'buildIds'>,
    hooks: SolveHooks,
  ): SpeedForces;
  cycleForBuild(
    project: Project,
    buildId: string,
    options: Pick<CycleRequest, 'drive' | 'theory'>,
    hooks: SolveHooks,
  ): Exclude<BuildCycle, { status: 'failed' }>;
  fitChoicesForBuild(project: Project, buildId: string): readonly FitChoice[];
  fitMeasured(
    project: Project,
    buildId: string,
    options: Omit<FitRequest, 'project' | 'buildId'>,
    hooks: SolveHooks,
  ): FitOutcome;
  searchStart(
    project: Project,
    request: SearchStartRequest['request'],
    settings: SearchStartRequest['settings'],
    start: number,
    hooks: SolveHooks,
  ): FoundByStart;
  presentStacks(
    project: Project,
    request: SearchPresentRequest['request'],
    theory: SearchPresentRequest['theory'],
  ): PresentStacks;
  chassisReading(project: Project, question: ChassisQuestion): ChassisReading;
  wantedCurve(project: Project, wish: RatioWish): WantedCurve;
  driveOfTrace(request: TraceRequest): TraceResult;
  hysteresisOfLoops(request: HysteresisRequest): HysteresisResult;
  sensitivityForBuild(
    project: Project,
    buildId: string,
    question: SensitivityQuestion,
    hooks: SolveHooks,
  ): StackSensitivity;
  toleranceSamples(
    project: Project,
    buildId: string,
    question: ToleranceSamplesQuestion,
    hooks: SolveHooks,
  ): ToleranceSamples;
  readTolerance(speeds_m_s: readonly number[], solved: readonly Samples[], seed: number): ToleranceReading;
  readonly weightSpreads: readonly WeightSpread[];
  solveLift(stack: StackInput, pressures_Pa: readonly number[], options: LiftOptions, hooks: SolveHooks): LiftResult;
}
