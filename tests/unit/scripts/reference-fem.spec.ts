/** The continuum model as it is written for an independent program. */
import { describe, expect, it } from 'vitest';
import { bodiesOf, isElastic, topOf } from '../../../scripts/reference-fem/bodies.ts';
import { type ContactPair, contactPairs } from '../../../scripts/reference-fem/contact-pairs.ts';
import { commonRadii, meshBodies } from '../../../scripts/reference-fem/mesh.ts';
import { heldNodes, type ModelOptions, writeModel } from '../../../scripts/reference-fem/write-model.ts';
import type { StackFile } from '../../../src/model/project.ts';
import { femStack, ringed, threeStages } from '../../helpers/fem-stacks.ts';

const options: ModelOptions = {
  theory: 'large-deflection',
  pressures_MPa: [0.1, 0.2],
  penalty_MPa_mm: 3e6,
  elementSize_mm: 0.5,
};
const written = (stack: StackFile, changes: Partial<ModelOptions> = {}) =>
  writeModel(stack, { ...options, ...changes });
const named = ({ lower, upper, spans }: ContactPair) =>
  `${lower.name}-${upper.name} ${spans.map(({ from_mm, to_mm }) => `${from_mm}..${to_mm}`).join(' ')}`;

describe('bodies', () => {
  it('stack by the thickness of the clamped shims', () => {
    const heights = bodiesOf(threeStages()).map(({ bottom_mm }) => Number(bottom_mm.toFixed(6)));
    expect(heights).toEqual([0, 0.15, 0.25, 0.45, 0.6]);
  });

  it('start propped up by a ring, to be drawn down to the hub by what it is too thick', () => {
    const [, , crossover, ring, above] = bodiesOf(ringed());
    expect(crossover.shift_mm).toBe(0);
    expect(ring).toMatchObject({ role: 'ring', innerRadius_mm: 11, shift_mm: 0 });
    expect(ring.bottom_mm).toBeCloseTo(0.15, 6);
    expect(above.bottom_mm).toBeCloseTo(0.35, 6);
    expect(above.shift_mm).toBeCloseTo(-0.1, 6);
  });

  it('start on a raised seat, and the seat rises by its height', () => {
    const seat = { innerDiameter_mm: 22, outerDiameter_mm: 24, height_mm: 0.1 };
    const [raised] = bodiesOf(threeStages({ seat }));
    expect([topOf(raised), raised.shift_mm]).toEqual([0, 0.1]);
    const [sunk] = bodiesOf(threeStages({ seat: { ...seat, height_mm: -0.1 } }));
    expect(topOf(sunk)).toBeCloseTo(-0.1, 12);
    expect(sunk.shift_mm).toBe(0);
  });

  it('end with a plate over the unloaded stack, out to its largest rim', () => {
    const plate = bodiesOf(threeStages({ backingPlate: { gap_mm: 0.4 } })).at(-1);
    expect(plate).toMatchObject({ role: 'plate', innerRadius_mm: 6, outerRadius_mm: 15 });
    expect(plate?.bottom_mm).toBeCloseTo(0.85 + 0.4, 12);
  });

  it('refuse a ring that nothing presses, and what the model does not carry', () => {
    expect(() => bodiesOf(ringed(0.05))).toThrow('SHIM3: nothing presses on this ring');
    const dished = femStack([{ outerDiameter_mm: 28, thickness_mm: 0.2, dish_mm: 0.1 } as never]);
    expect(() => bodiesOf(dished)).toThrow('shims[0]: the continuum model does not carry "dish_mm"');
  });
});

