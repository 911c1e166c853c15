import { describe, expect, it } from 'vitest';
import { liftColour, shadedBands, shareOfTop } from '../../../../src/ui/plan-view/lift-shade.ts';
import { spread } from '../../../../src/ui/plan-view/spread.ts';

describe('shades of lift', () => {
  it('go from the pale end at nothing to the deep end at the top, through the middle', () => {
    expect(shareOfTop(0.3, 1.2)).toBeCloseTo(0.25, 12);
    expect(shareOfTop(-0.1, 1.2)).toBe(0);
    expect(shareOfTop(2, 1.2)).toBe(1);
    expect(shareOfTop(0, 0)).toBe(0);
    expect(liftColour(0)).toBe('color-mix(in srgb, var(--lift-mid) 0.0%, var(--lift-low))');
    expect(liftColour(0.25)).toBe('color-mix(in srgb, var(--lift-mid) 50.0%, var(--lift-low))');
    expect(liftColour(1)).toBe('color-mix(in srgb, var(--lift-high) 100.0%, var(--lift-mid))');
  });

  it('a band has that of its middle: lines at 0.2 and 0.4 of a top of 1', () => {
    const bands = shadedBands([0.2, 0.4], 0, 1);
    expect(bands.map(({ from_m }) => from_m)).toEqual([undefined, 0.2, 0.4]);
    for (const [i, share] of [0.1, 0.3, 0.5].entries()) expect(bands[i].share).toBeCloseTo(share, 12);
  });

  it('without lines the whole shim has one', () => {
    const bands = shadedBands([], 0.1, 0.3);
    expect(bands).toHaveLength(1);
    expect(bands[0].share).toBeCloseTo(2 / 3, 12);
  });
});

describe('names at the bar', () => {
  it('are moved down where they would stand on one another', () => {
    expect(spread([10, 40, 80], 13)).toEqual([10, 40, 80]);
    expect(spread([10, 12, 30], 13)).toEqual([10, 23, 36]);
  });
});
