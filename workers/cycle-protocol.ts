/** What is asked about a damper driven over time, and what is read off its run. */
import type { Project } from '../src/model/project.ts';
import type {
  ChamberExtremes,
  CycleEnergy,
  ForceLoop,
  HysteresisBothWays,
  Integration,
  PeakForces,
  Settling,
  SineDrive,
  SpeedLoop,
  StackTheories,
  TheoryChoice,
  TraceDrive,
} from '../src/solver/index.ts';

export interface CycleRequest {
  readonly project: Project;
  readonly buildIds: readonly string[];
  readonly drive: SineDrive | TraceDrive;
  readonly theory: TheoryChoice;
}

/** A displacement trace as it was written, for the damper that it is to drive. */
export interface TraceRequest {
  readonly text: string;
  readonly travel_m: number;
}

export interface TraceResult {
  readonly drive: TraceDrive;
}

/** At a speed of the person's, off loops that the page has. */
export interface HysteresisRequest {
  readonly loops: readonly SpeedLoop[];
  /** Above 0. */
  readonly speed_m_s: number;
}

export interface HysteresisResult {
  /** Loop by loop. */
  readonly read: readonly HysteresisBothWays[];
}

/** What a page shows of a run: the last cycle as a loop, or the whole of a trace, and what a test bench reads off it. */
export interface CycleReading {
  readonly theories: StackTheories;
  readonly loop: ForceLoop;
  readonly peaks: PeakForces;
  /** At half the speed that both directions reach. */
  readonly hysteresis: HysteresisBothWays;
  readonly energy: CycleEnergy;
  /** Mean power that becomes heat [W]. */
  readonly heat_W: number;
  /** Rise of temperature a minute without any cooling [K/min]. */
  readonly warming_K_min: number;
  readonly chambers: Readonly<Record<string, ChamberExtremes>>;
  readonly settling?: Settling;
  readonly integration: Integration;
}
