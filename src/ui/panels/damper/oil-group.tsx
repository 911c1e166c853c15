/** The oil: viscosity as its data sheet gives it, density, and how it compresses. */
import type { JSX } from 'preact';
import type { Fluid, Project } from '../../../model/project.ts';
import { isOutside, knownTemperatures, USUAL_INDEX, unusualIndex } from '../../../model/viscosity-reach.ts';
import { keyPut } from '../../app/optional-parts.ts';
import { showField, writeField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { AssumedNote, inAssumed } from '../assumed-note.tsx';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { NameField } from '../name-field.tsx';
import { ViscosityFields } from './viscosity-fields.tsx';
import { WeightTable } from './weight-table.tsx';

const withFluid = (fluid: Fluid): Project => ({ ...project.value, fluid });

type OptionalKey = 'bulkModulus_GPa' | 'entrainedAir_percent';

function optional(key: OptionalKey, entry: Omit<Entry, 'value' | 'edit' | 'clear'>): Entry {
  const put = (value: number | undefined): Project => withFluid(keyPut(project.value.fluid, key, value));
  return { ...entry, value: project.value.fluid[key], edit: put, clear: () => put(undefined) };
}

function entries({ densityAt15_kg_m3 }: Fluid): Entry[] {
  const words = text.damper;
  return [
    {
      label: words.density,
      dimension: 'density',
      kind: 'density',
      value: densityAt15_kg_m3,
      edit: (v) => withFluid({ ...project.value.fluid, densityAt15_kg_m3: v }),
    },
    optional('bulkModulus_GPa', {
      label: words.bulkModulus,
      dimension: 'bulkModulus',
      title: words.bulkModulusWhy,
      kind: 'modulus',
      placeholder: words.usual,
    }),
    optional('entrainedAir_percent', {
      label: words.entrainedAir,
      dimension: 'entrainedAir',
      title: words.entrainedAirWhy,
      kind: 'percent',
      placeholder: words.usual,
    }),
  ];
}

/** Where the curves lie further from the data sheet than a person may think. */
function ReachHints({ viscosity, temperature_degC }: Fluid): JSX.Element {
  const { from, upTo } = knownTemperatures(viscosity);
  const index = unusualIndex(viscosity);
  return (
    <>
      {isOutside(temperature_degC, { from, upTo }) && (
        <p class="hint" data-hint="extrapolated">
          {text.damper.extrapolated(
            showField('temperature', temperature_degC),
            writeField('temperature', from),
            showField('temperature', upTo),
          )}
        </p>
      )}
      {index !== undefined && (
        <p class="hint" data-hint="unusual-index">
          {text.damper.unusualIndex(writeField('plain', index), USUAL_INDEX.from, USUAL_INDEX.upTo)}
        </p>
      )}
    </>
  );
}

export function OilGroup(): JSX.Element {
  const { fluid } = project.value;
  return (
    <FieldGroup
      name="oil"
      title={text.damper.groups.oil}
      sketch={fluid.viscosity.kind === 'two-point' ? 'oil-two-points' : 'oil-one-point'}
      summary={inAssumed('oil', text.damper.summary.oil(fluid.name, showField('temperature', fluid.temperature_degC)))}
    >
      <AssumedNote part="oil" />
      <NameField
        label={text.damper.oilName}
        value={fluid.name}
        edit={(name) => withFluid({ ...project.value.fluid, name })}
      />
      <ViscosityFields
        viscosity={fluid.viscosity}
        change={(viscosity) => withFluid({ ...project.value.fluid, viscosity })}
      />
      <ReachHints {...fluid} />
      <Entries entries={entries(fluid)} />
      <WeightTable />
    </FieldGroup>
  );
}
