import { describe, expect, it } from 'vitest';
import type { Gas } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { damperFromProject } from '../../../../src/solver/index.ts';
import { GAS_MEASURES, gasBy, measureOf } from '../../../../src/ui/app/gas-measures.ts';
import { FORK, readDemo } from '../helpers/demos.ts';

const fork = readDemo(FORK);
const pressure_Pa = (gas: Gas): number =>
  damperFromProject({ ...fork, gas }, fork.builds[0].id).gas.absolutePressure_Pa;

describe('the air of a fork leg by another measure', () => {
  it('is the volume that a hand finds: 38 mm wide and 130 mm high less 30 mL, and a leg of 43 mm', () => {
    // 147.4 mL of air gap, less 30.0 mL, and 348.5 mL that the leg leaves over 240 mm.
    const gas = { gaugePressure_bar: 0, polytropicExponent: 1.2, volume_mL: 466 };
    expect(gasBy('volume', fork.gas, fork.damper)).toEqual(gas);
  });

  it('is the oil that a hand finds: a leg that holds 650 mL with 20 mL coming in takes 512.6 mL', () => {
    // Fully compressed 117.4 mL of air are left: 650 - 20 - 117.4.
    const before = { oilFill: { oilVolume_mL: 1, legVolume_mL: 650, insertedVolume_mL: 20 } };
    expect(gasBy('oilFill', fork.gas, fork.damper, before).oilFill).toEqual({
      oilVolume_mL: 512.6,
      legVolume_mL: 650,
      insertedVolume_mL: 20,
    });
  });

  it.each(GAS_MEASURES)('%s: is the same gas, from any other and back', (measure) => {
    for (const from of GAS_MEASURES) {
      const gas = gasBy(from, fork.gas, fork.damper);
      const next = gasBy(measure, gas, fork.damper);
      expect(measureOf(next)).toBe(measure);
      expect(validateProject({ ...fork, gas: next }).ok).toBe(true);
      expect(pressure_Pa(next) / pressure_Pa(fork.gas)).toBeCloseTo(1, 3);
    }
  });

  it('keeps the tube and what comes in afterwards, as they were given', () => {
    const byVolume = gasBy('volume', fork.gas, fork.damper);
    expect(gasBy('airGap', byVolume, fork.damper, fork.gas)).toEqual(fork.gas);
  });
});
