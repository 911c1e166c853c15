/** How the entries of the teardown record must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, describe, entries, numberAt, type Place } from './place.ts';
import { lessThan, relationFault } from './relation.ts';

const LISTS = ['springs', 'wearParts', 'torques'] as const;

export function recordFaults(project: Place): InputFault[] {
  const record = child(project, 'record');
  return [
    ...LISTS.flatMap((list) => sameIds(child(record, list))),
    ...entries(child(record, 'wearParts')).flatMap(ringFault),
  ];
}

function sameIds(list: Place): InputFault[] {
  const ids = entries(list).map((entry) => child(entry, 'id'));
  const repeated = ids.filter(({ value }, i) => value !== undefined && ids.findIndex((o) => o.value === value) < i);
  return repeated.map(({ value, path }) => ({
    code: 'record.same-id',
    path,
    got: describe(value),
    wanted: 'an id that no other entry of its list has',
  }));
}

const ringFault = (part: Place): InputFault[] =>
  relationFault(child(part, 'innerDiameter_mm'), {
    code: 'record.part.inner',
    wanted: 'less than the outer diameter',
    limit: numberAt(child(part, 'outerDiameter_mm')),
    holds: lessThan,
  });
