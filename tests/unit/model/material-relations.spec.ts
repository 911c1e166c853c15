import { describe, expect, it } from 'vitest';
import { validateProject, validateStackFile } from '../../../src/model/validate.ts';
import { soundProject, soundStack } from '../../helpers/documents.ts';

const STEEL = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };
const LIMITS = { yieldStrength_MPa: 1300, tensileStrength_MPa: 1500, enduranceLimit_MPa: 600 };

const checked = (strengths: object) => validateStackFile({ ...soundStack(), material: { ...STEEL, ...strengths } });
const faultsOf = (strengths: object) => {
  const result = checked(strengths);
  return result.ok ? [] : result.faults;
};

describe('strengths of a material', () => {
  it('are optional, each by itself, and kept', () => {
    for (const [key, value] of Object.entries(LIMITS)) {
      expect(checked({ [key]: value })).toMatchObject({ ok: true, document: { material: { [key]: value } } });
    }
    expect(faultsOf(LIMITS)).toEqual([]);
  });

  it.each([0, -1, 10_001])('are refused at %d MPa', (strength) => {
    expect(faultsOf({ yieldStrength_MPa: strength })).toMatchObject([
      { code: 'document.range', path: 'material.yieldStrength_MPa', got: String(strength), unit: 'MPa' },
    ]);
  });

  it('yield and endurance may reach the tensile strength and not pass it', () => {
    expect(faultsOf({ ...LIMITS, yieldStrength_MPa: 1500, enduranceLimit_MPa: 1500 })).toEqual([]);
    const wanted = 'at most the tensile strength 1500';
    expect(faultsOf({ ...LIMITS, yieldStrength_MPa: 1501, enduranceLimit_MPa: 1600 })).toEqual([
      {
        code: 'stack.material.yield-above-tensile',
        path: 'material.yieldStrength_MPa',
        got: '1501',
        wanted,
        unit: 'MPa',
      },
      {
        code: 'stack.material.endurance-above-tensile',
        path: 'material.enduranceLimit_MPa',
        got: '1600',
        wanted,
        unit: 'MPa',
      },
    ]);
  });

  it('are checked in a build too, and in the material of one shim', () => {
    const project = soundProject();
    const valving = project.builds[0].valves.pistonRebound;
    const brittle = { ...STEEL, tensileStrength_MPa: 500, yieldStrength_MPa: 600 };
    valving.material = brittle;
    valving.shims[0].material = brittle;
    const result = validateProject(project);
    const at = 'builds[0].valves.pistonRebound';
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual([
      `${at}.material.yieldStrength_MPa`,
      `${at}.shims[0].material.yieldStrength_MPa`,
    ]);
  });
});
