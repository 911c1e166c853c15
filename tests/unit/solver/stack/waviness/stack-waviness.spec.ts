import { describe, expect, it } from 'vitest';
import { equilibrate } from '../../../../../src/solver/stack/equilibrate.ts';
import { createLoadedStack } from '../../../../../src/solver/stack/loaded-stack.ts';
import { solveLift } from '../../../../../src/solver/stack/solve-lift.ts';
import { createStackSystem } from '../../../../../src/solver/stack/stack-system.ts';
import {
  createWavinessTest,
  testRuffling,
  testWaviness,
  withWaviness,
} from '../../../../../src/solver/stack/waviness/stack-waviness.ts';
import { createWaveProblem, setWaves } from '../../../../../src/solver/stack/waviness/wave-problem.ts';
import { listTies } from '../../../../../src/solver/stack/waviness/wave-ties.ts';
import type { ConvergedLift, StackInput, Waviness } from '../../../../../src/solver/types.ts';
import { denseMargins } from './dense-margin.ts';
import { SINGLE, stackOf, TAPER } from './stacks.ts';

function wavinessAt(stack: StackInput, pressures_Pa: readonly number[]): Waviness[] {
  const { points } = solveLift(stack, pressures_Pa, { theory: 'large-deflection', waviness: true });
  return points.map((point) => {
    if (point.status !== 'converged' || !point.waviness) throw new Error(`no waviness: ${point.status}`);
    return point.waviness;
  });
}

const marginsAt = (stack: StackInput, pressures_Pa: readonly number[]): number[] =>
  wavinessAt(stack, pressures_Pa).map(({ margin }) => margin);

/** Same within what the search proves. */
function expectSame(margins: readonly number[], wanted: readonly number[]): void {
  expect(margins).toHaveLength(wanted.length);
  margins.forEach((margin, i) => {
    expect(Math.abs(margin - wanted[i])).toBeLessThan(1e-4 * Math.max(1, Math.abs(wanted[i])));
  });
}

const scaled = (stack: StackInput, length: number, thickness: number, modulus: number): StackInput => ({
  clampRadius_m: stack.clampRadius_m * length,
  shims: stack.shims.map((shim) => ({
    ...shim,
    outerRadius_m: shim.outerRadius_m * length,
    thickness_m: shim.thickness_m * thickness,
    youngsModulus_Pa: shim.youngsModulus_Pa * modulus,
  })),
  pressureZone: {
    innerRadius_m: stack.pressureZone.innerRadius_m * length,
    outerRadius_m: stack.pressureZone.outerRadius_m * length,
  },
});

