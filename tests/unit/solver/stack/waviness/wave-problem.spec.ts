import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RIGID } from '../../../../../src/solver/contact/contact-pairs.ts';
import { createWavePlate, takeState } from '../../../../../src/solver/plate/waviness/wave-plate.ts';
import { equilibrate } from '../../../../../src/solver/stack/equilibrate.ts';
import { createStackSystem, type StackSystem } from '../../../../../src/solver/stack/stack-system.ts';
import { leastMode } from '../../../../../src/solver/stack/waviness/least-mode.ts';
import {
  createWaveProblem,
  factorShifted,
  setWaves,
  type WaveProblem,
} from '../../../../../src/solver/stack/waviness/wave-problem.ts';
import { listTies } from '../../../../../src/solver/stack/waviness/wave-ties.ts';
import type { StackInput } from '../../../../../src/solver/types.ts';
import { denseMargins } from './dense-margin.ts';
import { SINGLE, stackOf, TAPER } from './stacks.ts';

/** The n-wave problem of a stack brought to its pressure in steps. */
function problemOf(stack: StackInput, pressure_Pa: number, n: number): WaveProblem {
  const system = createStackSystem(stack, { theory: 'large-deflection', elements: 5 });
  for (let step = 1; step <= 8; step++) {
    expect(equilibrate(system, (pressure_Pa * step) / 8, 1).status).toBe('converged');
  }
  const waves = system.plates.map((plate) => createWavePlate(plate));
  for (const wave of waves) takeState(wave);
  const problem = createWaveProblem(waves, listTies(system));
  setWaves(problem, n);
  return problem;
}

const startOf = ({ waves }: WaveProblem): Float64Array[] =>
  waves.map(({ size, fixed }) =>
    Float64Array.from({ length: size }, (_, i) => (fixed.includes(i) || i % 6 > 0 ? 0 : i + 1)),
  );

const SEATED: StackInput = { ...TAPER, seat: { innerRadius_m: 13.8e-3, outerRadius_m: 14.2e-3, height_m: 0.05e-3 } };
const CAPPED: StackInput = { ...TAPER, backingPlate: { gap_m: 0.1e-3 } };

describe('factorShifted', () => {
  it.each<[string, StackInput, number]>([
    ['one shim', SINGLE, 3e5],
    ['two shims in contact', TAPER, 9e5],
    ['two shims on a raised seat', SEATED, 2e4],
    ['two shims against a backing plate', CAPPED, 6e5],
  ])('counts the modes below a shift as dense algebra does: %s', (_, stack, pressure_Pa) => {
    const problem = problemOf(stack, pressure_Pa, 3);
    const margins = denseMargins(problem);
    const shifts = [0, 4].concat(margins.slice(0, 12).map((mu, i) => (mu + margins[i + 1]) / 2));
    for (const shift of shifts) {
      const factor = factorShifted(problem, shift);
      expect(factor).toMatchObject({ status: 'factored', negativeModes: margins.filter((mu) => mu < shift).length });
    }
  });

  it('moves aside from a shift that no factor can be made at', () => {
    const problem = problemOf(SINGLE, 0, 3);
    // At rest all bending modes have a margin of 1, so that nothing is left of the lifts there.
    const factor = factorShifted(problem, 1);
    expect(factor).toMatchObject({ status: 'factored', negativeModes: 0 });
    expect(factor.status === 'factored' && factor.shift).toBeLessThan(1);
  });
});

describe('leastMode', () => {
  it('finds the least eigenvalue of dense algebra for drawn stacks, whatever the guess', () => {
    const shim = fc.tuple(fc.constantFrom(24, 26, 28, 30), fc.constantFrom(0.1, 0.15, 0.2));
    const stacks = fc.array(shim, { minLength: 1, maxLength: 3 }).map((shims) => {
      const widest = Math.max(...shims.map(([d]) => d));
      return stackOf(12, [16, widest * 0.92], shims);
    });
    const guess = fc.constantFrom(-3, 0, 1, 20);
    fc.assert(
      fc.property(
        stacks,
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 2, max: 8 }),
        guess,
        (stack, load, n, g) => {
          const problem = problemOf(stack, load * 5e4, n);
          const mode = leastMode(problem, g, startOf(problem));
          const [least] = denseMargins(problem);
          expect(mode.status === 'converged' && Math.abs(mode.margin - least)).toBeLessThan(
            1e-4 * Math.max(1, Math.abs(least)),
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  it('reports numbers that are not finite', () => {
    const problem = problemOf(SINGLE, 1e5, 3);
    problem.orders[0].stretching.fill(Number.NaN);
    expect(leastMode(problem, 1, startOf(problem)).status).toBe('not-converged');
  });
});

describe('listTies', () => {
  const ties = (rows: readonly [node: number, below: number, above: number, force: number][]) => {
    const column = (i: number) => Int32Array.from(rows, (row) => row[i]);
    const pairs = { size: rows.length, node: column(0), below: column(1), above: column(2) };
    const own = { belowNode: column(0), aboveNode: column(0) };
    const contact = { force: Float64Array.from(rows, (row) => row[3]) };
    return listTies({ pairs: { ...pairs, ...own }, contact } as unknown as StackSystem).map(
      ({ below, above, belowNode }) => [belowNode, below, above],
    );
  };

  it('ties what presses and leaves the rest', () => {
    expect(
      ties([
        [1, RIGID, 0, 0],
        [1, 0, 1, 3],
        [2, 0, 1, 1e-12],
        [3, 0, 1, 2],
      ]),
    ).toEqual([
      [1, 0, 1],
      [3, 0, 1],
    ]);
  });

  it('leaves out the tie that a chain from seat to backing plate repeats', () => {
    expect(
      ties([
        [1, RIGID, 0, 1],
        [1, 0, 1, 1],
        [1, 1, RIGID, 1],
        [2, RIGID, 0, 1],
        [2, 0, 1, 0],
        [2, 1, RIGID, 1],
      ]),
    ).toEqual([
      [1, RIGID, 0],
      [2, RIGID, 0],
      [1, 0, 1],
      [2, 1, RIGID],
    ]);
  });
});