describe('contact pairs', () => {
  it('are neighbours, and shims that face each other past both crossovers', () => {
    expect(contactPairs(bodiesOf(threeStages())).map(named)).toEqual([
      'SHIM1-SHIM2 6..9',
      'SHIM1-SHIM3 9..14',
      'SHIM2-SHIM3 6..9',
      'SHIM3-SHIM4 6..8',
      'SHIM3-SHIM5 8..12',
      'SHIM4-SHIM5 6..8',
    ]);
  });

  it('go past a ring on both sides', () => {
    expect(contactPairs(bodiesOf(ringed())).map(named)).toEqual([
      'SEAT-SHIM1 11..12',
      'SHIM1-SHIM2 6..8',
      'SHIM1-SHIM3 11..13',
      'SHIM1-SHIM4 8..11',
      'SHIM2-SHIM4 6..8',
      'SHIM3-SHIM4 11..13',
    ]);
  });

  it('leave the seat to the face shim and give the plate to every rim that sees it', () => {
    const seat = { innerDiameter_mm: 22, outerDiameter_mm: 24, height_mm: 0 };
    const pairs = contactPairs(bodiesOf(threeStages({ seat, backingPlate: { gap_mm: 0.3 } }))).map(named);
    expect(pairs.filter((pair) => pair.startsWith('SEAT'))).toEqual(['SEAT-SHIM1 11..12']);
    expect(pairs.filter((pair) => pair.includes('PLATE'))).toEqual([
      'SHIM1-PLATE 14..15',
      'SHIM3-PLATE 12..14',
      'SHIM5-PLATE 6..12',
    ]);
  });

  it('put the contact points on the shorter face', () => {
    const slaves = contactPairs(bodiesOf(ringed())).map(({ lower, upper, slave }) =>
      slave === 'lower' ? lower : upper,
    );
    expect(slaves.map(({ name }) => name)).toEqual(['SHIM1', 'SHIM2', 'SHIM3', 'SHIM4', 'SHIM2', 'SHIM3']);
  });
});

describe('mesh', () => {
  const grading = { clamp_mm: 6, size_mm: 0.5, sizeAtClamp_mm: 0.05 };

  it('meets every edge, grows from the clamp and keeps to its longest element', () => {
    const radii = commonRadii([15, 6, 9, 9, 14], grading);
    for (const edge of [6, 9, 14, 15]) expect(radii).toContain(edge);
    const lengths = radii.slice(1).map((r, i) => r - radii[i]);
    expect(lengths[0]).toBeLessThanOrEqual(0.05);
    expect(Math.min(...lengths)).toBeGreaterThan(0);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(0.5 + 1e-12);
  });

  it('has 5 n + 3 nodes for n elements in a row, numbered through the bodies', () => {
    const meshes = meshBodies(bodiesOf(threeStages()), [], grading);
    for (const { nodes, elements } of meshes) expect(nodes).toHaveLength(5 * elements.length + 3);
    const ids = meshes.flatMap(({ nodes }) => nodes.map(({ id }) => id));
    expect(ids).toEqual(ids.map((_, i) => i + 1));
  });

  it('turns its elements counter-clockwise, with midsides half way', () => {
    for (const { nodes, elements } of meshBodies(bodiesOf(ringed()), [], grading)) {
      const at = new Map(nodes.map((node) => [node.id, node]));
      for (const element of elements) {
        const points = element.nodes.map((id) => at.get(id) as (typeof nodes)[number]);
        const corners = points.slice(0, 4);
        const area = corners.reduce((sum, p, i) => {
          const q = corners[(i + 1) % 4];
          return sum + (p.radius_mm * q.z_mm - q.radius_mm * p.z_mm) / 2;
        }, 0);
        expect(area).toBeGreaterThan(0);
        for (const [i, p] of corners.entries()) {
          const [q, middle] = [corners[(i + 1) % 4], points[4 + i]];
          expect(middle.radius_mm).toBeCloseTo((p.radius_mm + q.radius_mm) / 2, 12);
          expect(middle.z_mm).toBeCloseTo((p.z_mm + q.z_mm) / 2, 12);
        }
      }
    }
  });

  it('gives facing bodies the same radii', () => {
    const [first, , third] = meshBodies(bodiesOf(threeStages()), [], grading);
    const radii = (mesh: typeof first) => mesh.midSurface.map(({ radius_mm }) => radius_mm);
    expect(radii(first)).toEqual(expect.arrayContaining(radii(third)));
  });
});

