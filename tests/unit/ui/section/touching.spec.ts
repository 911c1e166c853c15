import { describe, expect, it } from 'vitest';
import type { ValveBody, Valving } from '../../../../src/model/project.ts';
import type { ShimOutline } from '../../../../src/ui/section/geometry.ts';
import { touching } from '../../../../src/ui/section/touching.ts';

const body: ValveBody = {
  ports: { count: 6, diameter_mm: 5, length_mm: 12 },
  pressureZone: { innerDiameter_mm: 17, outerDiameter_mm: 27 },
  seat: { innerDiameter_mm: 28, outerDiameter_mm: 29 },
};

/** Bottoms at radii 6 (clamp), 8, 14 and 15, as many as given; bores at 3. */
function outline(shim: number, thickness_mm: number, heights: readonly number[]): ShimOutline {
  const radii = [3, 6, 8, 14, 15].slice(0, heights.length + 1);
  const bottom = radii.map((r, i) => ({ r, z: heights[Math.max(0, i - 1)] }));
  const top = bottom.map(({ r, z }) => ({ r, z: z + thickness_mm }));
  return { row: shim, shim, outerRadius_mm: radii[radii.length - 1], thickness_mm, bottom, top };
}

const valving = (part: Partial<Valving> = {}): Valving => ({
  clampDiameter_mm: 12,
  seatHeight_mm: 0.1,
  shims: [
    { outerDiameter_mm: 30, thickness_mm: 0.2 },
    { outerDiameter_mm: 16, thickness_mm: 0.1 },
    { outerDiameter_mm: 30, thickness_mm: 0.2 },
  ],
  ...part,
});

describe('what touches in a bent stack', () => {
  // Face at 0.1 over the seat at its inner land, 0.05 at the rim side; crossover rim on both; last shim 0.1 clear of the face at the rim.
  const face = outline(0, 0.2, [0, 0.02, 0.2, 0.25]);
  const crossover = outline(1, 0.1, [0.2, 0.22]);
  const last = outline(2, 0.2, [0.3, 0.32, 0.5, 0.54]);

  it('is a circle where the rim of a small shim bears, and nothing where a gap is open', () => {
    const { contacts } = touching([face, crossover, last], valving(), body);
    expect(contacts).toEqual([
      { below: 0, above: 1, from: { r: 8, z: 0.22 }, to: { r: 8, z: 0.22 } },
      { below: 1, above: 2, from: { r: 8, z: 0.32 }, to: { r: 8, z: 0.32 } },
    ]);
  });

  it('leaves the widest gaps: 0.1 at the seat, 0.1 across the crossover', () => {
    const { gaps } = touching([face, crossover, last], valving(), body);
    const told = gaps.map(({ below, above, r, bottom_mm, top_mm }) => [
      below,
      above,
      r,
      +(top_mm - bottom_mm).toFixed(6),
    ]);
    expect(told).toEqual([
      ['seat', 0, 14, 0.1],
      [0, 2, 14, 0.1],
    ]);
  });

  it('is a stretch where two lie on one another over several nodes', () => {
    const flat = [outline(0, 0.2, [0, 0, 0, 0.05]), outline(1, 0.1, [0.2, 0.2, 0.2, 0.3])];
    const { contacts } = touching(flat, valving({ seatHeight_mm: -1 }), body);
    expect(contacts).toEqual([{ below: 0, above: 1, from: { r: 8, z: 0.2 }, to: { r: 14, z: 0.2 } }]);
  });

  it('has no mark between equal shims that lie on one another everywhere', () => {
    const pair = [outline(0, 0.2, [0, 0, 0, 0]), outline(1, 0.2, [0.2, 0.2, 0.2, 0.2])];
    expect(touching(pair, valving({ seatHeight_mm: -1 }), body).contacts).toEqual([]);
  });

  it('tells the seat and the backing plate from the shims, the plate as far as it reaches', () => {
    const seated = [outline(0, 0.2, [0, 0.02, 0.1, 0.15])];
    // Height of the stack 0.2 + 0.1 + 0.2 = 0.5; less 0.2 under its top: the plate stands at 0.3.
    const under = valving({ backingPlate: { gap_mm: -0.2, outerDiameter_mm: 28 } });
    const { contacts, gaps } = touching(seated, under, body);
    expect(contacts.map(({ below, above, from, to }) => [below, above, from.r, to.r]).sort()).toEqual([
      [0, 'plate', 14, 14],
      ['seat', 0, 14, 14],
    ]);
    expect(gaps.map(({ below, above, r }) => [below, above, r])).toEqual([[0, 'plate', 8]]);
  });
});
