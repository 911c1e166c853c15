import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildRadialMesh, LEAST_WIDTH, nodeAt } from '../../../../src/solver/plate/radial-mesh.ts';

describe('radial mesh', () => {
  it('keeps the breaks, in order, and splits evenly what is longer than a share of the span', () => {
    const mesh = buildRadialMesh([10, 6, 14, 7], 4);
    expect([...mesh]).toEqual([6, 7, 8.5, 10, 12, 14]);
    expect([10, 6, 14, 7].map((r) => nodeAt(mesh, r))).toEqual([3, 0, 5, 1]);
  });

  it('takes breaks closer than 5e-4 of the span for one, and keeps clamp and rim as they are', () => {
    const mesh = buildRadialMesh([0, 0.3, 0.3004, 0.9996, 1], 1);
    expect([...mesh]).toEqual([0, 0.3, 1]);
    expect([0.3004, 0.9996].map((r) => nodeAt(mesh, r))).toEqual([1, 2]);
    expect([...buildRadialMesh([0, 0.3, 0.3006, 1], 1)]).toEqual([0, 0.3, 0.3006, 1]);
  });

  it('does not let a chain of close breaks drift away from its node', () => {
    const chain = [0, 0.3, 0.3004, 0.3008, 0.3012, 1];
    const mesh = buildRadialMesh(chain, 1);
    for (const r of chain) expect(nodeAt(mesh, r), `${r}`).toBeGreaterThanOrEqual(0);
  });

  it('has no node for a radius that is none of its breaks', () => {
    const mesh = buildRadialMesh([0, 0.3, 1], 1);
    expect(nodeAt(mesh, 0.31)).toBe(-1);
    expect(nodeAt(mesh, 1.1)).toBe(-1);
  });

  const breaks = fc
    .array(fc.double({ min: 4, max: 20, noNaN: true }), { minLength: 1, maxLength: 40 })
    .map((inside) => [4, ...inside, 20]);

  it('rises strictly, has a node for every break, and no element longer than asked for', () => {
    fc.assert(
      fc.property(breaks, fc.integer({ min: 1, max: 60 }), (radii, elements) => {
        const mesh = buildRadialMesh(radii, elements);
        expect([mesh[0], mesh[mesh.length - 1]]).toEqual([4, 20]);
        for (let i = 1; i < mesh.length; i++) {
          expect(mesh[i]).toBeGreaterThan(mesh[i - 1]);
          expect(mesh[i] - mesh[i - 1]).toBeLessThanOrEqual((16 / elements) * (1 + 1e-3));
        }
        for (const r of radii) {
          const node = nodeAt(mesh, r);
          expect(node).toBeGreaterThanOrEqual(0);
          expect(Math.abs(mesh[node] - r)).toBeLessThanOrEqual(5e-4 * 16 * (1 + 1e-6));
        }
      }),
    );
  });

  it('tells bore and rim of a ring of the least width apart, wherever other breaks lie', () => {
    fc.assert(
      fc.property(breaks, fc.double({ min: 4, max: 19.9, noNaN: true }), (radii, bore) => {
        const rim = bore + LEAST_WIDTH * 16 * (1 + 1e-6);
        const mesh = buildRadialMesh([...radii, bore, rim], 8);
        expect(nodeAt(mesh, rim)).toBeGreaterThan(nodeAt(mesh, bore));
      }),
    );
  });
});
