/** Plain SI records of a whole damper and of its force curve. Shaft speed and force are positive in compression. */
import type { CoefficientName } from '../restriction/coefficients.ts';
import type { ConvergedLift, FailedLift, FailureStatus, ShimUse, StackInput, StackShape, Theory } from '../types.ts';

export interface PortsInput {
  readonly count: number;
  /** Area of one port [m2]. */
  readonly area_m2: number;
  /** Hydraulic diameter of one port [m]. */
  readonly hydraulicDiameter_m: number;
  readonly length_m: number;
  /** Share of the circumference that they open to the shims; 1 when absent. */
  readonly coveredFraction?: number;
}

export interface BleedInput {
  readonly count: number;
  readonly diameter_m: number;
  readonly length_m: number;
  /** In the one hole; absent, the hole is free. */
  readonly needle?: NeedleInput;
}

export interface NeedleInput {
  /** Between opposite flanks [rad]. */
  readonly coneAngle_rad: number;
  /** From closed [m]. */
  readonly travel_m: number;
}

/** Notches in the rim of the face shim: slots over the whole seat land, as high as that shim is thick. */
export interface NotchesInput {
  readonly count: number;
  readonly width_m: number;
}

export interface ValveInput {
  readonly ports: PortsInput;
  readonly notches?: NotchesInput;
  readonly stack: StackInput & { readonly seat: NonNullable<StackInput['seat']> };
}

/** Clearance of the piston in its tube, past its band. */
export interface PistonBandInput {
  /** Half the difference of the diameters [m]. */
  readonly clearance_m: number;
  /** Along the tube [m]. */
  readonly length_m: number;
  /** Distance of the axes over the clearance: 0 concentric, 1 touching [-]. */
  readonly eccentricity: number;
}

/** A cone on a sharp seat under a spring. */
export interface PoppetInput {
  readonly seatDiameter_m: number;
  /** Between opposite flanks [rad]. */
  readonly coneAngle_rad: number;
  readonly rate_N_m: number;
  /** Force at rest, as its adjuster stands [N]. */
  readonly preload_N: number;
  /** Lift at its stop [m]. */
  readonly travel_m: number;
}

/** A rigid plate over ports under a light spring. */
export interface CheckInput {
  readonly ports: PortsInput;
  /** Land on which the plate lies. */
  readonly seat: { readonly innerRadius_m: number; readonly outerRadius_m: number };
  readonly rate_N_m: number;
  /** Force at rest [N]. */
  readonly preload_N: number;
  /** Lift at its stop [m]. */
  readonly travel_m: number;
}

/** The valves between compression chamber and reservoir. */
export interface BaseInput {
  readonly compression: ValveInput;
  readonly bleed?: BleedInput;
  readonly poppet?: PoppetInput;
  /** Lets oil back in rebound. */
  readonly refill: CheckInput;
}

/** A plunger that enters a cup at one end of the stroke. */
export interface HydraulicStopInput {
  readonly end: 'compression' | 'rebound';
  /** Of the stroke, over which the plunger is in the cup [m]. */
  readonly length_m: number;
  readonly plungerDiameter_m: number;
  /** Half the difference of the diameters [m]. */
  readonly clearance_m: number;
}

/** F(v) = [F_c + (F_b - F_c) exp(-(v/v_s)^2)] sign(v) + c v. */
export interface FrictionInput {
  /** Of slow sliding, F_c [N]. */
  readonly sliding_N: number;
  /** F_b [N]. */
  readonly breakaway_N: number;
  /** v_s [m/s]. */
  readonly stribeckSpeed_m_s: number;
  /** c [N s/m]. */
  readonly viscous_N_s_m: number;
}

/** The gas as it stands at the stroke position of the curve. */
export interface GasInput {
  /** Absolute [Pa]. */
  readonly absolutePressure_Pa: number;
  readonly volume_m3: number;
  readonly polytropicExponent: number;
  /** Volume that leaves the gas per metre of compression [m2]: the rod, or the tube of a fork leg. */
  readonly area_m2: number;
  /** Pressure that the friction of a floating piston holds [Pa]; 0 without one. */
  readonly separatorFriction_Pa: number;
}

export interface FluidState {
  readonly density_kg_m3: number;
  readonly dynamicViscosity_Pa_s: number;
}

export type Layout = 'monotube' | 'monotube-reservoir' | 'twin-tube' | 'cartridge';

export interface DamperInput {
  readonly layout: Layout;
  readonly boreDiameter_m: number;
  readonly rodDiameter_m: number;
  readonly travel_m: number;
  /** Where the piston stands, from full extension [m]. */
  readonly stroke_m: number;
  /** Length of oil left in each chamber at its end of the stroke [m]. */
  readonly endClearance_m: number;
  readonly friction: FrictionInput;
  /** Piston stack of the compression stroke; of a cartridge, its mid-valve. */
  readonly compression: ValveInput;
  readonly rebound: ValveInput;
  /** Through piston or rod. */
  readonly bleed: BleedInput;
  /** Absent, the band seals. */
  readonly pistonBand?: PistonBandInput;
  /** Every layout but the monotube has one. */
  readonly base?: BaseInput;
  readonly hydraulicStop?: HydraulicStopInput;
  readonly fluid: FluidState;
  readonly gas: GasInput;
}

/** One stack followed through rising pressure across its shims: what a drawing needs to bend it. */
export interface StackTable {
  readonly theory: Theory;
  /** Pressures across the shims that converged, strictly rising [Pa]. */
  readonly pressure_Pa: readonly number[];
  readonly points: readonly ConvergedLift[];
  /** Pressures that did not solve; the table ends before the first of them. */
  readonly failures: readonly FailedLift[];
  /** Where the stack begins to ruffle; large deflection only. Beyond it the model is out of its proven range. */
  readonly waves?: WavesOnset;
  /** What each shim bears of swinging between closed and the pressures of the table. */
  readonly life?: StackLife;
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
  /** force - gas force - friction: what the oil does [N]. */
  readonly dampingForce_N: number;
  /** Absolute chamber pressures [Pa]. */
  readonly compressionPressure_Pa: number;
  readonly reboundPressure_Pa: number;
  readonly gasPressure_Pa: number;
  /** Pressure drop over the piston, >= 0 [Pa]. */
  readonly pistonDrop_Pa: number;
  /** Part of it across the shims of the working stack [Pa]. */
  readonly shimPressure_Pa: number;
  /** Opening of the working stack at its seat [m]. */
  readonly seatOpening_m: number;
  /** Their sum is the displaced flow, or less where `airRelease` limits the drop. */
  readonly flows: PathFlows;
  /** The lowest chamber would fall below the air-release pressure; the drop and the force are limited there. */
  readonly airRelease: boolean;
  /** Gas pressure (absolute) that would just prevent it [Pa]. */
  readonly gasPressureNeeded_Pa: number;
  /** The bleed cavitates: less passes than is counted, and the force is higher. Absent where nothing flows through it. */
  readonly bleedCavitates?: boolean;
  /** Absent when the strength of no shim is known. */
  readonly life?: PointLife;
  /** Present when asked for. */
  readonly band?: ForceBand | FailedBand;
}

/** Volume flow of each path [m3/s]. */
export interface PathFlows {
  /** With what the notches let through. */
  readonly ports_m3_s: number;
  readonly bleed_m3_s: number;
  /** Past the piston band, with what the moving piston drags along. */
  readonly leakage_m3_s: number;
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
  readonly theory: Theory;
  readonly points: readonly (ForcePoint | FailedForce)[];
  readonly stacks: { readonly compression: StackTable; readonly rebound: StackTable };
}

export type { StackShape };
