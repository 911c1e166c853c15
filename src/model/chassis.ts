/** What the damper is built into: one end of a vehicle, with its masses, its springs and how they are linked to the wheel. */

/**
 * Shaft travel per wheel travel, ds/dx: below 1 where the shaft moves less than the wheel, 1 in a fork leg. Its reciprocal,
 * wheel travel per shaft travel, is not what stands here.
 */
export type MotionRatio =
  | { kind: 'constant'; shaftPerWheel: number }
  /** Rising in wheel travel; outside the table its end values hold. */
  | { kind: 'table'; points: MotionRatioPoint[] };

export interface MotionRatioPoint {
  /** From full extension. */
  wheelTravel_mm: number;
  shaftPerWheel: number;
}

export type MainSpring =
  /** A coil of one rate; `preload_mm` is how far it is shortened at full extension. */
  | { kind: 'coil'; rate_N_mm: number; preload_mm: number }
  /** Force over how far the spring is shortened from its free length; beyond the table its end slope goes on. */
  | { kind: 'progressive'; points: SpringPoint[]; preload_mm: number };

export interface SpringPoint {
  compression_mm: number;
  force_N: number;
}

/** Air that the stroke shortens, an air spring or the air over the oil of a leg, where the gas of the damper is not that air. */
export interface AirSpring {
  pistonDiameter_mm: number;
  /** Cold, at full extension. */
  gaugePressure_bar: number;
  /** Of the column of air at full extension. */
  airLength_mm: number;
  polytropicExponent: number;
}

/** Every key may be absent until it is known. */
export interface Chassis {
  /** What this end carries of the vehicle without rider and load, springs above. */
  vehicleSprungMass_kg?: number;
  /** What this end carries of rider and load. */
  riderSprungMass_kg?: number;
  /** What moves with the wheel. */
  unsprungMass_kg?: number;
  /** From full extension to full compression, along the legs of a fork, else upright. */
  wheelTravel_mm?: number;
  motionRatio?: MotionRatio;
  spring?: MainSpring;
  airSpring?: AirSpring;
  /** Springs side by side at this end; 1 when absent. */
  springCount?: number;
  /** Dampers side by side at this end, each as the damper of this project; 1 when absent. */
  damperCount?: number;
  /** Of the legs of a fork from the upright; 0 when absent. */
  legAngle_deg?: number;
}