describe('waviness of a stack', () => {
  it('has the margin 1 at rest', () => {
    expect(marginsAt(SINGLE, [0])).toEqual([1]);
    expect(marginsAt(TAPER, [0])).toEqual([1]);
  });

  it('falls as the pressure rises', () => {
    const margins = marginsAt(TAPER, [0, 5e4, 1e5, 2e5, 4e5, 8e5]);
    for (let i = 1; i < margins.length; i++) expect(margins[i]).toBeLessThan(margins[i - 1]);
  });

  // Our own three-dimensional runs of the general finite-element program CalculiX 2.20, sectors of 3, 4 and 5 waves with
  // an imperfection of a hundredth of the thickness: the amplitude stays of its size, or grows to that of the lift.
  it.each<[string, StackInput, number, boolean]>([
    ['one shim at 1.49 thicknesses', SINGLE, 0.1e6, true],
    ['one shim at 1.95 thicknesses', SINGLE, 0.16e6, true],
    ['one shim at 2.30 thicknesses', SINGLE, 0.22e6, false],
    ['the taper at 1.28 thicknesses', TAPER, 0.16e6, true],
    ['the taper at 2.12 thicknesses', TAPER, 0.35e6, true],
    ['the taper at 0.5 MPa', TAPER, 0.5e6, false],
    ['the taper at 3.0 thicknesses', TAPER, 0.7e6, false],
  ])('agrees with three-dimensional elements on %s', (_, stack, pressure_Pa, round) => {
    expect(marginsAt(stack, [pressure_Pa])[0] > 0).toBe(round);
    const loaded = createLoadedStack(stack, { theory: 'large-deflection' });
    expect(loaded.rufflingAt(pressure_Pa).status).toBe(round ? 'round' : 'ruffled');
  });

  it('is told to be below 0 by a count where dense algebra finds it there, and in which waves', () => {
    const system = createStackSystem(TAPER, { theory: 'large-deflection', elements: 5 });
    const test = createWavinessTest(system);
    const seen = new Set<string>();
    for (let step = 1; step <= 10; step++) {
      expect(equilibrate(system, 1e5 * step, 1).status).toBe('converged');
      const outcome = testRuffling(test);
      const problem = createWaveProblem(test.waves, listTies(system));
      const ruffling = [2, 3, 4, 5, 6, 7, 8].filter((n) => {
        setWaves(problem, n);
        return denseMargins(problem)[0] < 0;
      });
      expect(outcome.status).toBe(ruffling.length > 0 ? 'ruffled' : 'round');
      if (outcome.status === 'ruffled') expect(ruffling).toContain(outcome.waves);
      seen.add(outcome.status);
    }
    expect([...seen]).toEqual(['round', 'ruffled']);
  });

  it('is the least over 2 to 8 waves, as dense algebra finds it, wherever the search started', () => {
    const system = createStackSystem(TAPER, { theory: 'large-deflection', elements: 5 });
    const test = createWavinessTest(system);
    const order = [2, 3, 4, 5, 6, 7, 8];
    for (const [step, start] of [8, 2, 6, 3].entries()) {
      expect(equilibrate(system, 3e5 * (step + 1), 1).status).toBe('converged');
      test.last = { margin: 1, waves: start };
      const outcome = testWaviness(test);
      const problem = createWaveProblem(test.waves, listTies(system));
      const least = order.map((n) => {
        setWaves(problem, n);
        return denseMargins(problem)[0];
      });
      const wanted = Math.min(...least);
      if (outcome.status !== 'found') throw new Error(outcome.status);
      expectSame([outcome.waviness.margin], [wanted]);
      expect(outcome.waviness.waves).toBe(order[least.indexOf(wanted)]);
    }
  });

  it('does not depend on the states visited before', () => {
    const pressures = [8e5, 1e4, 3e5, 1.2e6];
    const stack = stackOf(
      12,
      [16.5, 27.6],
      [
        [30, 0.15],
        [30, 0.15],
        [16, 0.1],
        [26, 0.2],
      ],
    );
    expectSame(
      marginsAt(stack, pressures),
      pressures.map((p) => marginsAt(stack, [p])[0]),
    );
  });

  it('is asked for at solved pressures in any order, by sign or by size', () => {
    const pressures = [2e5, 1e4, 9e5, 4e5];
    const loaded = createLoadedStack(TAPER, { theory: 'large-deflection' });
    for (const p of pressures) expect(loaded.at(p).status).toBe('converged');
    const margins = [...pressures].reverse().map((p) => {
      const [ruffling, outcome] = [loaded.rufflingAt(p), loaded.wavinessAt(p)];
      if (outcome.status !== 'found') throw new Error(outcome.status);
      expect(ruffling.status).toBe(outcome.waviness.margin < 0 ? 'ruffled' : 'round');
      return outcome.waviness.margin;
    });
    expectSame(margins.reverse(), marginsAt(TAPER, pressures));
  });

  it('is the same for n equal shims at n times the pressure', () => {
    const pressures = [5e4, 1.5e5, 3e5];
    const three = { ...SINGLE, shims: [SINGLE.shims[0], SINGLE.shims[0], SINGLE.shims[0]] };
    expectSame(
      marginsAt(
        three,
        pressures.map((p) => 3 * p),
      ),
      marginsAt(SINGLE, pressures),
    );
  });

  it('keeps to the scale laws of thin plates', () => {
    const pressures = [1e5, 4e5, 8e5];
    const wanted = marginsAt(TAPER, pressures);
    // Similar stacks under one pressure; stiffer material under more pressure.
    expectSame(marginsAt(scaled(TAPER, 1.7, 1.7, 1), pressures), wanted);
    expectSame(
      marginsAt(
        scaled(TAPER, 1, 1, 0.4),
        pressures.map((p) => 0.4 * p),
      ),
      wanted,
    );
    // One plate: the state in thicknesses depends on p / t⁴ alone.
    expectSame(
      marginsAt(
        scaled(SINGLE, 1, 2, 1),
        [5e4, 2e5].map((p) => 16 * p),
      ),
      marginsAt(SINGLE, [5e4, 2e5]),
    );
  });

  it('is not there unless asked for, nor under small deflection', () => {
    for (const options of [{ theory: 'large-deflection' }, { theory: 'small-deflection', waviness: true }] as const) {
      const [point] = solveLift(SINGLE, [1e5], options).points;
      expect(point.status).toBe('converged');
      expect(point).not.toHaveProperty('waviness');
    }
  });

  it('fails a point whose stability could not be settled, and recovers for the next', () => {
    const system = createStackSystem(SINGLE, { theory: 'large-deflection' });
    const test = createWavinessTest(system);
    const point = { status: 'converged', pressure_Pa: 5, iterations: 2, residual: 0 } as ConvergedLift;
    system.plates[0].x.fill(Number.NaN);
    expect(withWaviness(point, test)).toMatchObject({ status: 'singular', pressure_Pa: 5, iterations: 2 });
    expect(testRuffling(test)).toEqual({ status: 'singular' });
    system.plates[0].x.fill(0);
    expect(testWaviness(test)).toMatchObject({ status: 'found', waviness: { margin: 1 } });
    expect(withWaviness(point, undefined)).toBe(point);
  });
});
