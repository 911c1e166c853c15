import { describe, expect, it } from 'vitest';
import { clicksEqualTo, forceAtClicks, sweptClicks } from '../../../../src/ui/sweeps/click-equals.ts';

describe('sweptClicks', () => {
  it('takes every click of a usual adjuster, and both ends of one with very many', () => {
    expect(sweptClicks(3)).toEqual([0, 1, 2, 3]);
    expect(sweptClicks(0)).toEqual([0]);
    const many = sweptClicks(101);
    expect(many.slice(0, 3)).toEqual([0, 3, 6]);
    expect(many.slice(-2)).toEqual([99, 101]);
  });
});

const swept = { at: [0, 2, 4, 6], force_N: [-400, -300, null, -100] };

describe('forceAtClicks', () => {
  it('goes straight between two clicks, and has nothing beside one that did not solve or outside', () => {
    expect([0, 1, 2, 6].map((clicks) => forceAtClicks(swept, clicks))).toEqual([-400, -350, -300, -100]);
    expect([3, 5, 7, -1].map((clicks) => forceAtClicks(swept, clicks))).toEqual([null, null, null, null]);
    expect(forceAtClicks({ at: [], force_N: [] }, 0)).toBeNull();
  });
});

describe('clicksEqualTo', () => {
  it('finds where the force is met, between two clicks', () => {
    expect(clicksEqualTo(swept, -325, 0)).toBe(1.5);
    expect(clicksEqualTo(swept, -400, 6)).toBe(0);
  });

  it('has no answer out of reach, nor across a click that did not solve', () => {
    expect(clicksEqualTo(swept, -401, 0)).toBeUndefined();
    expect(clicksEqualTo(swept, -200, 0)).toBeUndefined();
  });

  it('takes the nearest of several', () => {
    const bent = { at: [0, 10, 20], force_N: [100, 200, 100] };
    expect(clicksEqualTo(bent, 150, 3)).toBe(5);
    expect(clicksEqualTo(bent, 150, 18)).toBe(15);
  });
});
