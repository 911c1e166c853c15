/** Solved points with plain numbers. */
import type { FailedForce, ForceCurve, ForcePoint } from '../../../../src/ui/app/solved.ts';

export const ATMOSPHERE_PA = 101_325;

export const point = (shaftSpeed_m_s: number, part: Partial<ForcePoint> = {}): ForcePoint => ({
  status: 'converged',
  shaftSpeed_m_s,
  force_N: shaftSpeed_m_s * 1000,
  gasForce_N: 50,
  frictionForce_N: 20,
  dampingForce_N: 0,
  stopForce_N: 0,
  compressionPressure_Pa: ATMOSPHERE_PA + 3e6,
  reboundPressure_Pa: ATMOSPHERE_PA + 1e6,
  gasPressure_Pa: ATMOSPHERE_PA + 1e6,
  pistonDrop_Pa: 2e6,
  shimPressure_Pa: 1.5e6,
  seatOpening_m: 1e-4,
  flows: { ports_m3_s: 3e-4, bleed_m3_s: 1e-4, leakage_m3_s: 0 },
  airRelease: false,
  gasPressureNeeded_Pa: 0,
  ...part,
});

export const failed = (shaftSpeed_m_s: number): FailedForce => ({
  status: 'not-converged',
  shaftSpeed_m_s,
  reason: 'residual 1, wanted 1e-9',
});

export function curve(...points: (ForcePoint | FailedForce)[]): ForceCurve {
  const table = { theory: 'large-deflection' as const, pressure_Pa: [], points: [], failures: [] };
  return { theory: 'large-deflection', points, stacks: { compression: table, rebound: table } };
}

/** A table by its heads: `columns(rows)['Force, N']`. */
export const columns = (rows: readonly (readonly unknown[])[]): Record<string, unknown[]> =>
  Object.fromEntries(rows[0].map((head, i) => [String(head), rows.slice(1).map((row) => row[i])]));
