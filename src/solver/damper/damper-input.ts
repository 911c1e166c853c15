/** Plain SI records of what goes into a damper: its sizes, valves, oil and gas. */
import type { StackInput } from '../types.ts';

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
  /** Of a fork leg at its seal, on which the air acts; absent, what sinks in is the rod [m]. */
  readonly legDiameter_m?: number;
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
