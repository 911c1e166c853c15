import { describe, expect, it } from 'vitest';
import { layDimension } from '../../../../src/ui/sketches/lay-dimension.ts';

/** Tips of the arrow heads: the first point of each. */
const tips = (heads: string): string[] => heads.match(/(?<=M)[^L]+/g) ?? [];

describe('a dimension', () => {
  it('stands between its edges with the letter in the middle, and its extension lines leave a gap at the edge', () => {
    const laid = layDimension({ of: 'bore', along: 'x', from: [10, 20], to: [110, 20], at: 50 });
    expect(laid.letter).toEqual([60, 50]);
    expect(tips(laid.heads)).toEqual(['10 50', '110 50']);
    expect(laid.lines).toBe('M10 22L10 53.5M110 22L110 53.5M10 50L110 50');
  });

  it('turns for a height', () => {
    const laid = layDimension({ of: 'rod', along: 'y', from: [20, 10], to: [20, 110], at: 50, letterAt: 30 });
    expect(laid.letter).toEqual([50, 30]);
    expect(tips(laid.heads)).toEqual(['50 10', '50 110']);
  });

  it('points from outside where there is no room between the edges', () => {
    const laid = layDimension({ of: 'rod', along: 'x', from: [10, 20], to: [20, 20], at: 20 });
    expect(tips(laid.heads)).toEqual(['10 20', '20 20']);
    // The letter beyond the second edge, the line out to it and past the first.
    expect(laid.letter).toEqual([38, 20]);
    expect(laid.lines).toBe('M1 20L38 20');
    // Heads open away from the space between: the foot of the first is left of its tip.
    expect(laid.heads.startsWith('M10 20L4.5 ')).toBe(true);
  });

  it('that is no distance points at its thing', () => {
    const laid = layDimension({ of: 'heatedMass', letter: [10, 10], points: [40, 50] });
    expect(laid).toMatchObject({ lines: 'M10 10L40 50', letter: [10, 10] });
    expect(tips(laid.heads)).toEqual(['40 50']);
  });
});
