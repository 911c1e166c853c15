import { describe, expect, it } from 'vitest';
import { evaluated, failed } from '../../../src/proof/evaluator.ts';
import { judge, worstShare } from '../../../src/proof/judge.ts';
import type { Expected } from '../../../src/proof/proof-case.ts';

const expected: Expected = {
  tolerances: {
    tenth: { relative: 0.1, reason: 'for this test only' },
    half: { absolute: 0.5, reason: 'for this test only' },
  },
  quantities: {
    lift: { value: -2, unit: 'mm', tolerance: 'tenth' },
    force: { value: 0, unit: 'N', tolerance: 'half' },
  },
};

describe('judge', () => {
  it('passes what lies within its tolerance and fails what lies past it', () => {
    expect(judge(evaluated({ lift: -2.19, force: 0.5 }), expected).passed).toBe(true);
    expect(judge(evaluated({ lift: -2.21, force: 0 }), expected).passed).toBe(false);
    expect(judge(evaluated({ lift: -2, force: -0.51 }), expected).passed).toBe(false);
  });

  it('tells how far each quantity is off and how far it may be', () => {
    const { quantities } = judge(evaluated({ lift: -1.9, force: 0.25 }), expected);
    expect(quantities[0]).toMatchObject({ name: 'lift', unit: 'mm', computed: -1.9, passed: true });
    expect(quantities[0].deviation).toBeCloseTo(0.1, 12);
    expect(quantities[0].allowed).toBeCloseTo(0.2, 12);
    expect(quantities[1]).toMatchObject({ deviation: 0.25, allowed: 0.5 });
  });

  it('fails a quantity that was not computed, or is no number', () => {
    expect(judge(evaluated({ lift: -2 }), expected).passed).toBe(false);
    expect(judge(evaluated({ lift: -2, force: Number.NaN }), expected).passed).toBe(false);
  });

  it('fails every quantity of a failed evaluation and says why', () => {
    const verdict = judge(failed('no contact set found'), expected);
    expect(verdict.failure).toBe('no contact set found');
    expect(verdict.quantities.map(({ passed }) => passed)).toEqual([false, false]);
  });

  it('finds the largest share of a tolerance that is used up', () => {
    expect(worstShare(judge(evaluated({ lift: -2.05, force: 0.4 }), expected))).toBeCloseTo(0.8, 12);
    expect(worstShare(judge(failed('nothing'), expected))).toBe(Number.POSITIVE_INFINITY);
  });
});
