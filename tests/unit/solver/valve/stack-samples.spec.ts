import { describe, expect, it } from 'vitest';
import type { LiftResult } from '../../../../src/solver/types.ts';
import { noSamples, withPressures } from '../../../../src/solver/valve/stack-samples.ts';
import { LINEAR_STACK_INPUT, linearStack } from '../../../helpers/linear-stack.ts';

const whole = linearStack({ compliance_m_Pa: 1e-9, crackingPressure_Pa: 0 });
const broken = linearStack({ compliance_m_Pa: 1e-9, crackingPressure_Pa: 0, failsAbove_Pa: -1 });

/** Solves everywhere but between 2 and 4. */
const withHole = (pressures: readonly number[]): LiftResult => ({
  theory: 'small-deflection',
  points: pressures.flatMap(
    (p) => (p > 2 && p < 4 ? broken : whole)(LINEAR_STACK_INPUT, [p], 'small-deflection').points,
  ),
});

const pressuresOf = ({ points }: { points: readonly { pressure_Pa: number }[] }) => points.map((p) => p.pressure_Pa);

describe('withPressures', () => {
  it('keeps the points in order and solves each pressure once', () => {
    const asked: number[][] = [];
    const solve = (pressures: readonly number[]) => {
      asked.push([...pressures]);
      return withHole(pressures);
    };
    const samples = withPressures(withPressures(noSamples, solve, [5, 1]), solve, [2, 1, 2]);
    expect(pressuresOf(samples)).toEqual([1, 2, 5]);
    expect(asked).toEqual([[1, 5], [2]]);
  });

  it('drops what lies above a failed pressure: nothing is known of the way there', () => {
    const samples = withPressures(withPressures(noSamples, withHole, [1, 5]), withHole, [3]);
    expect(pressuresOf(samples)).toEqual([1]);
    expect(pressuresOf({ points: samples.failures })).toEqual([3]);
  });
});
