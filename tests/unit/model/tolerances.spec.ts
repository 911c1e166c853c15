import { describe, expect, it } from 'vitest';
import { projectOfBuild } from '../../../src/model/link-form.ts';
import type { Project, Tolerances } from '../../../src/model/project.ts';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject } from '../../helpers/documents.ts';

const checked = (tolerances: unknown) =>
  validateProject({ ...(soundProject() as unknown as Project), tolerances } as unknown as Project);
const faultsOf = (tolerances: unknown) => {
  const read = checked(tolerances);
  return read.ok ? [] : read.faults;
};

const WHOLE: Tolerances = {
  thickness_mm: 0.004,
  shimDiameter_mm: 0.05,
  clampDiameter_mm: 0.1,
  seatHeight_mm: 0,
  portEdgeDiameter_mm: 0.05,
  portDiameter_mm: 0.1,
  bleedDiameter_mm: 0.02,
  viscosity_percent: 5,
  oilTemperatureDifference_K: 8,
  gasPressure_bar: 0.2,
};

describe('tolerances of a project', () => {
  it('are kept whole, may be there in part, and keep what they do not know', () => {
    for (const tolerances of [WHOLE, {}, { thickness_mm: 0 }, { coating_mm: 1 }]) {
      const read = checked(tolerances);
      expect(read.ok && read.document.tolerances).toEqual(tolerances);
    }
  });

  it('go along with a link of one build, whose band they make', () => {
    const read = checked(WHOLE);
    if (!read.ok) throw new Error('the project holds');
    expect(projectOfBuild(read.document, read.document.builds[0].id).tolerances).toEqual(WHOLE);
  });

  it.each([
    ['thickness_mm', -0.001],
    ['shimDiameter_mm', 6],
    ['viscosity_percent', 101],
    ['oilTemperatureDifference_K', '5'],
    ['gasPressure_bar', -1],
  ])('refuse %s of %s at its place', (key, value) => {
    expect(faultsOf({ [key]: value })).toMatchObject([{ path: `tolerances.${key}` }]);
  });
});
