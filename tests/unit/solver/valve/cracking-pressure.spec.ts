import { describe, expect, it } from 'vitest';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { LiftResult, StackInput } from '../../../../src/solver/types.ts';
import { findCracking } from '../../../../src/solver/valve/cracking-pressure.ts';
import { noSamples, withPressures } from '../../../../src/solver/valve/stack-samples.ts';
import { LINEAR_STACK_INPUT, linearStack } from '../../../helpers/linear-stack.ts';

type Solve = (pressures_Pa: readonly number[]) => LiftResult;

const FIRST = [0, 1e5, 3e5, 1e6];
const crackingOf = (solve: Solve): number => findCracking(withPressures(noSamples, solve, FIRST), solve).pressure_Pa;

/** A stack that cracks at `crack_Pa`, whose force on the seat falls by a law of its own. */
const withSeatForce =
  (crack_Pa: number, force: (p: number) => number): Solve =>
  (pressures) => {
    const law = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: crack_Pa };
    const { theory, points } = linearStack(law)(LINEAR_STACK_INPUT, pressures, 'small-deflection');
    return {
      theory,
      points: points.map((p) => ({ ...p, seatForce_N: p.pressure_Pa < crack_Pa ? force(p.pressure_Pa) : 0 })),
    };
  };

describe('findCracking', () => {
  it.each([
    // The line through 0.1 and 0.3 MPa ends beyond the cracking pressure, by so little that it lies in the bracket, or far outside it.
    ['a little beyond', 6.5e5, 6.55e5],
    ['far beyond', 4e5, 1.2e6],
    ['short of', 6.5e5, 4.5e5],
  ])('finds it where the seat force bends and its line ends %s the cracking pressure', (_, crack_Pa, lineEnd_Pa) => {
    const atBend = 20 * (1 - 3e5 / lineEnd_Pa);
    const force = (p: number) => (p <= 3e5 ? 20 * (1 - p / lineEnd_Pa) : (atBend * (crack_Pa - p)) / (crack_Pa - 3e5));
    expect(Math.abs(crackingOf(withSeatForce(crack_Pa, force)) / crack_Pa - 1)).toBeLessThan(2e-3);
  });

  it('finds it where the seat force fades away', () => {
    const fading = withSeatForce(2.9e5, (p) => 20 * (1 - p / 2.9e5) ** 1.5);
    expect(Math.abs(crackingOf(fading) / 2.9e5 - 1)).toBeLessThan(0.015);
  });

  it('finds it in a stack whose second shim lets go of the first', () => {
    const shim = { thickness_m: 0.2e-3, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };
    const stack: StackInput = {
      clampRadius_m: 4.3e-3,
      shims: [
        { ...shim, outerRadius_m: 9.3e-3 },
        { ...shim, outerRadius_m: 8.57e-3 },
      ],
      pressureZone: { innerRadius_m: 5.5e-3, outerRadius_m: 9.07e-3 },
      seat: { innerRadius_m: 9.07e-3, outerRadius_m: 9.3e-3, height_m: 0.16e-3 },
    };
    const solve: Solve = (pressures) =>
      solveLift(stack, pressures, { theory: 'small-deflection', landPressure: 'falling' });
    const opens = (p: number): boolean => {
      const [point] = solve([p]).points;
      return point.status === 'converged' && point.seatOpening_m > 1e-8;
    };
    let [low, high] = [3e5, 1e6];
    while (high / low > 1.0003) {
      const middle = Math.sqrt(low * high);
      if (opens(middle)) high = middle;
      else low = middle;
    }
    expect(Math.abs(crackingOf(solve) / high - 1)).toBeLessThan(2e-3);
  });

  it('is 0 for a stack that opens at once, and infinite for one that never does', () => {
    expect(crackingOf(withSeatForce(0, () => 0))).toBe(0);
    expect(crackingOf(withSeatForce(1e12, () => 20))).toBe(Number.POSITIVE_INFINITY);
  });
});
