import { describe, expect, it } from 'vitest';
import { projectOfBuild } from '../../../src/model/link-form.ts';
import { newBuildFrom } from '../../../src/model/new-build.ts';
import type { Assembly, Project } from '../../../src/model/project.ts';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject } from '../../helpers/documents.ts';

function checked(assembly: unknown) {
  const project = soundProject() as unknown as Project;
  const [first, ...rest] = project.builds;
  return validateProject({ ...project, builds: [{ ...first, assembly }, ...rest] });
}

const faultsOf = (assembly: unknown) => {
  const read = checked(assembly);
  return read.ok ? [] : read.faults;
};

const WHOLE: Assembly = {
  firstStack: 'pistonRebound',
  pistonTorque_N_m: 12.5,
  baseTorque_N_m: 8,
  torqueSource: 'manual, page 3',
  threadLocker: 'medium, on the nut',
  notes: 'new nut',
};

describe('what is written down about putting a build together', () => {
  it('is kept whole, and may be there in part', () => {
    for (const assembly of [WHOLE, {}, { notes: '' }]) {
      const read = checked(assembly);
      expect(read.ok && read.document.builds[0].assembly).toEqual(assembly);
    }
  });

  it('goes along with a link and with a copy of its build', () => {
    const read = checked(WHOLE);
    if (!read.ok) throw new Error('the project holds');
    const [build] = read.document.builds;
    expect(projectOfBuild(read.document, build.id).builds[0].assembly).toEqual(WHOLE);
    expect(newBuildFrom(build, 'Copy', []).assembly).toEqual(WHOLE);
  });

  it('refuses a torque that is none, at its place and with its unit', () => {
    const at = 'builds[0].assembly.pistonTorque_N_m';
    for (const pistonTorque_N_m of [0, -1, 501])
      expect(faultsOf({ pistonTorque_N_m })).toMatchObject([{ path: at, got: String(pistonTorque_N_m), unit: 'N·m' }]);
  });

  it('refuses a stack that no piston has, and lines that no sheet holds', () => {
    expect(faultsOf({ firstStack: 'baseCompression' })).toMatchObject([{ path: 'builds[0].assembly.firstStack' }]);
    expect(faultsOf({ threadLocker: 'x'.repeat(201) })).toHaveLength(1);
    expect(faultsOf({ notes: 'x'.repeat(2001) })).toHaveLength(1);
  });
});
