/** Dampers over time for tests, with valves whose laws can be written down; no such dampers exist. */
import fc from 'fast-check';
import { tabulateFlow } from '../../src/solver/cycle/flow-table.ts';
import type { CycleLink, CycleModel } from '../../src/solver/cycle/types.ts';
import { between } from './any-damper.ts';

/** dp = a Q + b Q^2, and nothing before a cracking pressure. */
export interface LossLaw {
  readonly a: number;
  readonly b: number;
  readonly cracks_Pa: number;
}

export const lossFlow =
  ({ a, b, cracks_Pa }: LossLaw) =>
  (drop_Pa: number): number => {
    const over = Math.max(0, drop_Pa - cracks_Pa);
    return (2 * over) / (a + Math.sqrt(a * a + 4 * b * over));
  };

/** A bleed and beside it a valve that cracks. */
export const bothFlow =
  (bleed: LossLaw, valve: LossLaw) =>
  (drop_Pa: number): number =>
    lossFlow(bleed)(drop_Pa) + lossFlow(valve)(drop_Pa);

export interface ThreeChambers {
  readonly bore_m: number;
  readonly rodShare: number;
  readonly gas_Pa: number;
  readonly separatorFriction_Pa: number;
  readonly airFraction: number;
  readonly pistonBleed: LossLaw;
  readonly compression: LossLaw;
  readonly rebound: LossLaw;
  readonly baseBleed: LossLaw;
  readonly base: LossLaw;
  readonly refill: LossLaw;
  readonly checkLag_s: number;
  readonly draggedArea_m2: number;
  readonly friction_N_s_m: number;
}

export const TRAVEL_M = 0.1;
const LARGEST_DROP_PA = 60e6;

export const PLAIN: ThreeChambers = {
  bore_m: 44e-3,
  rodShare: 14 / 44,
  gas_Pa: 1.2e6,
  separatorFriction_Pa: 0,
  airFraction: 0.005,
  pistonBleed: { a: 1e9, b: 2e14, cracks_Pa: 0 },
  compression: { a: 1e9, b: 2e12, cracks_Pa: 0.2e6 },
  rebound: { a: 2e9, b: 4e12, cracks_Pa: 0.4e6 },
  baseBleed: { a: 1e10, b: 2e16, cracks_Pa: 0 },
  base: { a: 4e9, b: 1e14, cracks_Pa: 0.3e6 },
  refill: { a: 1e8, b: 1e12, cracks_Pa: 1e4 },
  checkLag_s: 0,
  draggedArea_m2: 0,
  friction_N_s_m: 0,
};

export const pistonArea = ({ bore_m }: ThreeChambers): number => (Math.PI / 4) * bore_m ** 2;
export const rodArea = ({ bore_m, rodShare }: ThreeChambers): number => (Math.PI / 4) * (bore_m * rodShare) ** 2;

/** Reservoir with the gas, compression chamber, rebound chamber. */
export function threeChambers(sizes: ThreeChambers): CycleModel {
  const [A_p, A_r] = [pistonArea(sizes), rodArea(sizes)];
  const A_a = A_p - A_r;
  const clearance_m = 0.01;
  const gasVolume_m3 = 4 * A_r * TRAVEL_M;
  const table = (flow: (drop_Pa: number) => number) => tabulateFlow(flow, LARGEST_DROP_PA);
  const { pistonBleed, compression, rebound, baseBleed, base, refill, draggedArea_m2 } = sizes;
  const piston: CycleLink = {
    outward: { steady: table(bothFlow(pistonBleed, rebound)) },
    inward: { steady: table(bothFlow(pistonBleed, compression)) },
    draggedArea_m2,
  };
  const toGas: CycleLink = {
    outward: { steady: table(bothFlow(baseBleed, base)) },
    inward: { steady: table(lossFlow(baseBleed)), check: table(lossFlow(refill)) },
  };
  const gas = {
    absolutePressure_Pa: sizes.gas_Pa,
    volume_m3: gasVolume_m3,
    polytropicExponent: 1.3,
    separatorFriction_Pa: sizes.separatorFriction_Pa,
  };
  return {
    root: { name: 'reservoir', sweptArea_m2: 0, extendedVolume_m3: gasVolume_m3 + A_p * TRAVEL_M, gas },
    chambers: [
      {
        name: 'compression',
        parent: 'reservoir',
        sweptArea_m2: A_p,
        extendedVolume_m3: A_p * (TRAVEL_M + clearance_m),
        link: toGas,
      },
      {
        name: 'rebound',
        parent: 'compression',
        sweptArea_m2: -A_a,
        extendedVolume_m3: A_a * clearance_m,
        link: piston,
      },
    ],
    oil: { bulkModulus_Pa: 1.5e9, airFraction: sizes.airFraction, airExponent: 1 },
    airReleasePressure_Pa: 101325,
    friction: (v) => sizes.friction_N_s_m * v,
    travel_m: TRAVEL_M,
    checkLag_s: sizes.checkLag_s,
  };
}

/** Decades apart, so evenly in the logarithm. */
const decades = (low: number, high: number) => between(Math.log(low), Math.log(high)).map(Math.exp);

const loss = (a: [number, number], b: [number, number], cracks: [number, number]): fc.Arbitrary<LossLaw> =>
  fc.record({ a: decades(...a), b: decades(...b), cracks_Pa: between(...cracks) });

export const anyThreeChambers: fc.Arbitrary<ThreeChambers> = fc.record({
  bore_m: between(25e-3, 50e-3),
  rodShare: between(0.2, 0.6),
  gas_Pa: decades(1.5e5, 2e6),
  separatorFriction_Pa: fc.constantFrom(0, 3e4),
  airFraction: fc.constantFrom(0, 0.005, 0.03),
  pistonBleed: loss([1e8, 1e11], [1e13, 1e15], [0, 0]),
  compression: loss([1e8, 1e10], [1e12, 2e13], [0, 5e5]),
  rebound: loss([1e8, 1e10], [1e12, 2e13], [0, 1e6]),
  baseBleed: loss([1e9, 1e11], [1e15, 1e17], [0, 0]),
  base: loss([1e8, 1e10], [1e13, 2e14], [0, 5e5]),
  refill: loss([1e7, 1e9], [1e11, 1e13], [0, 3e4]),
  checkLag_s: fc.constantFrom(0, 1e-3, 5e-3),
  draggedArea_m2: fc.constantFrom(0, 2e-6),
  friction_N_s_m: between(0, 100),
});
