/** Heights of unloaded stacks found on paper. Lengths in tenths of a millimetre; mesh nodes at radius 6, 8, 10, 12, 14. */
import { describe, expect, it } from 'vitest';
import { clampedThickness, coneHeight, layLayers } from '../../../../src/solver/stack/layers.ts';
import type { MergedPlate } from '../../../../src/solver/stack/merge-neighbours.ts';

const RADII = Float64Array.of(6, 8, 10, 12, 14);
const plate = (thickness_m: number, rest: Partial<MergedPlate> = {}): MergedPlate => ({
  outerRadius_m: 14,
  innerRadius_m: 6,
  clamped: true,
  dish_m: 0,
  thickness_m,
  poissonsRatio: 0.3,
  D: 1,
  C: 1,
  from: 0,
  to: 1,
  ...rest,
});
const ALL = { first: 0, nodes: 5 };
const heights = (merged: readonly MergedPlate[], ranges: readonly (typeof ALL)[], seat = 0) =>
  layLayers(merged, ranges, RADII, seat).map(({ lower_m }) => [...lower_m].map((z) => Number(z.toFixed(9))));

describe('layers', () => {
  it('pile up at the clamp, each flat on the thickness of those before', () => {
    expect(heights([plate(2), plate(1), plate(3)], [ALL, { first: 0, nodes: 2 }, ALL])).toEqual([
      [0, 0, 0, 0, 0],
      [2, 2],
      [3, 3, 3, 3, 3],
    ]);
  });

  it('rise along a cone from the bore to the dish at the rim', () => {
    expect(heights([plate(1), plate(1, { dish_m: -4 })], [ALL, ALL])[1]).toEqual([1, 0, -1, -2, -3]);
    expect([...coneHeight(plate(1, { dish_m: 3 }), RADII, { first: 2, nodes: 3 })]).toEqual([0, 1.5, 3]);
  });

  it('put a ring on the highest surface under it, without raising the clamp', () => {
    const ring = plate(1.5, { clamped: false, innerRadius_m: 10 });
    const stack = [plate(2), plate(1, { outerRadius_m: 10 }), ring, plate(2)];
    const ranges = [ALL, { first: 0, nodes: 3 }, { first: 2, nodes: 3 }, ALL];
    // At its bore the ring meets the rim of the second shim, whose top is at 3.
    expect(heights(stack, ranges)[2]).toEqual([3, 3, 3]);
    expect(heights(stack, ranges)[3]).toEqual([3, 3, 3, 3, 3]);
    expect(clampedThickness(stack)).toBe(5);
  });

  it('put a ring on the rim of a coned shim under it, and a coned ring on its own low edge', () => {
    const ring = plate(1, { clamped: false, innerRadius_m: 10 });
    const ranges = [ALL, { first: 2, nodes: 3 }];
    expect(heights([plate(2, { dish_m: 4 }), ring], ranges)[1]).toEqual([6, 6, 6]);
    expect(heights([plate(2), { ...ring, dish_m: -1 }], ranges)[1]).toEqual([3, 2.5, 2]);
  });

  it('put a ring with nothing under it on the seat', () => {
    const ring = plate(1, { clamped: false, innerRadius_m: 10 });
    expect(heights([ring, plate(2)], [{ first: 2, nodes: 3 }, ALL], 0.7)[0]).toEqual([0.7, 0.7, 0.7]);
  });
});