describe('input deck', () => {
  it('holds the clamp edge of shims through the thickness, rigid bodies whole, rings nowhere', () => {
    const seat = { innerDiameter_mm: 22, outerDiameter_mm: 24, height_mm: 0.1 };
    for (const stack of [ringed(), threeStages({ seat })]) {
      for (const mesh of written(stack).meshes) {
        const held = heldNodes(mesh).map((id) => mesh.nodes.find((node) => node.id === id)?.radius_mm);
        if (mesh.body.role === 'ring') expect(held).toEqual([]);
        else if (isElastic(mesh.body)) expect(held).toEqual([6, 6, 6]);
        else expect(held).toHaveLength(mesh.nodes.length);
      }
    }
  });

  it('presses the piston side of the face shim inside the zone', () => {
    const { deck, meshes } = written(threeStages());
    const loaded = /\*ELSET, ELSET=LOADED\n((?:\d+,\n)+)/.exec(deck)?.[1].match(/\d+/g)?.map(Number);
    const expected = meshes[0].elements.filter((e) => e.innerRadius_mm >= 7 - 1e-9 && e.outerRadius_mm <= 11 + 1e-9);
    expect(loaded).toEqual(expected.map(({ id }) => id));
    expect(deck.match(/^LOADED,P1,.*$/gm)).toEqual(['LOADED,P1,0.1', 'LOADED,P1,0.2']);
  });

  it('takes large displacements with the gaps of the bodies', () => {
    const { deck, enlargement } = written(threeStages());
    expect(enlargement).toBe(1);
    expect(deck.match(/^\*STEP.*NLGEOM$/gm)).toHaveLength(2);
    expect(deck).not.toContain('*CLEARANCE');
  });

  it('takes the small-deflection limit on an enlarged stack with its own gaps and preload', () => {
    const { deck, meshes, enlargement } = written(ringed(), { theory: 'small-deflection' });
    expect(enlargement).toBe(100);
    expect(deck).not.toContain('NLGEOM');
    const [id, radius] = /^\*NODE, NSET=ALL\n(\d+),(.*),.*$/m.exec(deck)?.slice(1).map(Number) ?? [];
    expect(radius).toBeCloseTo(100 * (meshes[0].nodes.find((node) => node.id === id)?.radius_mm ?? 0), 9);
    expect(Number(/^LOADED,P1,(.*)$/m.exec(deck)?.[1])).toBeCloseTo(0.1 / 100, 12);
    expect(Number(/LINEAR\n(.*)/.exec(deck)?.[1])).toBeCloseTo(3e4, 6);
    expect(Number(/^HSHIM4,2,2,(.*)$/m.exec(deck)?.[1])).toBeCloseTo(-0.1, 6);
    // Shims 1 and 4 start apart by the thickness of the ring, crossover and shim 4 by the 0.1 that it is thicker.
    const clearances = [...deck.matchAll(/VALUE=(.*)/g)].map(([, value]) => Number(value));
    expect(clearances).toEqual([expect.closeTo(0.2, 6), expect.closeTo(0.1, 6)]);
  });

  it('prints what the reader needs at every step, for preloaded stacks also before any pressure', () => {
    expect(written(threeStages()).steps_MPa).toEqual([0.1, 0.2]);
    const { deck, steps_MPa } = written(ringed());
    expect(steps_MPa).toEqual([0, 0.1, 0.2]);
    expect(deck.match(/\*EL PRINT/g)).toHaveLength(3);
  });

  it('refuses pressures that do not rise', () => {
    expect(() => written(ringed(), { pressures_MPa: [0.2, 0.1] })).toThrow('pressures must rise');
    expect(() => written(threeStages(), { pressures_MPa: [0, 0.1] })).toThrow('flat at 0 MPa');
  });
});
