/** How the parts of a project must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { buildFaults } from './build-relations.ts';
import { chassisFaults } from './chassis-relations.ts';
import { damperFaults } from './damper-relations.ts';
import { aimFaults, drawerFaults } from './drawer-relations.ts';
import { viscosityFaults } from './fluid-relations.ts';
import { gasFaults } from './gas-relations.ts';
import { layoutFaults } from './layout-relations.ts';
import { child, describe, entries, type Place } from './place.ts';
import { recordFaults } from './record-relations.ts';

function identityFaults(project: Place): InputFault[] {
  const ids = entries(child(project, 'builds')).map((build) => child(build, 'id'));
  const repeated = ids.filter(
    (id, index) => id.value !== undefined && ids.findIndex((o) => o.value === id.value) < index,
  );
  const baseline = child(project, 'baselineBuild');
  const known = ids.some((id) => id.value === baseline.value);
  const faults = repeated.map((id) => ({
    code: 'project.build.same-id',
    path: id.path,
    got: describe(id.value),
    wanted: 'an id that no other build has',
  }));
  if (known || typeof baseline.value !== 'string') return faults;
  const wanted = 'the id of one of the builds';
  return [...faults, { code: 'project.baseline.unknown', path: baseline.path, got: describe(baseline.value), wanted }];
}

/** Everything a project must keep. */
export function projectRelations(project: Place): InputFault[] {
  const damper = child(project, 'damper');
  return [
    ...damperFaults(damper),
    ...layoutFaults(project),
    ...gasFaults(child(project, 'gas'), damper),
    ...viscosityFaults(child(project, 'fluid', 'viscosity')),
    ...entries(child(project, 'builds')).flatMap((build) => buildFaults(build, damper)),
    ...identityFaults(project),
    ...chassisFaults(child(project, 'chassis')),
    ...drawerFaults(project),
    ...aimFaults(project),
    ...recordFaults(project),
  ];
}
