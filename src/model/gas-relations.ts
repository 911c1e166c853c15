/** What the gas of a damper must keep. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, numberAt, type Place } from './place.ts';
import { atMost, lessThan, relationFault } from './relation.ts';

export function gasFaults(gas: Place, damper: Place): InputFault[] {
  return [
    ...sizeFaults(gas),
    ...volumeFaults(child(gas, 'volume_mL'), damper),
    ...airGapFaults(child(gas, 'airGap'), damper),
    ...oilFillFaults(child(gas, 'oilFill'), damper),
    ...separatorFaults(child(gas, 'separator'), damper),
  ];
}

const SIZES = ['volume_mL', 'airGap', 'oilFill'];

/** The gas is known by its volume, by the air gap over the oil or by the oil poured in: one of them, never more. */
function sizeFaults(gas: Place): InputFault[] {
  if (typeof gas.value !== 'object' || gas.value === null) return [];
  const given = SIZES.filter((key) => child(gas, key).value !== undefined);
  if (given.length === 1) return [];
  const got = given.length === 0 ? 'none' : given.join(' and ');
  return [{ code: 'gas.size', path: gas.path, got, wanted: `one of ${SIZES.join(', ')}` }];
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

/** An oil level and the oil of a leg are those of a fork. */
function legFaults(measured: Place, what: string, damper: Place): InputFault[] {
  if (measured.value === undefined || child(damper, 'layout').value === 'cartridge') return [];
  const wanted = `nothing: ${what} is measured in a fork leg, which a cartridge has`;
  return [{ code: 'gas.air-gap.not-cartridge', path: measured.path, got: what, wanted }];
}

/** Something is left of the air after what comes in on top of it. */
function airGapFaults(gap: Place, damper: Place): InputFault[] {
  const wrongLayout = legFaults(gap, 'an air gap', damper);
  if (wrongLayout.length > 0) return wrongLayout;
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

/** The oil and what comes in afterwards leave some of the leg to the air. */
function oilFillFaults(fill: Place, damper: Place): InputFault[] {
  const wrongLayout = legFaults(fill, 'a fill of oil', damper);
  if (wrongLayout.length > 0) return wrongLayout;
  const [leg_mL, inserted_mL] = ['legVolume_mL', 'insertedVolume_mL'].map((key) => numberAt(child(fill, key)));
  if (leg_mL === undefined || inserted_mL === undefined) return [];
  return relationFault(child(fill, 'oilVolume_mL'), {
    code: 'gas.air-gap.full',
    wanted: 'less than the leg holds beside what comes in,',
    limit: Number((leg_mL - inserted_mL).toFixed(1)),
    unit: 'mL',
    holds: (oil) => lessThan(oil, leg_mL - inserted_mL),
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
