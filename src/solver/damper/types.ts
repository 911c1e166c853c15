/** Plain SI records of the force curve of a whole damper. Shaft speed and force are positive in compression. */
import type { CoefficientName } from '../restriction/coefficients.ts';
import type {
  ConvergedLift,
  FailedLift,
  FailureStatus,
  Fallback,
  LeavesRound,
  ShimUse,
  Theory,
  TheoryChoice,
} from '../types.ts';
import type { CavitatingPath, Jet } from '../valve/throats.ts';

export type * from './damper-input.ts';

/** One stack followed through rising pressure across its shims: what a drawing needs to bend it. */
export interface StackTable {
  /** The one that gave the table. */
  readonly theory: Theory;
  /** Of large deflection, where it does not serve up to the largest flow, which is why `auto` would leave it. */
  readonly leavesRound?: LeavesRound;
  /** Of `auto`, where it would have left large deflection and could not. */
  readonly fallback?: Fallback;
  /** Pressures across the shims that converged, strictly rising [Pa]. */
  readonly pressure_Pa: readonly number[];
  readonly points: readonly ConvergedLift[];
  /** Pressures that did not solve; the table ends before the first of them. */
  readonly failures: readonly FailedLift[];
  /** Where the stack begins to ruffle; large deflection only. Beyond it the model is out of its proven range. */
  readonly waves?: WavesOnset;
  /** What each shim bears of swinging between closed and the pressures of the table. */
  readonly life?: StackLife;
  /** What each shim bears along its radius at the pressures of the table. */
  readonly stresses?: StackStresses;
}

export interface StackStresses {
  /**
   * Per pressure of the table and single shim: Tresca's equivalent stress on the face where it is greater, one number a node of
   * its shape [Pa].
   */
  readonly equivalent_Pa: readonly (readonly Float64Array[])[];
  /** Per single shim; null where the strength of its metal is not known [Pa]. */
  readonly yield_Pa: readonly (number | null)[];
}

export interface StackLife {
  /** Per single shim one use a pressure of the table; null for a shim whose strength is not known. */
  readonly shims: readonly (readonly ShimUse[] | null)[];
}

export interface WorstShim {
  /** Share of the limit that is used, the reciprocal of the reserve [-]. */
  readonly use: number;
  /** Its place in the stack, 0 next to the piston. */
  readonly shim: number;
}

/** The shims of the working stack that have the least reserve. */
export interface PointLife {
  readonly fatigue: WorstShim;
  readonly yield: WorstShim;
  /** A shim yields somewhere: it will not come back flat. */
  readonly takesSet: boolean;
  /** Shims left out of it, since the strength of their metal is not known. */
  readonly unknownShims: number;
}

/** `none`: stable in the whole table. `unknown`: the stability of a state could not be settled. */
export type WavesOnset =
  | { readonly status: 'found'; readonly pressure_Pa: number; readonly waves: number }
  | { readonly status: 'none' }
  | { readonly status: 'unknown' };

