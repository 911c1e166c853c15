/** The refill check of the base valve, through which oil comes back in rebound. */
import type { JSX } from 'preact';
import type { Project, RefillCheck } from '../../../model/project.ts';
import { isAssumed } from '../../app/assumed-parts.ts';
import { shapeOf } from '../../app/port-shape.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { AssumedNote } from '../assumed-note.tsx';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { PortShapeField, portEntries, portSummary, ringEntries, SEAT } from './body-group.tsx';

function springEntries(check: RefillCheck, put: (part: Partial<RefillCheck>) => Project): Entry[] {
  const words = text.damper;
  return [
    {
      label: words.checkRate,
      dimension: 'checkRate',
      kind: 'springRate',
      value: check.rate_N_mm,
      edit: (v) => put({ rate_N_mm: v }),
    },
    {
      label: words.checkPreload,
      dimension: 'checkPreload',
      kind: 'force',
      value: check.preload_N,
      edit: (v) => put({ preload_N: v }),
    },
    {
      label: words.checkTravel,
      dimension: 'checkTravel',
      title: words.checkTravelWhy,
      kind: 'length',
      value: check.travel_mm,
      edit: (v) => put({ travel_mm: v }),
    },
  ];
}

/** Nothing for a damper without a base valve. */
export function RefillGroup(): JSX.Element | null {
  const check = project.value.damper.refillCheck;
  if (!check) return null;
  const put = (part: Partial<RefillCheck>): Project => ({
    ...project.value,
    damper: { ...project.value.damper, refillCheck: { ...check, ...part } },
  });
  return (
    <FieldGroup
      name="refill"
      title={text.damper.groups.refill}
      summary={
        isAssumed(project.value, 'refillCheck')
          ? text.damper.assumed.summary(portSummary(check.ports))
          : portSummary(check.ports)
      }
      sketch={shapeOf(check.ports) === 'round' ? 'refill-round' : 'refill-shaped'}
    >
      <AssumedNote part="refillCheck" />
      <PortShapeField ports={check.ports} edit={(ports) => put({ ports })} />
      <Entries
        entries={[
          ...portEntries(check.ports, (ports) => put({ ports })),
          ...ringEntries(check.seat, SEAT, (seat) => put({ seat })),
          ...springEntries(check, put),
        ]}
      />
    </FieldGroup>
  );
}
