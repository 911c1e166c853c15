import { describe, expect, it } from 'vitest';
import { heatedMassesOf } from '../../../../src/solver/from-model/heated-masses.ts';
import { soundCartridge, soundProject } from '../../../helpers/documents.ts';

describe('heatedMassesOf', () => {
  it('counts the oil of both chambers, and no metal that the document does not name', () => {
    const { oil_kg, metal_kg } = heatedMassesOf(soundProject(), 'as-found');
    // By hand, at mid-stroke: 45 mm of the 46 mm bore and 45 mm round the 16 mm rod are 140.523 mL. Oil of 865 kg/m3 at 15 °C has
    // 849.2 kg/m3 at 40 °C (0.7 per mille a kelvin, from memory): 119.3 g.
    expect(oil_kg / 0.1193).toBeCloseTo(1, 2);
    expect(metal_kg).toBe(0);
  });

  it('counts beyond a base valve as much oil as the bore sweeps, and the metal that is named', () => {
    const { oil_kg, metal_kg } = heatedMassesOf(soundCartridge(), 'as-found');
    // By hand: 137 mm of the 25 mm bore, 137 mm round the 12 mm rod, 250 mm of the bore beyond: 241.724 mL of 851 kg/m3 at 30 °C.
    expect(oil_kg / 0.2057).toBeCloseTo(1, 2);
    expect(metal_kg).toBe(1.2);
  });
});
