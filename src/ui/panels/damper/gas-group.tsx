/** The gas: its pressure, its volume or the air over the oil of a fork leg, and what keeps it apart from the oil. */
import type { JSX } from 'preact';
import type { AirGap, Gas, Project, Separator } from '../../../model/project.ts';
import { SEPARATOR } from '../../app/damper-parts.ts';
import { editOrTell } from '../../app/edit-or-tell.ts';
import { gasByAirGap, gasByVolume } from '../../app/layout-change.ts';
import { withPartChanged } from '../../app/optional-parts.ts';
import { showField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { PartSection } from '../part-section.tsx';
import { SelectField } from '../select-field.tsx';

const words = text.damper;
const withGas = (gas: Gas): Project => ({ ...project.value, gas });
const put = (part: Partial<Gas>): Project => withGas({ ...project.value.gas, ...part });

type Measure = 'volume' | 'airGap';
const MEASURES: readonly Measure[] = ['volume', 'airGap'];

function chooseMeasure(measure: Measure): void {
  const { gas, damper } = project.value;
  const next = measure === 'airGap' ? gasByAirGap(gas, damper) : gasByVolume(gas, damper);
  editOrTell(() => withGas(next), words.gasMeasure);
}

function airGapEntries(airGap: AirGap): Entry[] {
  const edit = (part: Partial<AirGap>): Project => put({ airGap: { ...airGap, ...part } });
  const { level_mm, tubeDiameter_mm, insertedVolume_mL } = airGap;
  return [
    {
      label: words.oilLevel,
      title: words.oilLevelWhy,
      kind: 'length',
      value: level_mm,
      edit: (v) => edit({ level_mm: v }),
    },
    { label: words.tube, kind: 'length', value: tubeDiameter_mm, edit: (v) => edit({ tubeDiameter_mm: v }) },
    {
      label: words.inserted,
      title: words.insertedWhy,
      kind: 'volume',
      value: insertedVolume_mL,
      edit: (v) => edit({ insertedVolume_mL: v }),
    },
  ];
}

function volumeEntries({ volume_mL, airGap }: Gas): Entry[] {
  if (airGap) return airGapEntries(airGap);
  return [{ label: words.gasVolume, kind: 'volume', value: volume_mL, edit: (v) => put({ volume_mL: v }) }];
}

type SeparatorKind = Separator['kind'];
const SEPARATORS: readonly SeparatorKind[] = ['floating-piston', 'bladder'];

function separatorOf(kind: SeparatorKind): Project {
  if (kind === 'bladder') return SEPARATOR.put(project.value, { kind });
  return SEPARATOR.put(project.value, SEPARATOR.start(project.value));
}

function SeparatorFields(): JSX.Element | null {
  const separator = project.value.gas.separator;
  if (!separator) return null;
  return (
    <>
      <SelectField
        label={words.separatorKind}
        options={SEPARATORS}
        chosen={separator.kind}
        name={(kind) => words.separatorKinds[kind]}
        onChoose={(kind) => editOrTell(() => separatorOf(kind), words.separatorKind)}
      />
      {separator.kind === 'floating-piston' && (
        <Entries
          entries={[
            {
              label: words.separatorDiameter,
              kind: 'length',
              value: separator.diameter_mm,
              edit: (diameter_mm) => withPartChanged(SEPARATOR, { ...separator, diameter_mm }),
            },
            {
              label: words.separatorFriction,
              kind: 'force',
              value: separator.friction_N,
              edit: (friction_N) => withPartChanged(SEPARATOR, { ...separator, friction_N }),
            },
          ]}
        />
      )}
    </>
  );
}

export function GasGroup(): JSX.Element {
  const { gas, damper } = project.value;
  const isCartridge = damper.layout === 'cartridge';
  return (
    <FieldGroup
      name="gas"
      title={isCartridge ? words.groups.air : words.groups.gas}
      summary={words.summary.gas(showField('gasPressure', gas.gaugePressure_bar))}
    >
      {isCartridge && (
        <SelectField
          label={words.gasMeasure}
          options={MEASURES}
          chosen={gas.airGap ? 'airGap' : 'volume'}
          name={(measure) => words.gasMeasures[measure]}
          onChoose={chooseMeasure}
        />
      )}
      <Entries
        entries={[
          {
            label: words.gasPressure,
            kind: 'gasPressure',
            value: gas.gaugePressure_bar,
            edit: (v) => put({ gaugePressure_bar: v }),
          },
          ...volumeEntries(gas),
          {
            label: words.exponent,
            title: words.exponentWhy,
            kind: 'plain',
            value: gas.polytropicExponent,
            edit: (v) => put({ polytropicExponent: v }),
          },
        ]}
      />
      <PartSection part={SEPARATOR} title={words.separator} why={words.separatorWhy} boxes={[]}>
        <SeparatorFields />
      </PartSection>
      <p class="hint caution-text">{text.caution.gas}</p>
    </FieldGroup>
  );
}
