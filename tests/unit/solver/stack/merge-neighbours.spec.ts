import { describe, expect, it } from 'vitest';
import { bendingRigidity, mergeNeighbours, stretchingRigidity } from '../../../../src/solver/stack/merge-neighbours.ts';
import { steel } from './steel.ts';

const CLAMP_M = 6e-3;
const groups = (shims: readonly ReturnType<typeof steel>[]) =>
  mergeNeighbours(shims, CLAMP_M).map(({ from, to }) => [from, to]);

describe('rigidity of a shim', () => {
  it('is E t³/12(1 - ν²) and E t/(1 - ν²): 0.063668 N·m and 33.96 MN/m for 0.15 mm of spring steel', () => {
    // By hand: 206e9 · 3.375e-12 / 10.92 and 206e9 · 1.5e-4 / 0.91.
    expect(bendingRigidity(steel(30, 0.15))).toBeCloseTo(0.0636676, 7);
    expect(stretchingRigidity(steel(30, 0.15)) / 1e6).toBeCloseTo(33.956, 3);
  });
});

describe('merged neighbours', () => {
  it('are equal shims that lie on one another, and no others', () => {
    expect(groups([steel(30, 0.15), steel(30, 0.2), steel(16, 0.1), steel(30, 0.15)])).toEqual([
      [0, 2],
      [2, 3],
      [3, 4],
    ]);
  });

  it('add up thickness and rigidities, of any thickness and modulus', () => {
    const shims = [steel(30, 0.15), steel(30, 0.3), steel(30, 0.15, { youngsModulus_Pa: 103e9 })];
    const [plate] = mergeNeighbours(shims, CLAMP_M);
    const [D, C] = [bendingRigidity(shims[0]), stretchingRigidity(shims[0])];
    expect(plate.thickness_m).toBeCloseTo(0.6e-3, 12);
    expect(plate.D / D).toBeCloseTo(1 + 8 + 0.5, 10);
    expect(plate.C / C).toBeCloseTo(1 + 2 + 0.5, 10);
  });

  it.each([
    ['rim', { outerRadius_m: 14e-3 }],
    ['Poisson’s ratio', { poissonsRatio: 0.33 }],
    ['dish', { dish_m: 1e-5 }],
    ['bore beyond the clamp', { innerRadius_m: 8e-3 }],
  ])('are not shims that differ in %s', (_, rest) => {
    expect(groups([steel(30, 0.15), steel(30, 0.15, rest)])).toHaveLength(2);
    expect(groups([steel(30, 0.15, rest), steel(30, 0.15, rest)])).toHaveLength(1);
  });

  it('start at the clamp, whatever their bore under it; a ring starts at its own', () => {
    const [held, ring] = mergeNeighbours(
      [steel(30, 0.15, { innerRadius_m: 4e-3 }), steel(30, 0.15, { innerRadius_m: 10e-3 })],
      CLAMP_M,
    );
    expect([held.innerRadius_m, held.clamped]).toEqual([CLAMP_M, true]);
    expect([ring.innerRadius_m, ring.clamped]).toEqual([10e-3, false]);
    expect(mergeNeighbours([steel(30, 0.15, { innerRadius_m: CLAMP_M })], CLAMP_M)[0].clamped).toBe(true);
  });
});
