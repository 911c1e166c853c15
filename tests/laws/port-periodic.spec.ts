/** What every stack that may wave keeps: statics, contact, and the limits in which the round theory holds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLift } from '../../src/solver/stack/solve-lift.ts';
import { findWavinessOnset } from '../../src/solver/stack/waviness/find-onset.ts';
import type { ConvergedLift, ShimInput, StackInput } from '../../src/solver/types.ts';
import { absurdStacks, type RandomStack, realisticStacks } from '../helpers/random-stacks.ts';
import { near } from '../helpers/stack-solves.ts';
import { converged } from '../helpers/stacks.ts';

const steel = (diameter_mm: number, thickness_mm: number): ShimInput => ({
  outerRadius_m: diameter_mm / 2e3,
  thickness_m: thickness_mm / 1e3,
  youngsModulus_Pa: 206e9,
  poissonsRatio: 0.3,
});
const zone = { innerRadius_m: 6.6e-3, outerRadius_m: 11.04e-3 };
const SINGLE: StackInput = { clampRadius_m: 5e-3, shims: [steel(24, 0.15)], pressureZone: zone };
const ported = (stack: StackInput, count: number, coveredFraction: number): StackInput => ({
  ...stack,
  ports: { count, coveredFraction },
});
const solve = (stack: StackInput, pressures_Pa: readonly number[]) =>
  solveLift(stack, pressures_Pa, { theory: 'port-periodic' }).points.map(converged);
const round = (stack: StackInput, pressures_Pa: readonly number[]) =>
  solveLift(stack, pressures_Pa, { theory: 'large-deflection' }).points.map(converged);

describe('the limits in which a stack is round', () => {
  it('is the round theory below the onset, with a groove all round', () => {
    const [got] = solve(SINGLE, [1.2e5]);
    const [wanted] = round(SINGLE, [1.2e5]);
    expect(got.wave).toEqual({
      waves: 0,
      minEdgeLift_m: wanted.faceEdgeLift_m,
      maxEdgeLift_m: wanted.faceEdgeLift_m,
    });
    expect(got.shape).toEqual(wanted.shape);
  });

  it('has the mean lift of the round theory at a small load, whatever the ports', () => {
    for (const count of [2, 3, 4, 6]) {
      const [got] = solve(ported(SINGLE, count, 0.65), [1e2]);
      const [wanted] = round(SINGLE, [0.65e2]);
      near(got.faceEdgeLift_m, wanted.faceEdgeLift_m, 1e-4);
    }
  });

  it('waves the less, the more ports there are', () => {
    const amplitude = (count: number) => {
      const [{ wave }] = solve(ported(SINGLE, count, 0.65), [1e5]);
      return ((wave?.maxEdgeLift_m ?? Number.NaN) - (wave?.minEdgeLift_m ?? Number.NaN)) / 2;
    };
    const [two, three, four, six, eight] = [2, 3, 4, 6, 8].map(amplitude);
    expect(two).toBeGreaterThan(three);
    expect(three).toBeGreaterThan(four);
    // Bending resists n waves the more like n⁴, the more there are: 5 times for six in place of four, 3 for eight.
    expect(four).toBeGreaterThan(4 * six);
    expect(six).toBeGreaterThan(2 * eight);
  });

  it('spreads many ports evenly', () => {
    const [got] = solve(ported(SINGLE, 12, 0.5), [2e5]);
    expect(got.faceEdgeLift_m).toBe(solve({ ...SINGLE }, [1e5])[0].faceEdgeLift_m);
  });
});

describe('the onset', () => {
  it('is where the test of the round state says', () => {
    const onset = findWavinessOnset(SINGLE, 1e6);
    if (onset.status !== 'found') throw new Error(onset.status);
    const [below, above] = solve(SINGLE, [0.98 * onset.pressure_Pa, 1.02 * onset.pressure_Pa]);
    expect(below.wave?.waves).toBe(0);
    expect(above.wave?.waves).toBe(onset.waves);
    // A pitchfork: the amplitude rises with the root of the distance, some tenths of a thickness at two per cent.
    expect((above.wave?.maxEdgeLift_m ?? 0) - above.faceEdgeLift_m).toBeGreaterThan(0.1 * 0.15e-3);
  });
});

describe('the branch', () => {
  const pressures_Pa = [1.6e5, 2.7e5, 4.8e5];

  it.each([
    ['six ports break to three waves past the onset', 6, [6, 3, 3]],
    ['four ports stay at four', 4, [4, 4, 4]],
    ['three ports cannot halve', 3, [3, 3, 3]],
  ] as const)('%s', (_, count, wanted) => {
    const points = solve(ported(SINGLE, count, 0.75), pressures_Pa);
    expect(points.map(({ wave }) => wave?.waves)).toEqual(wanted);
  });

  it('does not depend on the order in which pressures are asked for', () => {
    const stack = ported(SINGLE, 6, 0.75);
    const alone = pressures_Pa.map((p) => solve(stack, [p])[0]);
    solve(stack, pressures_Pa).forEach((point, i) => {
      near(point.faceEdgeLift_m, alone[i].faceEdgeLift_m, 1e-5);
      expect(point.wave?.waves).toBe(alone[i].wave?.waves);
    });
  });
});

describe('equal neighbours', () => {
  it('wave together: five of them lift at five times the load as one does', () => {
    const five = { ...SINGLE, shims: Array.from({ length: 5 }, () => SINGLE.shims[0]) };
    const loads = [5e4, 3e5];
    const one = solve(ported(SINGLE, 3, 0.7), loads);
    solve(
      ported(five, 3, 0.7),
      loads.map((p) => 5 * p),
    ).forEach((point, i) => {
      near(point.faceEdgeLift_m, one[i].faceEdgeLift_m, 1e-6);
      near(point.wave?.maxEdgeLift_m ?? 0, one[i].wave?.maxEdgeLift_m ?? 1, 1e-6);
      near(point.shimStress_Pa[4], one[i].shimStress_Pa[0], 1e-6);
    });
  });
});

describe('waved shims on a seat', () => {
  const seat = { innerRadius_m: 11.04e-3, outerRadius_m: 11.5e-3, height_m: 0.1e-3 };
  const seated = ported({ ...SINGLE, seat }, 3, 0.6);

  it('open at the ports first, and the mean opening counts what is open alone', () => {
    const points = solve(seated, [1e4, 6e4, 4e5]);
    expect(points[0].seatOpening_m).toBeLessThan(1e-9);
    // Partly open: the crest is clear of the land, the trough lies on it.
    const partly = points[1];
    expect(partly.seatForce_N).toBeGreaterThan(0);
    expect(partly.seatOpening_m).toBeGreaterThan(1e-6);
    // Open all round: least clearance is at the inner edge of the land, where the mean lift less the height is the mean.
    const open = points[2];
    expect(open.seatForce_N).toBe(0);
    near(open.seatOpening_m, open.zoneEdgeLift_m - seat.height_m, 1e-6);
  });

  it('turn up the mean of the clearances that the shape leaves', () => {
    const [point] = solve(seated, [6e4]);
    const { lift_m, harmonics_m, radius_m } = point.shape;
    const land = [...radius_m.keys()].filter(
      (i) => radius_m[i] > seat.innerRadius_m - 1e-6 && radius_m[i] < seat.outerRadius_m + 1e-6,
    );
    const clearance = (phi: number) =>
      Math.max(
        0,
        Math.min(...land.map((i) => lift_m[0][i] + (harmonics_m?.[0][0][i] ?? 0) * Math.cos(phi) - seat.height_m)),
      );
    const mean =
      Array.from({ length: 400 }, (_, i) => clearance(((i + 0.5) * Math.PI) / 400)).reduce((s, v) => s + v) / 400;
    near(point.seatOpening_m, mean, 0.02);
  });
});

/** Of the greatest outer force, what the balance of a stack may miss. */
const BALANCE = 1e-3;

