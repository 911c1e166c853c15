/** Layout and sizes of the damper, and the oil left at the ends of its stroke. */
import type { JSX } from 'preact';
import { type Damper, LAYOUTS, type Layout, type Project } from '../../../model/project.ts';
import { keyPut } from '../../app/optional-parts.ts';
import { showField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { switchLayout } from '../../app/switch-layout.ts';
import type { SketchName } from '../../sketches/catalogue.ts';
import { text } from '../../text/en.ts';
import { AssumedNote, inAssumed } from '../assumed-note.tsx';
import { Entries, type Entry, FieldGroup } from '../field-group.tsx';
import { NameField } from '../name-field.tsx';
import { SelectField } from '../select-field.tsx';

const withDamper = (part: Partial<Damper>): Project => ({
  ...project.value,
  damper: { ...project.value.damper, ...part },
});

type OptionalSize = 'legDiameter_mm' | 'endClearance_mm' | 'heatedMass_kg';

function optionalSize(key: OptionalSize, entry: Omit<Entry, 'value' | 'edit' | 'clear'>): Entry {
  const put = (value: number | undefined): Project => ({
    ...project.value,
    damper: keyPut(project.value.damper, key, value),
  });
  return { ...entry, value: project.value.damper[key], edit: put, clear: () => put(undefined) };
}

function sizes({ layout, boreDiameter_mm, rodDiameter_mm, travel_mm }: Damper): Entry[] {
  const words = text.damper;
  const kind = 'length';
  return [
    {
      label: words.bore,
      dimension: 'bore',
      kind,
      value: boreDiameter_mm,
      edit: (v) => withDamper({ boreDiameter_mm: v }),
    },
    { label: words.rod, dimension: 'rod', kind, value: rodDiameter_mm, edit: (v) => withDamper({ rodDiameter_mm: v }) },
    ...(layout === 'cartridge'
      ? [
          optionalSize('legDiameter_mm', {
            label: words.leg,
            dimension: 'leg',
            title: words.legWhy,
            kind,
            placeholder: words.legAbsent,
          }),
        ]
      : []),
    { label: words.travel, dimension: 'travel', kind, value: travel_mm, edit: (v) => withDamper({ travel_mm: v }) },
    optionalSize('endClearance_mm', {
      label: words.endClearance,
      dimension: 'endClearance',
      title: words.endClearanceWhy,
      kind,
      placeholder: showField('length', 10),
    }),
    optionalSize('heatedMass_kg', {
      label: words.heatedMass,
      dimension: 'heatedMass',
      title: words.heatedMassWhy,
      kind: 'mass',
      placeholder: text.stack.absent,
    }),
  ];
}

const SKETCH_OF: Readonly<Record<Layout, SketchName>> = {
  monotube: 'damper-monotube',
  'monotube-reservoir': 'damper-reservoir',
  'twin-tube': 'damper-twin-tube',
  cartridge: 'damper-cartridge',
};

export function SizesGroup(): JSX.Element {
  const { damper } = project.value;
  const summary = text.damper.summary.sizes(
    text.damper.layoutName[damper.layout],
    showField('length', damper.boreDiameter_mm),
    showField('length', damper.rodDiameter_mm),
  );
  return (
    <FieldGroup
      name="sizes"
      title={text.damper.groups.sizes}
      summary={inAssumed('sizes', summary)}
      sketch={SKETCH_OF[damper.layout]}
    >
      <AssumedNote part="sizes" />
      <NameField label={text.damper.name} value={damper.name} edit={(name) => withDamper({ name })} />
      <SelectField<Layout>
        label={text.damper.layout}
        options={LAYOUTS}
        chosen={damper.layout}
        name={(each) => text.damper.layoutName[each]}
        onChoose={switchLayout}
      />
      <p class="hint">{text.damper.layoutWhy[damper.layout]}</p>
      <Entries entries={sizes(damper)} />
    </FieldGroup>
  );
}
