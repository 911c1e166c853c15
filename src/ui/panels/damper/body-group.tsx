/** What is machined into the piston, or into the base, for one direction of flow. */
import type { JSX } from 'preact';
import type { Ports, Project, ValveBody, ValvePlace } from '../../../model/project.ts';
import { keyPut } from '../../app/optional-parts.ts';
import { bodyAt } from '../../app/places.ts';
import { showField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';

type EditPorts = (ports: Ports) => Project;

function portSize(ports: Ports, edit: EditPorts): Entry {
  const { diameter_mm, area_mm2 } = ports;
  return diameter_mm === undefined
    ? {
        label: text.damper.portArea,
        kind: 'area',
        value: area_mm2,
        edit: (value) => edit({ ...ports, area_mm2: value }),
      }
    : {
        label: text.damper.portDiameter,
        kind: 'length',
        value: diameter_mm,
        edit: (value) => edit({ ...ports, diameter_mm: value }),
      };
}

/** Ports side by side, of a valve or of a check. */
export function portEntries(ports: Ports, edit: EditPorts): Entry[] {
  const words = text.damper;
  return [
    { label: words.ports, kind: 'count', value: ports.count, edit: (count) => edit({ ...ports, count }) },
    portSize(ports, edit),
    {
      label: words.portLength,
      kind: 'length',
      value: ports.length_mm,
      edit: (length_mm) => edit({ ...ports, length_mm }),
    },
  ];
}

export function portSummary(ports: Ports): string {
  const size =
    ports.diameter_mm === undefined ? showField('area', ports.area_mm2 ?? 0) : showField('length', ports.diameter_mm);
  return text.damper.summary.valve(ports.count, size);
}

type Ring = ValveBody['seat'];

/** Inner and outer diameter. */
export const ringEntries = (
  ring: Ring,
  [inner, outer]: readonly [string, string],
  edit: (ring: Ring) => Project,
): Entry[] => [
  {
    label: inner,
    kind: 'length',
    value: ring.innerDiameter_mm,
    edit: (value) => edit({ ...ring, innerDiameter_mm: value }),
  },
  {
    label: outer,
    kind: 'length',
    value: ring.outerDiameter_mm,
    edit: (value) => edit({ ...ring, outerDiameter_mm: value }),
  },
];

function bodyEntries(place: ValvePlace): Entry[] {
  const body = bodyAt(project.value.damper, place);
  const words = text.damper;
  const put = (part: Partial<ValveBody>): Project => {
    const { damper } = project.value;
    return { ...project.value, damper: { ...damper, valves: { ...damper.valves, [place]: { ...body, ...part } } } };
  };
  const covered = (value: number | undefined): Project => put({ ports: keyPut(body.ports, 'coveredFraction', value) });
  return [
    ...portEntries(body.ports, (ports) => put({ ports })),
    {
      label: words.covered,
      title: words.coveredWhy,
      kind: 'plain',
      placeholder: words.coveredAll,
      value: body.ports.coveredFraction,
      edit: covered,
      clear: () => covered(undefined),
    },
    ...ringEntries(body.pressureZone, [words.zoneInner, words.zoneOuter], (pressureZone) => put({ pressureZone })),
    ...ringEntries(body.seat, [words.seatInner, words.seatOuter], (seat) => put({ seat })),
  ];
}

export function BodyGroup({ place }: { place: ValvePlace }): JSX.Element {
  const { damper } = project.value;
  return (
    <FieldGroup
      name={place}
      title={text.placeOf(damper.layout, place).name}
      summary={portSummary(bodyAt(damper, place).ports)}
    >
      <Entries entries={bodyEntries(place)} />
    </FieldGroup>
  );
}
