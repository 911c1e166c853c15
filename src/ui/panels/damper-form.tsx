/** The damper as it was taken apart: bores, piston faces, oil and gas. Each group opens on its own. */
import type { ComponentChildren, JSX } from 'preact';
import type { Damper, Fluid, Gas, Project, ValveBody, ValvePlace } from '../../model/project.ts';
import { type FieldKind, showField } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';
import { NumberField } from './number-field.tsx';
import { ViscosityFields } from './viscosity-fields.tsx';

const withDamper = (part: Partial<Damper>): Project => ({
  ...project.value,
  damper: { ...project.value.damper, ...part },
});
const withFluid = (part: Partial<Fluid>): Project => ({ ...project.value, fluid: { ...project.value.fluid, ...part } });
const withGas = (part: Partial<Gas>): Project => ({ ...project.value, gas: { ...project.value.gas, ...part } });

function withBody(place: ValvePlace, part: Partial<ValveBody>): Project {
  const { valves } = project.value.damper;
  return withDamper({ valves: { ...valves, [place]: { ...valves[place], ...part } } });
}

interface Entry {
  readonly label: string;
  readonly kind: FieldKind;
  readonly value: number;
  readonly edit: (value: number) => Project;
}

const Entries = ({ entries }: { entries: readonly Entry[] }): JSX.Element => (
  <>
    {entries.map((entry) => (
      <NumberField key={entry.label} {...entry} />
    ))}
  </>
);

interface GroupProps {
  readonly title: string;
  readonly summary: string;
  readonly children: ComponentChildren;
}

const Group = ({ title, summary, children }: GroupProps): JSX.Element => (
  <details class="group-of-fields">
    <summary>
      <span class="lettering">{title}</span> <span class="hint">{summary}</span>
    </summary>
    <div class="fields">{children}</div>
  </details>
);

function DamperGroup(): JSX.Element {
  const d = project.value.damper;
  const summary = text.damper.summary.damper(
    showField('length', d.boreDiameter_mm),
    showField('length', d.rodDiameter_mm),
  );
  const entries: Entry[] = [
    {
      label: text.damper.bore,
      kind: 'length',
      value: d.boreDiameter_mm,
      edit: (v) => withDamper({ boreDiameter_mm: v }),
    },
    { label: text.damper.rod, kind: 'length', value: d.rodDiameter_mm, edit: (v) => withDamper({ rodDiameter_mm: v }) },
    { label: text.damper.travel, kind: 'length', value: d.travel_mm, edit: (v) => withDamper({ travel_mm: v }) },
    {
      label: text.damper.friction,
      kind: 'force',
      value: d.sealFriction_N,
      edit: (v) => withDamper({ sealFriction_N: v }),
    },
  ];
  return (
    <Group title={text.damper.groups.damper} summary={summary}>
      <Entries entries={entries} />
    </Group>
  );
}

function portSize(place: ValvePlace, ports: ValveBody['ports']): Entry {
  const edit = (part: Partial<ValveBody['ports']>): Project => withBody(place, { ports: { ...ports, ...part } });
  if (ports.diameter_mm !== undefined)
    return {
      label: text.damper.portDiameter,
      kind: 'length',
      value: ports.diameter_mm,
      edit: (v) => edit({ diameter_mm: v }),
    };
  return { label: text.damper.portArea, kind: 'area', value: ports.area_mm2 ?? 0, edit: (v) => edit({ area_mm2: v }) };
}

function bodyEntries(place: ValvePlace): Entry[] {
  const { ports, pressureZone: zone, seat } = project.value.damper.valves[place];
  const kind = 'length';
  return [
    {
      label: text.damper.ports,
      kind: 'count',
      value: ports.count,
      edit: (count) => withBody(place, { ports: { ...ports, count } }),
    },
    portSize(place, ports),
    {
      label: text.damper.portLength,
      kind,
      value: ports.length_mm,
      edit: (v) => withBody(place, { ports: { ...ports, length_mm: v } }),
    },
    {
      label: text.damper.zoneInner,
      kind,
      value: zone.innerDiameter_mm,
      edit: (v) => withBody(place, { pressureZone: { ...zone, innerDiameter_mm: v } }),
    },
    {
      label: text.damper.zoneOuter,
      kind,
      value: zone.outerDiameter_mm,
      edit: (v) => withBody(place, { pressureZone: { ...zone, outerDiameter_mm: v } }),
    },
    {
      label: text.damper.seatInner,
      kind,
      value: seat.innerDiameter_mm,
      edit: (v) => withBody(place, { seat: { ...seat, innerDiameter_mm: v } }),
    },
    {
      label: text.damper.seatOuter,
      kind,
      value: seat.outerDiameter_mm,
      edit: (v) => withBody(place, { seat: { ...seat, outerDiameter_mm: v } }),
    },
  ];
}

function BodyGroup({ place }: { place: ValvePlace }): JSX.Element {
  const { ports } = project.value.damper.valves[place];
  const { value, kind } = portSize(place, ports);
  return (
    <Group title={text.damper.groups[place]} summary={text.damper.summary.valve(ports.count, showField(kind, value))}>
      <Entries entries={bodyEntries(place)} />
    </Group>
  );
}

function OilGroup(): JSX.Element {
  const { fluid } = project.value;
  return (
    <Group
      title={text.damper.groups.oil}
      summary={text.damper.summary.oil(fluid.name, showField('temperature', fluid.temperature_degC))}
    >
      <Entries
        entries={[
          {
            label: text.damper.temperature,
            kind: 'temperature',
            value: fluid.temperature_degC,
            edit: (v) => withFluid({ temperature_degC: v }),
          },
          {
            label: text.damper.density,
            kind: 'density',
            value: fluid.densityAt15_kg_m3,
            edit: (v) => withFluid({ densityAt15_kg_m3: v }),
          },
        ]}
      />
      <ViscosityFields viscosity={fluid.viscosity} change={(viscosity) => withFluid({ viscosity })} />
      <p class="hint">{text.caution.oil}</p>
    </Group>
  );
}

function GasGroup(): JSX.Element {
  const { gas } = project.value;
  return (
    <Group
      title={text.damper.groups.gas}
      summary={text.damper.summary.gas(showField('gasPressure', gas.gaugePressure_bar))}
    >
      <Entries
        entries={[
          {
            label: text.damper.gasPressure,
            kind: 'gasPressure',
            value: gas.gaugePressure_bar,
            edit: (v) => withGas({ gaugePressure_bar: v }),
          },
          {
            label: text.damper.gasVolume,
            kind: 'volume',
            value: gas.volume_mL,
            edit: (v) => withGas({ volume_mL: v }),
          },
          {
            label: text.damper.exponent,
            kind: 'plain',
            value: gas.polytropicExponent,
            edit: (v) => withGas({ polytropicExponent: v }),
          },
        ]}
      />
      <p class="hint caution-text">{text.caution.gas}</p>
    </Group>
  );
}

export function DamperForm(): JSX.Element {
  return (
    <section class="sheet damper" aria-label={text.damper.title}>
      <header>
        <h2>{text.damper.title}</h2>
        <span class="hint">{project.value.damper.name}</span>
      </header>
      <DamperGroup />
      <BodyGroup place="pistonCompression" />
      <BodyGroup place="pistonRebound" />
      <OilGroup />
      <GasGroup />
    </section>
  );
}
