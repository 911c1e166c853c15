import { describe, expect, it } from 'vitest';
import { singleShims, stackHeight } from '../../../../src/model/lay-shims.ts';
import type { ValveBody, Valving } from '../../../../src/model/project.ts';
import { drawingHeight, pistonOutline, shimOutlines } from '../../../../src/ui/section/geometry.ts';
import { chooseScale, PIXELS_PER_MM } from '../../../../src/ui/section/scale.ts';
import { laySheet, shimPath } from '../../../../src/ui/section/sheet.ts';

const valving: Valving = {
  clampDiameter_mm: 12,
  seatHeight_mm: 0.1,
  shims: [
    { outerDiameter_mm: 30, thickness_mm: 0.15, count: 2 },
    { outerDiameter_mm: 16, thickness_mm: 0.1 },
    { outerDiameter_mm: 28, thickness_mm: 0.2 },
  ],
};
const body: ValveBody = {
  ports: { count: 6, diameter_mm: 5, length_mm: 12 },
  pressureZone: { innerDiameter_mm: 17, outerDiameter_mm: 27 },
  seat: { innerDiameter_mm: 27.6, outerDiameter_mm: 28.6 },
};
const state = {
  pressure_Pa: 1e6,
  seatOpening_m: 0.0002,
  shimEdgeLift_m: [0.0005, 0.0005, 0.0001, 0.0004],
  shimStress_Pa: [1, 1, 1, 1],
  seatForce_N: 0,
  plateForce_N: 0,
  clampForce_N: 0,
  shape: {
    waves: 0,
    radius_m: Float64Array.of(0.006, 0.008, 0.014, 0.015),
    firstNode: [0, 0, 0, 0],
    lift_m: [
      Float64Array.of(0, 0.0001, 0.0004, 0.0005),
      Float64Array.of(0, 0.0001, 0.0004, 0.0005),
      Float64Array.of(0, 0.0001),
      Float64Array.of(0, 0.0001, 0.0004),
    ],
  },
};

describe('the stack in section', () => {
  it('shims lie on one another: 0, 0.15, 0.30, 0.40 mm above the hub', () => {
    const bases = shimOutlines(valving).map(({ bottom }) => bottom[0].z);
    for (const [i, base] of [0, 0.15, 0.3, 0.4].entries()) expect(bases[i]).toBeCloseTo(base, 12);
    expect(stackHeight(valving)).toBeCloseTo(0.6, 12);
    expect(singleShims(valving.shims).map(({ row }) => row)).toEqual([0, 0, 1, 2]);
  });

  it('each reaches to its own rim, as thick as it is, at rest and bent', () => {
    for (const outlines of [shimOutlines(valving), shimOutlines(valving, state)])
      for (const [i, { bottom, top, outerRadius_mm, thickness_mm }] of outlines.entries()) {
        expect(outerRadius_mm).toBe([15, 15, 8, 14][i]);
        expect(bottom.at(-1)?.r).toBeCloseTo(outerRadius_mm, 9);
        for (const [at, { r, z }] of bottom.entries()) {
          expect(top[at].r).toBe(r);
          expect(top[at].z - z).toBeCloseTo(thickness_mm, 12);
        }
      }
  });

  it('bends by the computed lift, in millimetres, and stays flat inside the clamp', () => {
    const [face, second] = shimOutlines(valving, state);
    expect(face.bottom.at(-1)?.z).toBeCloseTo(0.5, 12);
    expect(second.bottom.at(-1)?.z).toBeCloseTo(0.65, 12);
    expect(face.bottom[0].z).toBe(face.bottom[1].z);
  });

  it('a ring lies on the shim below it and adds nothing at the clamp; a dished shim stands up at its rim', () => {
    const ringed: Valving = {
      ...valving,
      shims: [
        { outerDiameter_mm: 30, thickness_mm: 0.15 },
        { outerDiameter_mm: 29, innerDiameter_mm: 26, thickness_mm: 0.2 },
        { outerDiameter_mm: 30, thickness_mm: 0.1, dish_mm: 0.05 },
      ],
    };
    const [, ring, dished] = shimOutlines(ringed);
    expect(ring.bottom.map(({ r, z }) => [r, z])).toEqual([
      [13, 0.15],
      [14.5, 0.15],
    ]);
    expect(dished.bottom[0].z).toBe(0.15);
    expect(dished.bottom[1].z).toBeCloseTo(0.2, 12);
    expect(stackHeight(ringed)).toBeCloseTo(0.25, 12);
  });

  it('the piston has its seat at its height and its diameters, and the channel inside the zone', () => {
    const { outer, inner, channel } = pistonOutline(valving, body, 23, { recess: 1, groove: 3, shoulder: 2, body: 9 });
    expect(outer.filter(({ z }) => z === 0.1).map(({ r }) => r)).toEqual([13.8, 14.3]);
    expect(inner.filter(({ z }) => z === 0).at(-1)?.r).toBe(6);
    expect(channel.inner_mm).toBeGreaterThanOrEqual(8.5);
    expect(channel.outer_mm).toBeLessThanOrEqual(13.5);
    expect(channel.outer_mm - channel.inner_mm).toBeCloseTo(5, 12);
    expect(Math.max(...outer.map(({ r }) => r))).toBe(23);
  });

  it('leaves room for the lift or the backing plate, whichever is higher', () => {
    expect(drawingHeight(valving, 0.7)).toBeCloseTo(1.3, 12);
    expect(drawingHeight({ ...valving, backingPlate: { gap_mm: 0.9 } }, 0.7)).toBeCloseTo(1.5, 12);
  });
});

describe('the scale', () => {
  it('is the largest preferred one that fits: 3 : 1 for 46 mm in 530 px, heights × 5 for 2 mm in 150 px', () => {
    const scale = chooseScale(46, 2, { width_px: 530, height_px: 150 });
    expect(scale.radial).toBe(3);
    expect(scale.axial).toBe(5);
    expect(scale.pixelsPerMm).toBeCloseTo(3 * PIXELS_PER_MM, 12);
  });

  it('takes the factor that a person asks for', () =>
    expect(chooseScale(46, 2, { width_px: 530, height_px: 10 }, 10).axial).toBe(10));

  it('draws 1 mm of radius as that many pixels, and up as up', () => {
    const sheet = laySheet({ width: 560, height: 320, extent: 'full', boreRadius_mm: 23, top_mm: 2 });
    expect(sheet.x(10)).toBeCloseTo(10 * sheet.radial * PIXELS_PER_MM, 9);
    expect(sheet.y(0) - sheet.y(1)).toBeCloseTo(sheet.radial * sheet.axial * PIXELS_PER_MM, 9);
    expect(sheet.y(2)).toBeGreaterThan(0);
    expect(sheet.axisX + sheet.x(23)).toBeLessThanOrEqual(560);
    const half = laySheet({ width: 360, height: 200, extent: 'half', boreRadius_mm: 23, top_mm: 2 });
    expect(half.axisX + half.x(23)).toBeLessThanOrEqual(360);
  });

  it('a path closes over both surfaces', () => {
    const sheet = laySheet({ width: 560, height: 320, extent: 'full', boreRadius_mm: 23, top_mm: 2 });
    const path = shimPath(
      sheet,
      [
        { r: 0, z: 0 },
        { r: 1, z: 0 },
      ],
      [
        { r: 0, z: 1 },
        { r: 1, z: 1 },
      ],
    );
    expect(path.match(/[ML]/g)).toHaveLength(4);
    expect(path.endsWith('Z')).toBe(true);
  });
});
