/** Valves of one law, for tests of what stands around them. */
import type { Valve, ValvePoint } from '../../src/solver/valve/explicit-valve.ts';

const point = (drop_Pa: number, ports_m3_s: number): ValvePoint => ({
  status: 'converged',
  drop_Pa,
  shimPressure_Pa: drop_Pa,
  seatOpening_m: 0,
  flows: { ports_m3_s, bleed_m3_s: 0, leakage_m3_s: 0 },
});

/** Q = k dp^n. */
export const powerValve = (k: number, n: number): Valve => ({
  atFlow: (Q) => point((Q / k) ** (1 / n), Q),
  atDrop: (dp) => point(dp, k * dp ** n),
});

/** Q = k dp, k in m3/(s Pa). */
export const linearValve = (k: number): Valve => powerValve(k, 1);

export const failingValve = (reason: string): Valve => {
  const failed = { status: 'beyond-table', reason } as const;
  return { atFlow: () => failed, atDrop: () => failed };
};