export interface ForcePoint {
  readonly status: 'converged';
  /** + in compression [m/s]. */
  readonly shaftSpeed_m_s: number;
  /** Whole force at the shaft, with gas force and friction [N]. */
  readonly force_N: number;
  readonly gasForce_N: number;
  readonly frictionForce_N: number;
  /** What the oil does: force - gas force - friction - stop [N]. */
  readonly dampingForce_N: number;
  /** Of the hydraulic stop; 0 outside it and without one [N]. */
  readonly stopForce_N: number;
  /** Absolute chamber pressures [Pa]. */
  readonly compressionPressure_Pa: number;
  readonly reboundPressure_Pa: number;
  readonly gasPressure_Pa: number;
  /** Pressure drop over the piston, >= 0 [Pa]. */
  readonly pistonDrop_Pa: number;
  /**
   * Mean pressure on the pressure zone of the working stack of the piston: what bends it, and finds it in its table. The share of
   * the circumference that the ports open times the pressure across the shims, and what the jets of the ports add [Pa].
   */
  readonly shimPressure_Pa: number;
  /** Opening of the working stack at its seat [m]. */
  readonly seatOpening_m: number;
  /** Through the piston. Their sum is the displaced flow, or less where `airRelease` limits the drop. */
  readonly flows: PathFlows;
  /** The valves between compression chamber and reservoir; absent in a layout without them. */
  readonly base?: BasePoint;
  /** The lowest chamber would fall below the air-release pressure; it is held there, and the force with it. */
  readonly airRelease: boolean;
  /** Where a chamber is held there: how fast a void opens in it; beside a floating piston that stands still, in that next to the gas [m3/s]. */
  readonly voids_m3_s?: Readonly<Partial<Record<'compression' | 'rebound' | 'reservoir', number>>>;
  /** Gas pressure (absolute) that would just prevent it [Pa]. */
  readonly gasPressureNeeded_Pa: number;
  /** The bleed cavitates: less passes than is counted, and the force is higher. Absent where nothing flows through it. */
  readonly bleedCavitates?: boolean;
  /** Paths through the piston that cavitate: less passes there than is counted, and the force is higher. Absent where none does. */
  readonly cavitating?: readonly CavitatingPath[];
  /** The jets through the piston; absent where none forms. */
  readonly jets?: readonly Jet[];
  /** Absent when the strength of no shim is known. */
  readonly life?: PointLife;
  /** Present when asked for. */
  readonly band?: ForceBand | FailedBand;
}

/** In compression the stack and what lies beside it, in rebound the refill check. */
export interface BasePoint {
  /** Without sign [Pa]. */
  readonly drop_Pa: number;
  /** As that of the piston; 0 in rebound, where no stack works [Pa]. */
  readonly shimPressure_Pa: number;
  /** Opening of the stack, in rebound of the check [m]. */
  readonly seatOpening_m: number;
  readonly flows: PathFlows;
  /** Paths that cavitate; absent where none does. */
  readonly cavitating?: readonly CavitatingPath[];
  /** As those of the piston. */
  readonly jets?: readonly Jet[];
  /** Of its stack. */
  readonly life?: PointLife;
}

/** Volume flow of each path [m3/s]. */
export interface PathFlows {
  /** With what the notches let through. */
  readonly ports_m3_s: number;
  readonly bleed_m3_s: number;
  /** Past the piston band, with what the moving piston drags along. */
  readonly leakage_m3_s: number;
  /** Of a base valve: past its spring-loaded cone in compression, through its refill check in rebound. */
  readonly poppet_m3_s?: number;
  readonly check_m3_s?: number;
}

/** How far the force may lie from its value because the coefficients are known to a range only. */
export interface ForceBand {
  readonly status: 'converged';
  readonly low_N: number;
  readonly high_N: number;
  /** The coefficient whose range moves the force most; absent where none moves it. */
  readonly mostFrom?: CoefficientName;
  readonly parts: readonly BandPart[];
}

/** What the range of one coefficient does alone, the others at their values: both >= 0 [N]. */
export interface BandPart {
  readonly coefficient: CoefficientName;
  readonly down_N: number;
  readonly up_N: number;
}

/** At one end of a range the damper has no state. */
export interface FailedBand {
  readonly status: FailureStatus | 'beyond-table';
  readonly reason: string;
}

export interface FailedForce {
  readonly status: FailureStatus | 'beyond-table';
  readonly shaftSpeed_m_s: number;
  readonly reason: string;
}

export interface ForceCurve {
  /** As it was asked for; the tables of the stacks say which one gave each. */
  readonly theory: TheoryChoice;
  readonly points: readonly (ForcePoint | FailedForce)[];
  readonly stacks: StackTables;
}

/** The stacks of a damper: of the piston in each direction, and of the base valve where there is one. */
export interface StackTables {
  readonly compression: StackTable;
  readonly rebound: StackTable;
  readonly base?: StackTable;
}

export type StackPlace = keyof StackTables;

/** Which theory gave each stack. */
export interface StackTheories {
  readonly compression: Theory;
  readonly rebound: Theory;
  readonly base?: Theory;
}
