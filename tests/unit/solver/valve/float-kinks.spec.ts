/** Tables of stacks that rise on a float before they bend: they keep to the solver between their points as those of other stacks do. */
import { describe, expect, it } from 'vitest';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ConvergedLift, FloatInput, StackInput, Theory } from '../../../../src/solver/types.ts';
import { findFloatKinks } from '../../../../src/solver/valve/float-kinks.ts';
import { matchedTable } from '../../../../src/solver/valve/matched-table.ts';
import { openingTable } from '../../../../src/solver/valve/opening-table.ts';
import type { LiftSolver } from '../../../../src/solver/valve/stack-samples.ts';
import { noSamples, withPressures } from '../../../../src/solver/valve/stack-samples.ts';

const solver: LiftSolver = (stack, pressures, theory) =>
  solveLift(stack, pressures, { theory, landPressure: 'falling' });

/** Of our own: 32 × 0.2 and 24 × 0.15 on 16 mm, zone from 19 to 29.5 mm, land to 31 mm. */
const stackWith = (float: FloatInput, height_m = 0): StackInput => ({
  clampRadius_m: 8e-3,
  shims: [
    [32, 0.2],
    [24, 0.15],
  ].map(([diameter, thickness]) => ({
    outerRadius_m: diameter / 2000,
    thickness_m: thickness / 1000,
    youngsModulus_Pa: 206e9,
    poissonsRatio: 0.3,
  })),
  pressureZone: { innerRadius_m: 9.5e-3, outerRadius_m: 14.75e-3 },
  seat: { innerRadius_m: 14.75e-3, outerRadius_m: 15.5e-3, height_m },
  float,
});

const FLOAT: FloatInput = { travel_m: 0.8e-3, rate_N_m: 1200, preload_N: 4 };
/** Zone and half of the land: what the hub bears per pressure, to a few parts in a thousand [m2]. */
const AREA = Math.PI * (15.125e-3 ** 2 - 9.5e-3 ** 2);

const upTo = (p: number) => (point: ConvergedLift) => point.pressure_Pa >= p;

describe.each(['small-deflection', 'large-deflection'] as const)('the table of a floating stack (%s)', (theory) => {
  const tableOf = (stack: StackInput) => openingTable(solver, stack, theory, upTo(2e5));
  const farthest = (stack: StackInput, opening: (p: number) => number, pressures: readonly number[]) => {
    const points = solver(stack, pressures, theory).points as ConvergedLift[];
    return Math.max(...points.map((point) => Math.abs(opening(point.pressure_Pa) / point.seatOpening_m - 1)));
  };
  const ALL = Array.from({ length: 60 }, (_, i) => 2e5 * 0.92 ** (59 - i));

  it('has a kink where the hub leaves its stop and where it comes to its end', () => {
    const { kinks_Pa, table } = tableOf(stackWith(FLOAT));
    expect(kinks_Pa).toHaveLength(2);
    expect(kinks_Pa[0] / (4 / AREA)).toBeCloseTo(1, 2);
    expect(kinks_Pa[1] / (4.96 / AREA)).toBeCloseTo(1, 2);
    for (const kink of kinks_Pa) expect(table.pressure_Pa).toContain(kink);
    expect(table.points.length).toBeLessThanOrEqual(16);
  });

  it('keeps to the solver through the float and beyond it', () => {
    const stack = stackWith(FLOAT);
    expect(farthest(stack, tableOf(stack).opening, ALL)).toBeLessThan(0.007);
  });

  it('keeps to the solver where the check spring has no rate, and the hub rises at one pressure', () => {
    const stack = stackWith({ ...FLOAT, rate_N_m: 0 });
    const apartFromStep = ALL.filter((p) => Math.abs(p / (4 / AREA) - 1) > 0.02);
    expect(farthest(stack, tableOf(stack).opening, apartFromStep)).toBeLessThan(0.01);
  });

  it('keeps to the solver where a preloaded seat bears the shims while the hub rises', () => {
    const stack = stackWith(FLOAT, 0.3e-3);
    const { opening, crackingPressure_Pa } = tableOf(stack);
    const open = ALL.filter((p) => p > 1.02 * crackingPressure_Pa);
    expect(farthest(stack, opening, open)).toBeLessThan(0.01);
  });

  it('has its kinks in the table of a stack that differs a little, too', () => {
    const like = stackWith(FLOAT);
    const changed = { ...like, shims: like.shims.map((shim) => ({ ...shim, thickness_m: 1.02 * shim.thickness_m })) };
    const matched = matchedTable(solver, changed, tableOf(like));
    expect(matched.kinks_Pa).toHaveLength(2);
    expect(farthest(changed, matched.opening, ALL)).toBeLessThan(0.007);
  });
});

describe('findFloatKinks', () => {
  const solveBy = (stack: StackInput, log: number[]) => (pressures: readonly number[]) => {
    log.push(...pressures);
    return solver(stack, pressures, 'small-deflection' satisfies Theory);
  };

  it('leaves a stack without a float and samples that end before the hub rises alone', () => {
    const log: number[] = [];
    const solve = solveBy(stackWith(FLOAT), log);
    const start = withPressures(noSamples, solve, [0, 5e3]);
    expect(findFloatKinks(start, FLOAT, solve)).toEqual({ samples: start, kinks_Pa: [] });
    expect(findFloatKinks(start, undefined, solve)).toEqual({ samples: start, kinks_Pa: [] });
    expect(log).toHaveLength(2);
  });

  it('hits each kink of a free stack with one solve, since the force on its hub is a straight line', () => {
    const log: number[] = [];
    const solve = solveBy(stackWith(FLOAT), log);
    const start = withPressures(noSamples, solve, [0, 1e5]);
    expect(findFloatKinks(start, FLOAT, solve).kinks_Pa).toHaveLength(2);
    expect(log).toHaveLength(4);
  });
});
