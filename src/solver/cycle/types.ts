/**
 * A damper over time: chambers of oil that compresses, in a tree that hangs on the gas. Lengths of stroke count from full extension;
 * speed, force and flow towards the gas are positive in compression. Pressures are absolute.
 */
import type { AeratedOil } from '../fluid/bulk-modulus.ts';
import type { StiffStatus } from '../numeric/stiff-types.ts';
import type { FlowTable } from './flow-table.ts';

/** What the oil of a valve does in one direction. */
export interface DirectionFlow {
  /** Follows the drop at once. */
  readonly steady: FlowTable;
  /** What a check lets through beside it, once it has opened. */
  readonly check?: FlowTable;
  /** Why the tables end where they end, when the valve is not known beyond. */
  readonly endReason?: string;
}

/** Between a chamber and its parent. */
export interface CycleLink {
  /** From the chamber towards the gas. */
  readonly outward: DirectionFlow;
  readonly inward: DirectionFlow;
  /** Volume that the moving piston drags from the parent into the chamber, per metre of compression [m2]; 0 when absent. */
  readonly draggedArea_m2?: number;
}

interface Swept {
  readonly name: string;
  /** Volume that leaves the chamber per metre of compression [m2]. */
  readonly sweptArea_m2: number;
  /** Of the chamber at full extension, with the gas in it [m3]. */
  readonly extendedVolume_m3: number;
}

export interface LinkedChamber extends Swept {
  /** The chamber that lies towards the gas; it stands before this one. */
  readonly parent: string;
  readonly link: CycleLink;
}

/** The gas as it stands at full extension. */
export interface CycleGas {
  readonly absolutePressure_Pa: number;
  readonly volume_m3: number;
  readonly polytropicExponent: number;
  /** Most that the friction of a floating piston holds back [Pa]; 0 without one. */
  readonly separatorFriction_Pa: number;
}

export interface RootChamber extends Swept {
  readonly gas: CycleGas;
}

export interface CycleModel {
  readonly root: RootChamber;
  readonly chambers: readonly LinkedChamber[];
  readonly oil: AeratedOil;
  /** Below it a chamber does not fall: what is missing is a void. */
  readonly airReleasePressure_Pa: number;
  /** Of seals and guides at a shaft speed, continuous [N]. */
  readonly friction: (speed_m_s: number) => number;
  /** Of a hydraulic stop at a stroke and a speed, continuous [N]. */
  readonly stop?: (stroke_m: number, speed_m_s: number) => number;
  readonly travel_m: number;
  /** Time in which a check follows its drop; 0 at once [s]. */
  readonly checkLag_s: number;
}

/** Stroke over time. */
export interface Drive {
  readonly start_s: number;
  readonly end_s: number;
  /** x(t) from full extension [m]. */
  readonly position: (t: number) => number;
  /** dx/dt [m/s]. */
  readonly speed: (t: number) => number;
  /** Where motion turns or is not smooth, rising. */
  readonly breaks_s: readonly number[];
  /** Of a motion that repeats. */
  readonly period_s?: number;
}

export interface CycleOptions {
  /** Samples a period, or over a whole trace; a multiple of 4, so that both ends and both peaks are samples. 240 when absent, for a trace its points. */
  readonly samples?: number;
  /** Error allowed in a chamber pressure each step [Pa]; 100 when absent. */
  readonly pressureTolerance_Pa?: number;
}

/** One number a sample. */
export interface CycleSeries {
  readonly time_s: Float64Array;
  readonly position_m: Float64Array;
  readonly speed_m_s: Float64Array;
  /** Whole force at the shaft, with gas force, friction and stop. */
  readonly force_N: Float64Array;
  readonly frictionForce_N: Float64Array;
  readonly stopForce_N: Float64Array;
  readonly gasPressure_Pa: Float64Array;
  /** By chamber, the root among them. */
  readonly pressure_Pa: Readonly<Record<string, Float64Array>>;
  /** Void in each chamber; in the root beside a floating piston that stands still [m3]. */
  readonly void_m3: Readonly<Record<string, Float64Array>>;
  /** Out of each chamber towards the gas [m3/s]. */
  readonly flow_m3_s: Readonly<Record<string, Float64Array>>;
}

/** Over the stretch that counts [J]. */
export interface CycleEnergy {
  /** What the shaft put in. */
  readonly work_J: number;
  /** Lost in the valves, by friction at the shaft, in the stop, by the friction of the floating piston. */
  readonly oil_J: number;
  readonly friction_J: number;
  readonly stop_J: number;
  readonly separator_J: number;
  /** Gained by gas, oil, atmosphere and the seal of the floating piston; next to nothing over a settled cycle. */
  readonly stored_J: number;
  /** work - oil - friction - stop - separator - stored: what the integration lost. */
  readonly balanceError_J: number;
}

export interface Integration {
  readonly steps: number;
  readonly rejections: number;
  readonly evaluations: number;
  /** Largest estimate of the error of one step in the chamber pressures, root mean square [Pa]. */
  readonly largestPressureError_Pa: number;
}

/** The last period against the one before. */
export interface Settling {
  /** Largest difference of the force at like places [N]. */
  readonly force_N: number;
  readonly work_J: number;
}

export interface CycleRun {
  readonly status: 'finished';
  /** All of the run. */
  readonly series: CycleSeries;
  /** First and last sample of what counts: the last period, or the whole trace. */
  readonly counted: { readonly first: number; readonly last: number };
  readonly energy: CycleEnergy;
  /** Absent with one period, and with a trace. */
  readonly settling?: Settling;
  readonly integration: Integration;
}

export interface FailedCycle {
  /** `valve`: it has no state at all; `beyond-table`: it is not known as far as the run went. */
  readonly status: Exclude<StiffStatus, 'finished'> | 'valve' | 'beyond-table';
  /** When it ended; absent when it never began. */
  readonly time_s?: number;
  readonly reason: string;
}
