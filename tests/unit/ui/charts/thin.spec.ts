import { describe, expect, it } from 'vitest';
import { thinned } from '../../../../src/ui/charts/thin.ts';

const COUNT = 20_000;
const x = Float64Array.from({ length: COUNT }, (_, k) => Math.sin(k / 700));
const y = Float64Array.from({ length: COUNT }, (_, k) => Math.cos(k / 90));
x[1234] = 5;
y[7777] = -9;
y[7778] = 8;
// The end is no peak of its neighbourhood.
[x[COUNT - 1], y[COUNT - 1]] = [x[COUNT - 40], y[COUNT - 40]];

describe('a thinned line', () => {
  it('keeps its ends and every peak of both coordinates, in order, and no more points than asked for', () => {
    const kept = thinned(x, y, 1200);
    expect(kept.length).toBeLessThanOrEqual(1200);
    expect(kept).toEqual([...new Set(kept)].sort((a, b) => a - b));
    expect(kept).toEqual(expect.arrayContaining([0, 1234, 7777, 7778, COUNT - 1]));
  });

  it('stays whole where it is short', () => expect(thinned([1, 2, 3], [3, 1, 2], 3)).toEqual([0, 1, 2]));
});
