/** A wanted force curve. */

export interface AimPoint {
  /** Positive in compression, never 0. */
  shaftSpeed_m_s: number;
  /** At the shaft, friction included, gas force left out. */
  force_N: number;
}

/** Damping wanted in one direction, as shares of critical damping. */
export interface RatioGoal {
  /** Up to the knee: of the whole force over its speed. */
  lowSpeedRatio: number;
  /** Beyond it: of what the force rises per speed. */
  highSpeedRatio: number;
  /** At the shaft. */
  kneeSpeed_m_s: number;
}

/** Force of a build, changed in part. */
export interface ForceChange {
  direction: 'compression' | 'rebound' | 'both';
  range: 'above' | 'below' | 'all';
  /** At the shaft; what it bounds changes whole, and beyond it the change fades out. */
  speed_m_s: number;
  /** 15 is 15 % more, -10 is 10 % less. */
  change_percent: number;
}

/** How an aim was made; its points are what counts. */
export type AimOrigin =
  | { kind: 'drawn' }
  | { kind: 'damping-ratio'; compression: RatioGoal; rebound: RatioGoal; wheelTravel_mm: number }
  | { kind: 'change'; buildId: string; changes: ForceChange[] };

export interface Aim {
  id: string;
  name: string;
  /** Rising in speed. */
  points: AimPoint[];
  origin?: AimOrigin;
}
