/** How one build must fit its damper. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { preloadAdjusterFaults } from './adjuster-relations.ts';
import { bleedFaults } from './bleed-relations.ts';
import { VALVE_PLACES, withinBore } from './damper-relations.ts';
import { materialFaults } from './material-relations.ts';
import { measurementFaults } from './measurement-relations.ts';
import { bleedRoomFaults } from './opening-relations.ts';
import { child, entries, numberAt, type Place } from './place.ts';
import { featureFaults } from './stack-features.ts';
import { shimFaults } from './stack-relations.ts';

export function buildFaults(build: Place, damper: Place): InputFault[] {
  const bore = numberAt(child(damper, 'boreDiameter_mm'));
  const poppet = child(build, 'basePoppet');
  return [
    ...VALVE_PLACES.flatMap((place) =>
      valvingFaults(child(build, 'valves', place), child(damper, 'valves', place), bore),
    ),
    ...bleedFaults(child(build, 'bleed')),
    ...bleedFaults(child(build, 'baseBleed')),
    ...bleedRoomFaults(build, damper),
    ...withinBore(child(poppet, 'seatDiameter_mm'), bore, 'poppet.seat.beyond-bore'),
    ...preloadAdjusterFaults(poppet),
    ...measurementFaults(build),
  ];
}

function valvingFaults(valving: Place, body: Place, bore: number | undefined): InputFault[] {
  const [zone, seat, shims] = [child(body, 'pressureZone'), child(body, 'seat'), child(valving, 'shims')];
  return [
    ...shimFaults({ clamp: child(valving, 'clampDiameter_mm'), shims, zone, seat }),
    ...featureFaults(valving, zone, seat),
    ...materialFaults(valving),
    ...entries(shims).flatMap((row) => withinBore(child(row, 'outerDiameter_mm'), bore, 'stack.shim.beyond-bore')),
  ];
}
