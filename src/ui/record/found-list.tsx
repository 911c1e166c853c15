/** Entries of a list of the record, each on a card of its own: added, changed, and deleted with undo. */
import type { ComponentChildren, JSX } from 'preact';
import { idFor } from '../../model/new-build.ts';
import type { SpringRecord, TeardownRecord, TorqueRecord, WearPart } from '../../model/record.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { tell } from '../app/notices.ts';
import { keyPut } from '../app/optional-parts.ts';
import type { FieldKind } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { NumberField } from '../panels/number-field.tsx';
import { WordsField } from '../panels/words-field.tsx';
import { recordWords } from '../text/record.ts';
import { recordOf, withRecord } from './record-state.ts';

export interface Lists {
  springs: SpringRecord;
  wearParts: WearPart;
  torques: TorqueRecord;
}
export type ListName = keyof Lists;

export const entriesOf = <List extends ListName>(list: List): readonly Lists[List][] =>
  (recordOf(project.value)[list] ?? []) as readonly Lists[List][];

const withEntries = <List extends ListName>(list: List, entries: readonly Lists[List][]) =>
  withRecord(list, entries.length > 0 ? ([...entries] as TeardownRecord[List]) : undefined);

/** The project with one key of an entry changed, or without it. */
export const withEntry = <List extends ListName, Key extends keyof Lists[List]>(
  list: List,
  id: string,
  key: Key,
  value: Lists[List][Key] | undefined,
) =>
  withEntries(
    list,
    entriesOf(list).map((entry) => (entry.id === id ? keyPut(entry, key, value) : entry)),
  );

function remove(list: ListName, { id, name }: Lists[ListName]): void {
  const left = entriesOf(list).filter((entry) => entry.id !== id);
  if (!editOrTell(() => withEntries(list, left as never), recordWords.remove(name))) return;
  tell(recordWords.removed(name), { action: undoAct() });
}

interface ListProps<List extends ListName> {
  readonly list: List;
  readonly title: string;
  readonly why?: string;
  readonly addLabel: string;
  readonly nameLabel: string;
  /** A new entry, without its id. */
  readonly fresh: (n: number) => Omit<Lists[List], 'id'>;
  readonly children: (entry: Lists[List]) => ComponentChildren;
}

export function FoundList<List extends ListName>(props: ListProps<List>): JSX.Element {
  const { list, title, why, addLabel, nameLabel, fresh, children } = props;
  const entries = entriesOf(list);
  const add = (): void => {
    const entry = fresh(entries.length + 1);
    const ids = entries.map(({ id }) => id);
    const added = { ...entry, id: idFor(entry.name, ids) } as unknown as Lists[List];
    editOrTell(() => withEntries(list, [...entries, added]), addLabel);
  };
  return (
    <section class="found" aria-label={title} data-list={list}>
      <h3>{title}</h3>
      {why && <p class="hint">{why}</p>}
      <ul class="found-list">
        {entries.map((entry) => (
          <li key={entry.id}>
            <div class="fields">
              <WordsField
                label={nameLabel}
                value={entry.name}
                edit={(name) => withEntry(list, entry.id, 'name', (name ?? '') as Lists[List]['name'])}
              />
              {children(entry)}
            </div>
            <button
              type="button"
              class="button"
              aria-label={recordWords.remove(entry.name)}
              onClick={() => remove(list, entry)}
            >
              {recordWords.removeShort}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="button" onClick={add}>
        {addLabel}
      </button>
    </section>
  );
}

interface SizeProps<List extends ListName> {
  readonly list: List;
  readonly entry: Lists[List];
  readonly of: keyof Lists[List];
  readonly label: string;
  readonly kind: FieldKind;
}

/** A number of an entry that may be empty. */
export const FoundSize = <List extends ListName>({ list, entry, of, label, kind }: SizeProps<List>): JSX.Element => (
  <NumberField
    label={recordWords.wear.entry(entry.name, label)}
    kind={kind}
    value={entry[of] as number | undefined}
    edit={(value) => withEntry(list, entry.id, of, value as never)}
    clear={() => withEntry(list, entry.id, of, undefined)}
  />
);
