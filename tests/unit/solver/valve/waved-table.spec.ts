/** Tables of stacks that wave between ports, against the solver itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadPeriodicUnderMean } from '../../../../src/solver/stack/load-under-mean.ts';
import type { ConvergedLift, LiftPoint, ShimInput, StackInput } from '../../../../src/solver/types.ts';
import { type OpeningTable, openingTable } from '../../../../src/solver/valve/opening-table.ts';
import { isClosed } from '../../../../src/solver/valve/stack-samples.ts';
import { pressureErrors } from '../../../helpers/table-error.ts';

/** Evenly spread. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((n) => min + ((max - min) * n) / 10_000);

/** A thin face shim and up to six on it, each as wide as the one before or narrower, on a seat with preload. */
const anyWaved: fc.Arbitrary<StackInput> = fc
  .record({
    clamp_mm: between(4, 7),
    free_mm: between(5, 11),
    face_mm: fc.constantFrom(0.1, 0.15, 0.2),
    others: fc.array(
      fc.record({ share: fc.oneof(fc.constant(1), between(0.45, 0.98)), mm: fc.constantFrom(0.1, 0.15, 0.2, 0.25) }),
      { maxLength: 6 },
    ),
    height_mm: between(0.02, 0.2),
    count: fc.integer({ min: 3, max: 6 }),
    coveredFraction: between(0.3, 0.85),
    zoneFrom: between(0.3, 0.5),
  })
  .map(({ clamp_mm, free_mm, face_mm, others, height_mm, count, coveredFraction, zoneFrom }) => {
    const shim = (radius_mm: number, mm: number): ShimInput => ({
      outerRadius_m: radius_mm / 1000,
      thickness_m: mm / 1000,
      youngsModulus_Pa: 206e9,
      poissonsRatio: 0.3,
    });
    let rim_mm = clamp_mm + free_mm;
    const seat_m = (rim_mm - 0.6) / 1000;
    const shims = [shim(rim_mm, face_mm)];
    for (const { share, mm } of others) {
      rim_mm = clamp_mm + Math.max((rim_mm - clamp_mm) * share, 0.8);
      shims.push(shim(rim_mm, mm));
    }
    const clampRadius_m = clamp_mm / 1000;
    return {
      clampRadius_m,
      shims,
      pressureZone: { innerRadius_m: clampRadius_m + (seat_m - clampRadius_m) * zoneFrom, outerRadius_m: seat_m },
      seat: { innerRadius_m: seat_m, outerRadius_m: seat_m + 0.4e-3, height_m: height_mm / 1000 },
      ports: { count, coveredFraction },
    };
  });

/** One of these has two kinks so near to each other that the points beside them tell of neither. */
const SEED = 8;
const FAR_M = 0.25e-3;

interface Followed {
  readonly table: OpeningTable;
  readonly at: (p: number) => ConvergedLift;
}

function follow(stack: StackInput): Followed {
  const loaded = loadPeriodicUnderMean(stack, { landPressure: 'falling' });
  const known = new Map<number, LiftPoint>();
  const point = (p: number): LiftPoint => {
    const found = known.get(p) ?? loaded.at(p);
    known.set(p, found);
    return found;
  };
  const solve = (_: StackInput, pressures: readonly number[]) => ({
    theory: 'port-periodic' as const,
    points: pressures.map(point),
  });
  const table = openingTable(solve, stack, 'port-periodic', ({ seatOpening_m }) => seatOpening_m >= FAR_M);
  const at = (p: number): ConvergedLift => {
    const solved = point(p);
    if (solved.status !== 'converged') throw new Error(solved.reason);
    return solved;
  };
  return { table, at };
}

/** Where it first opens, by halving alone, to a fiftieth of a percent. */
function cracksAt({ table: { table }, at }: Followed): number {
  const first = table.points.findIndex((point) => !isClosed(point));
  let [low, high] = [table.pressure_Pa[first - 1], table.pressure_Pa[first]];
  while (high - low > 2e-4 * high) {
    const middle = (low + high) / 2;
    if (isClosed(at(middle))) low = middle;
    else high = middle;
  }
  return high;
}

describe('the table of a preloaded stack that waves', () => {
  const followed = fc.sample(anyWaved, { numRuns: 16, seed: SEED }).map(follow);

  it('knows where its crests open, while its troughs still press, to a hundredth', () => {
    for (const stack of followed) {
      const cracking_Pa = cracksAt(stack);
      expect(stack.at(1.05 * cracking_Pa).seatForce_N).toBeGreaterThan(0);
      expect(Math.abs(stack.table.crackingPressure_Pa / cracking_Pa - 1)).toBeLessThan(0.01);
    }
  });

  it('keeps to the solver between its points, to a hundredth of the pressure of a flow', () => {
    for (const { table, at } of followed) {
      const top = table.table.pressure_Pa.at(-1) as number;
      const pressures = Array.from({ length: 60 }, (_, i) => top * 0.94 ** i);
      const exact = pressures.filter((p) => p > 1.005 * table.crackingPressure_Pa).map(at);
      expect(exact.length).toBeGreaterThan(10);
      expect(Math.max(...pressureErrors(table.opening, exact.reverse()))).toBeLessThan(0.01);
    }
  });
});
