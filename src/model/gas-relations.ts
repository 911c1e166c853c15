/** What the gas of a damper must keep. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, numberAt, type Place } from './place.ts';
import { atMost, lessThan, relationFault } from './relation.ts';

export function gasFaults(gas: Place, damper: Place): InputFault[] {
  return [
    ...sizeFaults(gas),
    ...volumeFaults(child(gas, 'volume_mL'), damper),
    ...airGapFaults(child(gas, 'airGap'), damper),
    ...separatorFaults(child(gas, 'separator'), damper),
  ];
}

/** The gas is known by its volume or by the air gap over the oil: one of the two, never both. */
function sizeFaults(gas: Place): InputFault[] {
  if (typeof gas.value !== 'object' || gas.value === null) return [];
  const given = ['volume_mL', 'airGap'].filter((key) => child(gas, key).value !== undefined);
  if (given.length === 1) return [];
  const wanted = 'either volume_mL or airGap';
  return [{ code: 'gas.size', path: gas.path, got: given.length === 0 ? 'neither' : 'both', wanted }];
}

/** What the stroke takes must not be all that the gas has: fully compressed nothing would be left to hold the pressure. */
function volumeFaults(volume: Place, damper: Place): InputFault[] {
  const leg = child(damper, 'layout').value === 'cartridge' ? numberAt(child(damper, 'legDiameter_mm')) : undefined;
  const [rod_mm, travel_mm] = ['rodDiameter_mm', 'travel_mm'].map((key) => numberAt(child(damper, key)));
  const entering_mm = leg ?? rod_mm;
  if (entering_mm === undefined || travel_mm === undefined) return [];
  const displaced = displaced_mL(entering_mm, travel_mm);
  return relationFault(volume, {
    code: 'gas.volume.too-small',
    wanted: `more than the ${leg === undefined ? 'rod' : 'leg'} displaces over the travel,`,
    limit: Number(displaced.toFixed(1)),
    unit: 'mL',
    holds: (value) => value > displaced,
  });
}

const displaced_mL = (diameter_mm: number, length_mm: number): number =>
  ((Math.PI / 4) * diameter_mm * diameter_mm * length_mm) / 1000;

/** Something is left of the air after what comes in on top of it. The level is that of a fork leg. */
function airGapFaults(gap: Place, damper: Place): InputFault[] {
  if (gap.value === undefined) return [];
  const layout = child(damper, 'layout').value;
  if (layout !== 'cartridge') {
    const wanted = 'nothing: an oil level is measured in a fork leg, which a cartridge has';
    return [{ code: 'gas.air-gap.not-cartridge', path: gap.path, got: 'an air gap', wanted }];
  }
  const [level_mm, tube_mm] = ['level_mm', 'tubeDiameter_mm'].map((key) => numberAt(child(gap, key)));
  if (level_mm === undefined || tube_mm === undefined) return [];
  const air = displaced_mL(tube_mm, level_mm);
  return relationFault(child(gap, 'insertedVolume_mL'), {
    code: 'gas.air-gap.full',
    wanted: 'less than the air over the oil,',
    limit: Number(air.toFixed(1)),
    unit: 'mL',
    holds: (inserted) => lessThan(inserted, air),
  });
}

/** In a monotube the floating piston runs in the same tube as the damper piston. */
function separatorFaults(separator: Place, damper: Place): InputFault[] {
  if (child(damper, 'layout').value !== 'monotube') return [];
  return relationFault(child(separator, 'diameter_mm'), {
    code: 'gas.separator.beyond-bore',
    wanted: 'at most the bore,',
    limit: numberAt(child(damper, 'boreDiameter_mm')),
    holds: atMost,
  });
}