function check({ stack, pressures_Pa }: RandomStack, count: number, tally: { solved: number; failed: string[] }): void {
  const { points } = solveLift(ported(stack, count, 0.65), pressures_Pa, { theory: 'port-periodic' });
  for (const point of points) {
    if (point.status !== 'converged') {
      expect(point.reason.length).toBeGreaterThan(10);
      tally.failed.push(`${point.status} at ${point.pressure_Pa} Pa, ${count} ports: ${JSON.stringify(stack)}`);
      continue;
    }
    tally.solved++;
    expectBalance(point);
    const { wave, shape } = point;
    for (const list of [...shape.lift_m, point.shimStress_Pa, point.shimEdgeLift_m])
      expect(list.every(Number.isFinite)).toBe(true);
    expect(wave?.minEdgeLift_m).toBeLessThanOrEqual(wave?.maxEdgeLift_m ?? Number.NaN);
    expect(point.seatForce_N).toBeGreaterThanOrEqual(0);
    expect(point.plateForce_N).toBeGreaterThanOrEqual(0);
  }
}

function expectBalance(point: ConvergedLift): void {
  const { appliedForce_N, seatForce_N, clampForce_N, plateForce_N, springForce_N } = point;
  const largest = Math.max(appliedForce_N, seatForce_N, plateForce_N, Math.abs(springForce_N), Math.abs(clampForce_N));
  const left = appliedForce_N + seatForce_N - clampForce_N - plateForce_N - springForce_N;
  expect(Math.abs(left), `left ${left} N of ${largest} N`).toBeLessThanOrEqual(BALANCE * largest + 1e-9);
}

describe.each([
  ['of the trade', realisticStacks, 0.03],
  ['nobody would fit', absurdStacks, 0.1],
] as const)('drawn stacks of sizes %s', (_, stacks, mostFailures) => {
  it('end in balance or say why not', () => {
    const tally = { solved: 0, failed: [] as string[] };
    fc.assert(
      fc.property(stacks, fc.constantFrom(3, 4, 6, 24), (drawn, count) => {
        try {
          check(drawn, count, tally);
        } catch (error) {
          if (!(error instanceof Error && 'fault' in error)) throw error;
        }
      }),
      { numRuns: 25 },
    );
    const rate = tally.failed.length / (tally.solved + tally.failed.length);
    expect(rate, tally.failed.slice(0, 2).join('\n')).toBeLessThanOrEqual(mostFailures);
  }, 600_000);
});
