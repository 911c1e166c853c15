import { describe, expect, it } from 'vitest';
import { decodeProject, encodeProject } from '../../../src/model/codec.ts';
import type { Project, TeardownRecord } from '../../../src/model/project.ts';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject } from '../../helpers/documents.ts';

const RECORD: TeardownRecord = {
  machine: 'Fieldfare 250 (invented)',
  date: '2026-11-26',
  runTime_h: 42,
  clicksAsFound: { needle: 9 },
  oilOut: { volume_mL: 310, look: 'grey' },
  springs: [{ id: 'main', name: 'Main', rate_N_mm: 4.6, rateFrom: 'marked', freeLength_mm: 480, wireDiameter_mm: 4.2 }],
  wearParts: [
    { id: 'oil-seal', kind: 'seal', name: 'Oil seal', innerDiameter_mm: 43, outerDiameter_mm: 54, width_mm: 9.5 },
  ],
  torques: [{ id: 'piston-nut', name: 'Piston nut', torque_N_m: 28 }],
  shimsOff: { pistonRebound: { firstOff: 'far-from-piston', shims: [{ outerDiameter_mm: 12, thickness_mm: 0.2 }] } },
  steps: { clicks: { state: 'done' }, oil: { state: 'skipped', notes: 'drained before' } },
};

const codesOf = (record: object): string[] => {
  const checked = validateProject({ ...soundProject(), record });
  return checked.ok ? [] : checked.faults.map(({ code, path }) => `${code} ${path}`);
};

describe('the teardown record', () => {
  it('goes through a file whole, unknown fields too', () => {
    const project = { ...soundProject(), record: { ...RECORD, weather: 'rain' } } as Project;
    const decoded = decodeProject(encodeProject(project));
    expect(decoded.ok && decoded.document.record).toEqual({ ...RECORD, weather: 'rain' });
  });

  it('may be absent, or empty', () => {
    expect(codesOf({})).toEqual([]);
    expect(validateProject(soundProject()).ok).toBe(true);
  });

  it('refuses a part that is not larger outside than inside', () => {
    const part = { id: 'a', kind: 'bushing', name: 'Upper', innerDiameter_mm: 48, outerDiameter_mm: 46 };
    expect(codesOf({ wearParts: [part] })).toEqual(['record.part.inner record.wearParts[0].innerDiameter_mm']);
    expect(codesOf({ wearParts: [{ ...part, outerDiameter_mm: undefined }] })).toEqual([]);
  });

  it('refuses two entries of one id, but not in two lists', () => {
    const [spring] = RECORD.springs ?? [];
    expect(codesOf({ springs: [spring, spring] })).toEqual(['record.same-id record.springs[1].id']);
    expect(codesOf({ springs: [spring], torques: [{ id: spring.id, name: '' }] })).toEqual([]);
  });

  it('refuses a day that there is not, a state that there is not, and half a click', () => {
    expect(codesOf({ date: '2026-02-30' })).toEqual(['document.range record.date']);
    expect(codesOf({ steps: { oil: { state: 'perhaps' } } })).toEqual(['document.choice record.steps.oil.state']);
    expect(codesOf({ clicksAsFound: { needle: 2.5 } })).toEqual(['document.whole-number record.clicksAsFound.needle']);
  });
});
