import { describe, expect, it } from 'vitest';
import type { Viscosity } from '../../../src/model/project.ts';
import { isOutside, knownTemperatures, unusualIndex } from '../../../src/model/viscosity-reach.ts';

const twoPoints = (first: number, second: number): Viscosity => ({
  kind: 'two-point',
  points: [
    { temperature_degC: first, kinematicViscosity_cSt: 15 },
    { temperature_degC: second, kinematicViscosity_cSt: 3.5 },
  ],
});
const withIndex = (viscosityIndex: number): Viscosity => ({ kind: 'iso-grade', isoGrade: 15, viscosityIndex });

describe('knownTemperatures', () => {
  it('lie between the two points, in whatever order, and between 40 and 100 °C for an index', () => {
    expect(knownTemperatures(twoPoints(100, 20))).toEqual({ from: 20, upTo: 100 });
    // Source: ISO 2909, the index stands on the viscosities at 40 and 100 °C.
    expect(knownTemperatures(withIndex(120))).toEqual({ from: 40, upTo: 100 });
  });

  it('have both ends inside', () => {
    const known = knownTemperatures(twoPoints(40, 100));
    expect([39.9, 40, 70, 100, 100.1].map((t) => isOutside(t, known))).toEqual([true, false, false, false, true]);
  });
});

describe('unusualIndex', () => {
  it('is an index below 0 or above 450, and none of two points', () => {
    expect([-1, 0, 450, 451].map((index) => unusualIndex(withIndex(index)))).toEqual([-1, undefined, undefined, 451]);
    expect(unusualIndex(twoPoints(40, 100))).toBeUndefined();
  });
});
