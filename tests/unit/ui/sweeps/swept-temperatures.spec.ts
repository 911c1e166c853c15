import { describe, expect, it } from 'vitest';
import type { Fluid } from '../../../../src/model/project.ts';
import { sweptTemperatures, viscosityKnown } from '../../../../src/ui/sweeps/swept-temperatures.ts';

const fluid = (viscosity: Fluid['viscosity']): Fluid => ({
  name: 'oil of a test',
  viscosity,
  densityAt15_kg_m3: 860,
  temperature_degC: 40,
});

describe('sweptTemperatures', () => {
  it('goes from -10 to 120 °C, closer where the oil is cold, each once', () => {
    const swept = sweptTemperatures(40);
    expect([swept[0], swept[1], swept.at(-2), swept.at(-1)]).toEqual([-10, -5, 110, 120]);
    expect(swept).toEqual([...new Set(swept)].sort((a, b) => a - b));
  });

  it('reaches towards a temperature outside of that', () => {
    expect(sweptTemperatures(-42).slice(0, 4)).toEqual([-40, -30, -20, -10]);
    expect(sweptTemperatures(151).slice(-4)).toEqual([120, 130, 140, 150]);
  });
});

describe('viscosityKnown', () => {
  it('lies between the two points of a data sheet, whichever stands first', () => {
    const at = (temperature_degC: number, kinematicViscosity_cSt: number) => ({
      temperature_degC,
      kinematicViscosity_cSt,
    });
    expect(viscosityKnown(fluid({ kind: 'two-point', points: [at(80, 5), at(20, 30)] }))).toEqual([20, 80]);
  });

  // ASTM D2270 joins the viscosities at 40 and 100 °C.
  it('goes from 40 to 100 °C where an index tells it', () => {
    expect(viscosityKnown(fluid({ kind: 'iso-grade', isoGrade: 15, viscosityIndex: 150 }))).toEqual([40, 100]);
  });
});
