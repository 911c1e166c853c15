/** The boxes of a group of numbers that are an answer only together, with what is still needed of them. */
import type { JSX } from 'preact';
import { type PartGroup, type PartOf, partsOf, partsWanted, withPart } from '../app/part-groups.ts';
import type { FieldKind } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { NumberField } from './number-field.tsx';

export interface PartEntry<T> {
  readonly part: PartOf<T>;
  readonly label: string;
  readonly kind: FieldKind;
  readonly title?: string;
  readonly placeholder?: string;
  /** What it is in the sketch beside it. */
  readonly dimension?: MeasureId;
}

interface PartProps<T extends object> {
  readonly group: PartGroup<T>;
  readonly entry: PartEntry<T>;
}

export function PartField<T extends object>({ group, entry }: PartProps<T>): JSX.Element {
  const { part, placeholder, ...field } = entry;
  return (
    <NumberField
      {...field}
      placeholder={partsWanted(group).includes(part) ? text.stack.needed : (placeholder ?? text.stack.absent)}
      value={partsOf(group)[part] as number | undefined}
      edit={(value) => withPart(group, part, value)}
      clear={() => withPart(group, part, undefined)}
    />
  );
}

interface GroupProps<T extends object> {
  readonly group: PartGroup<T>;
  readonly entries: readonly PartEntry<T>[];
}

/** Says that a group is not in use yet, and what it waits for. */
export function PartsWanted<T extends object>({ group, entries }: GroupProps<T>): JSX.Element {
  const wanted = partsWanted(group);
  const names = entries.filter(({ part }) => wanted.includes(part)).map(({ label }) => label);
  return (
    <p class="hint parts-wanted" role="status">
      {names.length > 0 && text.stack.notInUse(names)}
    </p>
  );
}

export function PartFields<T extends object>({ group, entries }: GroupProps<T>): JSX.Element {
  return (
    <>
      {entries.map((entry) => (
        <PartField key={entry.part} group={group} entry={entry} />
      ))}
      <PartsWanted group={group} entries={entries} />
    </>
  );
}
