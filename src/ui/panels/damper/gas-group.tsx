/** The gas: its pressure, its volume or the air over the oil of a fork leg, and what keeps it apart from the oil. */
import type { JSX } from 'preact';
import type { AirGap, Gas, Layout, OilFill, Project, Separator } from '../../../model/project.ts';
import { SEPARATOR } from '../../app/damper-parts.ts';
import { editOrTell } from '../../app/edit-or-tell.ts';
import { GAS_MEASURES, type GasMeasure, type GasShape, gasBy, measureOf } from '../../app/gas-measures.ts';
import { withPartChanged } from '../../app/optional-parts.ts';
import { showField } from '../../app/quantities.ts';
import { openId, project } from '../../app/store.ts';
import type { SketchName } from '../../sketches/catalogue.ts';
import { text } from '../../text/en.ts';
import { AssumedNote, inAssumed } from '../assumed-note.tsx';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { PartSection } from '../part-section.tsx';
import { SelectField } from '../select-field.tsx';

const words = text.damper;
const withGas = (gas: Gas): Project => ({ ...project.value, gas });
const put = (part: Partial<Gas>): Project => withGas({ ...project.value.gas, ...part });

/** The shape of the leg as it was given, by project; kept while the page is open. */
const shapes = new Map<string, GasShape>();

function chooseMeasure(measure: GasMeasure): void {
  const { gas, damper } = project.value;
  const { airGap, oilFill } = gas;
  const given = { ...shapes.get(openId.value), ...(airGap && { airGap }), ...(oilFill && { oilFill }) };
  shapes.set(openId.value, given);
  editOrTell(() => withGas(gasBy(measure, gas, damper, given)), words.gasMeasure);
}

function airGapEntries(airGap: AirGap): Entry[] {
  const edit = (part: Partial<AirGap>): Project => put({ airGap: { ...airGap, ...part } });
  const { level_mm, tubeDiameter_mm, insertedVolume_mL } = airGap;
  return [
    {
      label: words.oilLevel,
      dimension: 'oilLevel',
      title: words.oilLevelWhy,
      kind: 'length',
      value: level_mm,
      edit: (v) => edit({ level_mm: v }),
    },
    {
      label: words.tube,
      dimension: 'tube',
      kind: 'length',
      value: tubeDiameter_mm,
      edit: (v) => edit({ tubeDiameter_mm: v }),
    },
    {
      label: words.inserted,
      dimension: 'inserted',
      title: words.insertedWhy,
      kind: 'volume',
      value: insertedVolume_mL,
      edit: (v) => edit({ insertedVolume_mL: v }),
    },
  ];
}

function oilFillEntries(oilFill: OilFill): Entry[] {
  const kind = 'volume';
  const edit = (part: Partial<OilFill>): Project => put({ oilFill: { ...oilFill, ...part } });
  const { oilVolume_mL, legVolume_mL, insertedVolume_mL } = oilFill;
  return [
    {
      label: words.poured,
      dimension: 'poured',
      title: words.pouredWhy,
      kind,
      value: oilVolume_mL,
      edit: (v) => edit({ oilVolume_mL: v }),
    },
    {
      label: words.legHolds,
      dimension: 'legHolds',
      title: words.legHoldsWhy,
      kind,
      value: legVolume_mL,
      edit: (v) => edit({ legVolume_mL: v }),
    },
    {
      label: words.inserted,
      dimension: 'inserted',
      title: words.insertedWhy,
      kind,
      value: insertedVolume_mL,
      edit: (v) => edit({ insertedVolume_mL: v }),
    },
  ];
}

function volumeEntries({ volume_mL, airGap, oilFill }: Gas): Entry[] {
  if (airGap) return airGapEntries(airGap);
  if (oilFill) return oilFillEntries(oilFill);
  return [
    {
      label: words.gasVolume,
      dimension: 'gasVolume',
      kind: 'volume',
      value: volume_mL,
      edit: (v) => put({ volume_mL: v }),
    },
  ];
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
              dimension: 'separatorDiameter',
              kind: 'length',
              value: separator.diameter_mm,
              edit: (diameter_mm) => withPartChanged(SEPARATOR, { ...separator, diameter_mm }),
            },
            {
              label: words.separatorFriction,
              dimension: 'separatorFriction',
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

const FORK_SKETCHES: Readonly<Record<GasMeasure, SketchName>> = {
  volume: 'gas-fork-volume',
  airGap: 'gas-fork-level',
  oilFill: 'gas-fork-fill',
};

const sketchOf = (gas: Gas, layout: Layout): SketchName => {
  if (layout === 'cartridge') return FORK_SKETCHES[measureOf(gas)];
  if (layout === 'twin-tube') return 'gas-twin-tube';
  return layout === 'monotube' ? 'gas-tube' : 'gas-reservoir';
};

export function GasGroup(): JSX.Element {
  const { gas, damper } = project.value;
  const isCartridge = damper.layout === 'cartridge';
  return (
    <FieldGroup
      name="gas"
      title={isCartridge ? words.groups.air : words.groups.gas}
      summary={inAssumed('gas', words.summary.gas(showField('gasPressure', gas.gaugePressure_bar)))}
      sketch={sketchOf(gas, damper.layout)}
    >
      <AssumedNote part="gas" />
      <p class="hint caution-text">{text.caution.gas}</p>
      {isCartridge && (
        <SelectField
          label={words.gasMeasure}
          options={GAS_MEASURES}
          chosen={measureOf(gas)}
          name={(measure) => words.gasMeasures[measure]}
          onChoose={chooseMeasure}
        />
      )}
      <Entries
        entries={[
          {
            label: words.gasPressure,
            dimension: 'gasPressure',
            kind: 'gasPressure',
            value: gas.gaugePressure_bar,
            edit: (v) => put({ gaugePressure_bar: v }),
          },
          ...volumeEntries(gas),
          {
            label: words.exponent,
            dimension: 'exponent',
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
    </FieldGroup>
  );
}
