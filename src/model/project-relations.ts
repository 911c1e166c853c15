/** How the parts of a project must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { bleedFaults } from './bleed-relations.ts';
import { materialFaults } from './material-relations.ts';
import { child, describe, entries, numberAt, type Place } from './place.ts';
import type { ValvePlace } from './project.ts';
import { atMost, lessThan, relationFault } from './relation.ts';
import { featureFaults } from './stack-features.ts';
import { ringFaults, shimFaults } from './stack-relations.ts';

export const VALVE_PLACES: readonly ValvePlace[] = ['pistonCompression', 'pistonRebound'];

function damperFaults(damper: Place): InputFault[] {
  const bore = numberAt(child(damper, 'boreDiameter_mm'));
  const withinBore = (place: Place, code: string): InputFault[] =>
    relationFault(place, { code, wanted: 'less than the bore', limit: bore, holds: lessThan });
  const bodies = VALVE_PLACES.map((place) => child(damper, 'valves', place));
  return [
    ...withinBore(child(damper, 'rodDiameter_mm'), 'damper.rod.beyond-bore'),
    ...bandFaults(child(damper, 'pistonBand', 'clearance_mm'), bore),
    ...bodies.flatMap((body) => [
      ...portFaults(child(body, 'ports')),
      ...ringFaults(child(body, 'pressureZone'), child(body, 'seat')),
      ...withinBore(child(body, 'seat', 'outerDiameter_mm'), 'damper.seat.beyond-bore'),
    ]),
  ];
}

/** A gap that counts as narrow: the flow through it is that between two plates. */
function bandFaults(clearance: Place, bore: number | undefined): InputFault[] {
  return relationFault(clearance, {
    code: 'damper.piston-band.too-loose',
    wanted: 'at most a twentieth of the bore,',
    limit: bore === undefined ? undefined : bore / 20,
    holds: atMost,
  });
}

/** A port is a round hole by its diameter or any shape by its area: one of the two, never both. */
function portFaults(ports: Place): InputFault[] {
  if (typeof ports.value !== 'object' || ports.value === null) return [];
  const given = ['diameter_mm', 'area_mm2'].filter((key) => child(ports, key).value !== undefined);
  if (given.length === 1) return [];
  const wanted = 'either diameter_mm or area_mm2';
  return [{ code: 'damper.port.size', path: ports.path, got: given.length === 0 ? 'neither' : 'both', wanted }];
}

function buildFaults(build: Place, damper: Place): InputFault[] {
  const bore = numberAt(child(damper, 'boreDiameter_mm'));
  return VALVE_PLACES.flatMap((place) => {
    const valving = child(build, 'valves', place);
    const body = child(damper, 'valves', place);
    const shims = child(valving, 'shims');
    return [
      ...shimFaults({
        clamp: child(valving, 'clampDiameter_mm'),
        shims,
        zone: child(body, 'pressureZone'),
        seat: child(body, 'seat'),
      }),
      ...featureFaults(valving, child(body, 'pressureZone'), child(body, 'seat')),
      ...materialFaults(valving),
      ...entries(shims).flatMap((row) =>
        relationFault(child(row, 'outerDiameter_mm'), {
          code: 'stack.shim.beyond-bore',
          wanted: 'less than the bore',
          limit: bore,
          holds: lessThan,
        }),
      ),
    ];
  });
}

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

/** Two points that fix a falling viscosity: different temperatures, thinner when hotter. */
function viscosityFaults(viscosity: Place): InputFault[] {
  const points = entries(child(viscosity, 'points'));
  if (points.length !== 2) return [];
  const [first, second] = points;
  const temperature = child(second, 'temperature_degC');
  const thickness = child(second, 'kinematicViscosity_cSt');
  const [t1, t2] = [numberAt(child(first, 'temperature_degC')), numberAt(temperature)];
  if (t1 === undefined || t2 === undefined) return [];
  if (t1 === t2) {
    const wanted = 'a temperature other than that of the first point';
    return [{ code: 'fluid.viscosity.same-temperature', path: temperature.path, got: String(t2), wanted, unit: '°C' }];
  }
  return relationFault(thickness, {
    code: 'fluid.viscosity.not-falling',
    wanted: t2 > t1 ? 'less than at the colder point,' : 'more than at the hotter point,',
    limit: numberAt(child(first, 'kinematicViscosity_cSt')),
    unit: 'cSt',
    holds: t2 > t1 ? lessThan : (value, limit) => value > limit,
  });
}

/** The rod must not need more than the gas has: at full stroke there would be nothing left to hold the pressure. */
function gasFaults(gas: Place, damper: Place): InputFault[] {
  const [rod_mm, travel_mm] = ['rodDiameter_mm', 'travel_mm'].map((key) => numberAt(child(damper, key)));
  if (rod_mm === undefined || travel_mm === undefined) return [];
  const displaced_mL = ((Math.PI / 4) * rod_mm * rod_mm * travel_mm) / 1000;
  return relationFault(child(gas, 'volume_mL'), {
    code: 'gas.volume.too-small',
    wanted: 'more than the rod displaces over the travel,',
    limit: Number(displaced_mL.toFixed(1)),
    unit: 'mL',
    holds: (volume) => volume > displaced_mL,
  });
}

/** Everything a project must keep. */
export function projectRelations(project: Place): InputFault[] {
  const damper = child(project, 'damper');
  return [
    ...damperFaults(damper),
    ...gasFaults(child(project, 'gas'), damper),
    ...viscosityFaults(child(project, 'fluid', 'viscosity')),
    ...entries(child(project, 'builds')).flatMap((build) => [
      ...buildFaults(build, damper),
      ...bleedFaults(child(build, 'bleed')),
    ]),
    ...identityFaults(project),
  ];
}
