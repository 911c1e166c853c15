/** How far each thing may lie off, to be replaced by what was measured. */
import type { JSX } from 'preact';
import { editOrTell } from '../app/edit-or-tell.ts';
import { showField, writeField } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { NumberField } from '../panels/number-field.tsx';
import { text } from '../text/en.ts';
import {
  commonOf,
  ownOf,
  TOLERANCE_FIELDS,
  type ToleranceField,
  withoutTolerances,
  withTolerance,
} from './tolerance-fields.ts';

const words = text.tolerance;

function Entry({ field }: { field: ToleranceField }): JSX.Element {
  const own = ownOf(field);
  const common = commonOf(field);
  return (
    <div class="tolerance-entry" data-tolerance={field.name}>
      <NumberField
        label={words.label(words.names[field.name])}
        title={words.meaning[field.name]}
        kind={field.kind}
        value={own}
        placeholder={writeField(field.kind, common)}
        edit={(value) => withTolerance(field, value)}
        clear={() => withTolerance(field, undefined)}
      />
      <span class="hint">{own === undefined ? words.common : words.own(showField(field.kind, common))}</span>
    </div>
  );
}

export function ToleranceForm(): JSX.Element {
  return (
    <section class="tolerance-form" aria-label={words.form}>
      <h3>{words.form}</h3>
      <p class="hint">{words.formWhy}</p>
      {TOLERANCE_FIELDS.map((field) => (
        <Entry key={field.name} field={field} />
      ))}
      {project.value.tolerances && (
        <button type="button" class="button" onClick={() => editOrTell(withoutTolerances, words.reset)}>
          {words.reset}
        </button>
      )}
    </section>
  );
}
