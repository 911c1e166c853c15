/** What is machined into the piston, or into the base, for one direction of flow. */
import type { JSX } from 'preact';
import type { Ports, Project, ValveBody, ValvePlace } from '../../../model/project.ts';
import { isAssumed } from '../../app/assumed-parts.ts';
import { editOrTell } from '../../app/edit-or-tell.ts';
import { keyPut } from '../../app/optional-parts.ts';
import { bodyAt } from '../../app/places.ts';
import { PORT_SHAPES, portsAs, shapeOf } from '../../app/port-shape.ts';
import { showField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { AssumedNote } from '../assumed-note.tsx';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { SelectField } from '../select-field.tsx';

type EditPorts = (ports: Ports) => Project;

function portSize(ports: Ports, edit: EditPorts): Entry {
  const { diameter_mm, area_mm2 } = ports;
  return diameter_mm === undefined
    ? {
        label: text.damper.portArea,
        dimension: 'portArea',
        kind: 'area',
        value: area_mm2,
        edit: (value) => edit({ ...ports, area_mm2: value }),
      }
    : {
        label: text.damper.portDiameter,
        dimension: 'portDiameter',
        kind: 'length',
        value: diameter_mm,
        edit: (value) => edit({ ...ports, diameter_mm: value }),
      };
}

/** Ports side by side, of a valve or of a check. */
export function portEntries(ports: Ports, edit: EditPorts): Entry[] {
  const words = text.damper;
  return [
    {
      label: words.ports,
      dimension: 'portCount',
      kind: 'count',
      value: ports.count,
      edit: (count) => edit({ ...ports, count }),
    },
    portSize(ports, edit),
    {
      label: words.portLength,
      dimension: 'portLength',
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

interface RingWords {
  readonly inner: Pick<Entry, 'label' | 'dimension'>;
  readonly outer: Pick<Entry, 'label' | 'dimension'>;
}

export const SEAT: RingWords = {
  inner: { label: text.damper.seatInner, dimension: 'seatInner' },
  outer: { label: text.damper.seatOuter, dimension: 'seatOuter' },
};
const ZONE: RingWords = {
  inner: { label: text.damper.zoneInner, dimension: 'zoneInner' },
  outer: { label: text.damper.zoneOuter, dimension: 'zoneOuter' },
};

/** Inner and outer diameter. */
export const ringEntries = (ring: Ring, { inner, outer }: RingWords, edit: (ring: Ring) => Project): Entry[] => [
  {
    ...inner,
    kind: 'length',
    value: ring.innerDiameter_mm,
    edit: (value) => edit({ ...ring, innerDiameter_mm: value }),
  },
  {
    ...outer,
    kind: 'length',
    value: ring.outerDiameter_mm,
    edit: (value) => edit({ ...ring, outerDiameter_mm: value }),
  },
];

/** A change of what is machined there. */
const withBody = (place: ValvePlace, part: Partial<ValveBody>): Project => {
  const { damper } = project.value;
  const body = { ...bodyAt(damper, place), ...part };
  return { ...project.value, damper: { ...damper, valves: { ...damper.valves, [place]: body } } };
};

interface ShapeProps {
  readonly ports: Ports;
  readonly edit: EditPorts;
}

/** Round holes have a diameter, any other shape an area. */
export function PortShapeField({ ports, edit }: ShapeProps): JSX.Element {
  const words = text.damper;
  return (
    <SelectField
      label={words.portShape}
      options={PORT_SHAPES}
      chosen={shapeOf(ports)}
      name={(shape) => words.portShapes[shape]}
      onChoose={(shape) => editOrTell(() => edit(portsAs(shape, ports)), words.portShape)}
    />
  );
}

function bodyEntries(place: ValvePlace): Entry[] {
  const { ports, pressureZone, seat } = bodyAt(project.value.damper, place);
  const words = text.damper;
  const covered = (value: number | undefined): Project =>
    withBody(place, { ports: keyPut(ports, 'coveredFraction', value) });
  return [
    ...portEntries(ports, (changed) => withBody(place, { ports: changed })),
    {
      label: words.covered,
      dimension: 'covered',
      title: words.coveredWhy,
      kind: 'plain',
      placeholder: words.coveredAll,
      value: ports.coveredFraction,
      edit: covered,
      clear: () => covered(undefined),
    },
    ...ringEntries(pressureZone, ZONE, (changed) => withBody(place, { pressureZone: changed })),
    ...ringEntries(seat, SEAT, (changed) => withBody(place, { seat: changed })),
  ];
}

export function BodyGroup({ place }: { place: ValvePlace }): JSX.Element {
  const { damper } = project.value;
  const { ports } = bodyAt(damper, place);
  const assumed = isAssumed(project.value, place);
  return (
    <FieldGroup
      name={place}
      title={text.placeOf(damper.layout, place).name}
      summary={assumed ? text.damper.assumed.summary(portSummary(ports)) : portSummary(ports)}
      sketch={shapeOf(ports) === 'round' ? 'ports-round' : 'ports-shaped'}
    >
      <AssumedNote part={place} />
      <PortShapeField ports={ports} edit={(changed) => withBody(place, { ports: changed })} />
      <Entries entries={bodyEntries(place)} />
    </FieldGroup>
  );
}
