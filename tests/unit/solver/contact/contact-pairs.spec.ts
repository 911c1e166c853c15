/** Gaps of unloaded stacks, each found on paper from thicknesses. Lengths in units of a tenth of a millimetre. */
import { describe, expect, it } from 'vitest';
import {
  type ContactPairs,
  type Layer,
  leastRoom,
  listContactPairs,
  RIGID,
} from '../../../../src/solver/contact/contact-pairs.ts';

/** A flat layer over the mesh nodes first … last with its lower face at z. */
const layer = (z: number, thickness_m: number, last: number, first = 0): Layer => ({
  first,
  nodes: last - first + 1,
  thickness_m,
  lower_m: new Float64Array(last - first + 1).fill(z),
});

const rows = ({ size, node, below, above, gap0_m }: ContactPairs) =>
  Array.from({ length: size }, (_, c) => [node[c], below[c], above[c], Number(gap0_m[c].toFixed(9))]);

describe('contact pairs', () => {
  it('of two shims that lie on one another: closed at every node but the clamp', () => {
    const pairs = listContactPairs([layer(0, 2, 3), layer(2, 1, 2)], 4, {});
    expect(rows(pairs)).toEqual([
      [1, 0, 1, 0],
      [2, 0, 1, 0],
    ]);
  });

  it('across a crossover: open by its thickness beyond its rim', () => {
    const pairs = listContactPairs([layer(0, 2, 4), layer(2, 1, 2), layer(3, 2, 3)], 5, {});
    expect(rows(pairs)).toEqual([
      [1, 0, 1, 0],
      [1, 1, 2, 0],
      [2, 0, 1, 0],
      [2, 1, 2, 0],
      [3, 0, 2, 1],
    ]);
  });

  it('across two crossovers of one size or another: by the sum of those that do not reach so far', () => {
    const stack = [layer(0, 2, 4), layer(2, 1, 1), layer(3, 1.5, 2), layer(4.5, 2, 4)];
    expect(rows(listContactPairs(stack, 5, {})).filter(([node]) => node > 1)).toEqual([
      [2, 0, 2, 1],
      [2, 2, 3, 0],
      [3, 0, 3, 2.5],
      [4, 0, 3, 2.5],
    ]);
  });

  it('with a ring beside a crossover: the shims over it interfere by what it is thicker', () => {
    const stack = [layer(0, 2, 5), layer(2, 1, 2), layer(2, 1.5, 4, 3), layer(3, 2, 5)];
    const pairs = listContactPairs(stack, 6, {});
    expect(rows(pairs).filter(([node]) => node >= 3)).toEqual([
      [3, 0, 2, 0],
      [3, 2, 3, -0.5],
      [4, 0, 2, 0],
      [4, 2, 3, -0.5],
      [5, 0, 3, 1],
    ]);
  });

  it('number the nodes of a ring from its own bore', () => {
    const pairs = listContactPairs([layer(0, 2, 4), layer(2, 1, 4, 3)], 5, {});
    expect([...pairs.belowNode]).toEqual([3, 4]);
    expect([...pairs.aboveNode]).toEqual([0, 1]);
  });

  it('with the seat: under the first shim there, by how far the seat stands below or above it', () => {
    const stack = [layer(0, 2, 4), layer(2, 1, 2)];
    const seat = { first: 3, last: 4, z_m: 1.5 };
    expect(rows(listContactPairs(stack, 5, { seat })).filter(([, below]) => below === RIGID)).toEqual([
      [3, RIGID, 0, -1.5],
      [4, RIGID, 0, -1.5],
    ]);
  });

  it('with the backing plate: over the last shim there, only out to its own edge', () => {
    const stack = [layer(0, 2, 4), layer(2, 1, 2)];
    const backing = { first: 0, last: 3, z_m: 3.5 };
    expect(rows(listContactPairs(stack, 5, { backing })).filter(([, , above]) => above === RIGID)).toEqual([
      [1, 1, RIGID, 0.5],
      [2, 1, RIGID, 0.5],
      [3, 0, RIGID, 1.5],
    ]);
  });

  it('follow the faces of a coned shim', () => {
    const coned = { ...layer(2, 1, 3), lower_m: Float64Array.of(2, 2.5, 3, 3.5) };
    expect(rows(listContactPairs([layer(0, 2, 3), coned], 4, {})).map(([, , , gap]) => gap)).toEqual([0.5, 1, 1.5]);
  });

  it('leave out nodes where nothing lies, and take rounding for no gap', () => {
    const off = layer(2 + 1e-13, 1, 1);
    expect(listContactPairs([layer(0, 2, 2), off], 5, { seat: { first: 4, last: 4, z_m: 0 } }).size).toBe(1);
    expect(listContactPairs([layer(0, 2, 2), off], 5, {}).gap0_m[0]).toBe(0);
  });
});

describe('least room', () => {
  const seat = (z_m: number) => ({ first: 3, last: 4, z_m });
  const backing = (z_m: number, last = 4) => ({ first: 0, last, z_m });
  const stack = [layer(0, 2, 4), layer(2, 1, 4)];

  it('is what seat and backing plate leave over the thickness of the shims between', () => {
    expect(leastRoom(listContactPairs(stack, 5, { seat: seat(0.5), backing: backing(4) }))).toBeCloseTo(0.5, 12);
    expect(leastRoom(listContactPairs(stack, 5, { seat: seat(1.5), backing: backing(4) }))).toBeCloseTo(-0.5, 12);
  });

  it('counts only where both faces are', () => {
    expect(leastRoom(listContactPairs(stack, 5, { seat: seat(9) }))).toBe(Number.POSITIVE_INFINITY);
    expect(leastRoom(listContactPairs(stack, 5, { backing: backing(-9) }))).toBe(Number.POSITIVE_INFINITY);
    expect(leastRoom(listContactPairs(stack, 5, { seat: seat(9), backing: backing(4, 2) }))).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  it('does not mistake an interference that others make up for', () => {
    const crossed = [layer(0, 2, 4), layer(2, 1, 2), layer(3, 1, 4)];
    // The seat presses by 0.6, but the crossover leaves 1 between the shims at the land.
    expect(leastRoom(listContactPairs(crossed, 5, { seat: seat(0.6), backing: backing(4) }))).toBeCloseTo(0.4, 12);
  });
});
