/** How the sizes of a damper must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { portRoomFaults } from './opening-relations.ts';
import { child, describe, numberAt, type Place } from './place.ts';
import type { ValvePlace } from './project.ts';
import { atLeast, atMost, lessThan, moreThan, relationFault } from './relation.ts';
import { ringFaults } from './stack-relations.ts';

export const VALVE_PLACES: readonly ValvePlace[] = ['pistonCompression', 'pistonRebound', 'baseCompression'];

/** A gap this narrow, as a share of the diameter, lets oil through like one between two plates. */
const NARROW_SHARE = 1 / 20;

/** Everything that a damper must keep, but for what its layout asks for. */
export function damperFaults(damper: Place): InputFault[] {
  const bore = numberAt(child(damper, 'boreDiameter_mm'));
  return [
    ...withinBore(child(damper, 'rodDiameter_mm'), bore, 'damper.rod.beyond-bore'),
    ...legFaults(damper),
    ...frictionFaults(damper),
    ...bandFaults(child(damper, 'pistonBand', 'clearance_mm'), bore),
    ...stopFaults(child(damper, 'hydraulicStop'), damper),
    ...VALVE_PLACES.flatMap((place) => bodyFaults(child(damper, 'valves', place), bore)),
    ...refillFaults(child(damper, 'refillCheck'), bore),
    ...portRoomFaults(damper),
  ];
}

/** What sits in the tube is smaller than its bore. */
export const withinBore = (place: Place, bore: number | undefined, code: string): InputFault[] =>
  relationFault(place, { code, wanted: 'less than the bore', limit: bore, holds: lessThan });

/** The rod goes into the leg, so the seal of the leg is no smaller. Only a fork has legs. */
function legFaults(damper: Place): InputFault[] {
  const leg = child(damper, 'legDiameter_mm');
  const layout = child(damper, 'layout').value;
  if (leg.value !== undefined && layout !== 'cartridge') {
    const wanted = 'nothing: only a cartridge stands in a fork leg';
    return [{ code: 'damper.leg.not-cartridge', path: leg.path, got: describe(leg.value), wanted }];
  }
  return relationFault(leg, {
    code: 'damper.leg.below-rod',
    wanted: 'at least the rod',
    limit: numberAt(child(damper, 'rodDiameter_mm')),
    holds: atLeast,
  });
}

/** From rest friction falls to that of slow sliding; it does not rise to it. */
function frictionFaults(damper: Place): InputFault[] {
  return relationFault(child(damper, 'frictionLaw', 'breakaway_N'), {
    code: 'damper.friction.below-sliding',
    wanted: 'at least the seal friction',
    limit: numberAt(child(damper, 'sealFriction_N')),
    unit: 'N',
    holds: atLeast,
  });
}

function bandFaults(clearance: Place, bore: number | undefined): InputFault[] {
  return relationFault(clearance, {
    code: 'damper.piston-band.too-loose',
    wanted: 'at most a twentieth of the bore,',
    limit: bore === undefined ? undefined : bore * NARROW_SHARE,
    holds: atMost,
  });
}

/** The plunger with its clearance lies in a cup within the bore, and enters it somewhere in the stroke. */
function stopFaults(stop: Place, damper: Place): InputFault[] {
  const [plunger, clearance] = [child(stop, 'plungerDiameter_mm'), child(stop, 'clearance_mm')];
  const [d, c, bore] = [plunger, clearance, child(damper, 'boreDiameter_mm')].map(numberAt);
  const cup = (c ?? 0) * 2;
  return [
    ...relationFault(child(stop, 'length_mm'), {
      code: 'damper.hydraulic-stop.beyond-travel',
      wanted: 'at most the travel',
      limit: numberAt(child(damper, 'travel_mm')),
      holds: atMost,
    }),
    ...relationFault(plunger, {
      code: 'damper.hydraulic-stop.within-rod',
      wanted: 'at the rebound end more than the rod that passes through it,',
      limit: child(stop, 'end').value === 'rebound' ? numberAt(child(damper, 'rodDiameter_mm')) : undefined,
      holds: (diameter, limit) => diameter > limit,
    }),
    ...relationFault(plunger, {
      code: 'damper.hydraulic-stop.beyond-bore',
      wanted: 'with its clearance to either side less than the bore',
      limit: bore,
      holds: (diameter, limit) => diameter + cup < limit,
    }),
    ...relationFault(clearance, {
      code: 'damper.hydraulic-stop.too-loose',
      wanted: 'at most a twentieth of the plunger,',
      limit: d === undefined ? undefined : d * NARROW_SHARE,
      holds: atMost,
    }),
  ];
}

function bodyFaults(body: Place, bore: number | undefined): InputFault[] {
  return [
    ...portFaults(child(body, 'ports')),
    ...ringFaults(child(body, 'pressureZone'), child(body, 'seat')),
    ...withinBore(child(body, 'seat', 'outerDiameter_mm'), bore, 'damper.seat.beyond-bore'),
  ];
}

function refillFaults(check: Place, bore: number | undefined): InputFault[] {
  const [inner, outer] = ['innerDiameter_mm', 'outerDiameter_mm'].map((key) => child(check, 'seat', key));
  return [
    ...portFaults(child(check, 'ports')),
    ...relationFault(outer, {
      code: 'damper.refill-check.seat-order',
      wanted: 'more than the inner diameter of the seat',
      limit: numberAt(inner),
      holds: moreThan,
    }),
    ...withinBore(outer, bore, 'damper.seat.beyond-bore'),
  ];
}

/** A port is a round hole by its diameter or any shape by its area: one of the two, never both. */
function portFaults(ports: Place): InputFault[] {
  if (typeof ports.value !== 'object' || ports.value === null) return [];
  const given = ['diameter_mm', 'area_mm2'].filter((key) => child(ports, key).value !== undefined);
  if (given.length === 1) return [];
  const wanted = 'either diameter_mm or area_mm2';
  return [{ code: 'damper.port.size', path: ports.path, got: given.length === 0 ? 'neither' : 'both', wanted }];
}
