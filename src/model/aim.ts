/** A wanted force curve. */

export interface AimPoint {
  /** Positive in compression, never 0. */
  shaftSpeed_m_s: number;
  /** At the shaft, friction included, gas force left out. */
  force_N: number;
}

export interface Aim {
  id: string;
  name: string;
  /** Rising in speed. */
  points: AimPoint[];
}
