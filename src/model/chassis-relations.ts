/** How the numbers of a chassis must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, entries, numberAt, type Place } from './place.ts';
import { moreThan, relationFault } from './relation.ts';

export function chassisFaults(chassis: Place): InputFault[] {
  return [
    ...risingFaults(child(chassis, 'motionRatio'), 'wheelTravel_mm', 'chassis.motion-ratio.order'),
    ...risingFaults(child(chassis, 'spring'), 'compression_mm', 'chassis.spring.order'),
    ...forceFaults(child(chassis, 'spring')),
    ...airFaults(chassis),
  ];
}

function risingFaults(table: Place, key: string, code: string): InputFault[] {
  const steps = entries(child(table, 'points')).map((point) => child(point, key));
  return steps.slice(1).flatMap((step, i) => {
    const limit = numberAt(steps[i]);
    return relationFault(step, { code, wanted: 'more than in the point before,', limit, holds: moreThan });
  });
}

/** A spring that pushes less the more it is shortened would not hold the vehicle up. */
function forceFaults(spring: Place): InputFault[] {
  const forces = entries(child(spring, 'points')).map((point) => child(point, 'force_N'));
  return forces.slice(1).flatMap((force, i) => {
    const limit = numberAt(forces[i]);
    const wanted = 'more than in the point before,';
    return relationFault(force, { code: 'chassis.spring.force', wanted, limit, unit: 'N', holds: moreThan });
  });
}

/** With one ratio it is known here how far the shaft shortens the air; a table is followed by whoever computes with it. */
function airFaults(chassis: Place): InputFault[] {
  const travel = numberAt(child(chassis, 'wheelTravel_mm'));
  const ratio = numberAt(child(chassis, 'motionRatio', 'shaftPerWheel'));
  return relationFault(child(chassis, 'airSpring', 'airLength_mm'), {
    code: 'chassis.air.too-short',
    wanted: 'more than the shaft travels,',
    limit: travel !== undefined && ratio !== undefined ? travel * ratio : undefined,
    holds: moreThan,
  });
}
