/** A part that may be there or not: its boxes and a way to take it out, or a way to put it in. */
import type { ComponentChildren, JSX } from 'preact';
import { editOrTell } from '../app/edit-or-tell.ts';
import { type OptionalPart, withoutPart, withPartChanged, withStartedPart } from '../app/optional-parts.ts';
import type { FieldKind } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import type { SketchName } from '../sketches/catalogue.ts';
import { Measured } from '../sketches/measured.tsx';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { Entries } from './field-group.tsx';

export interface PartBox<T> {
  readonly key: keyof T & string;
  readonly label: string;
  readonly kind: FieldKind;
  readonly title?: string;
  /** What it is in the sketch beside it. */
  readonly dimension?: MeasureId;
}

interface PartProps<T extends object> {
  readonly part: OptionalPart<T>;
  readonly title: string;
  /** What it is for, where it is not there. */
  readonly why?: string;
  readonly boxes: readonly PartBox<T>[];
  readonly children?: ComponentChildren;
  /** Of the part alone, where the form round it has no sketch with its dimensions. */
  readonly sketch?: SketchName;
}

function Absent<T extends object>({ part, title, why }: PartProps<T>): JSX.Element {
  const label = text.parts.add(title);
  return (
    <div class="part absent">
      <span class="part-head">
        <span>{title}</span>
        <button
          type="button"
          class="button"
          aria-label={label}
          title={why}
          onClick={() => editOrTell(() => withStartedPart(part), label)}
        >
          {text.parts.addShort}
        </button>
      </span>
    </div>
  );
}

export function PartSection<T extends object>(props: PartProps<T>): JSX.Element {
  const { part, title, boxes, children, sketch } = props;
  const present = part.of(project.value);
  if (!present) return <Absent {...props} />;
  const label = text.parts.takeOut(title);
  const entries = boxes.map(({ key, ...box }) => ({
    ...box,
    value: present[key] as number | undefined,
    edit: (value: number) => withPartChanged(part, { [key]: value } as unknown as Partial<T>),
  }));
  return (
    <fieldset class="part" aria-label={title}>
      <span class="part-head">
        <span>{title}</span>
        <button
          type="button"
          class="button"
          aria-label={label}
          onClick={() => editOrTell(() => withoutPart(part), label)}
        >
          {text.parts.takeOutShort}
        </button>
      </span>
      {children}
      {sketch ? (
        <Measured sketch={sketch}>
          <Entries entries={entries} />
        </Measured>
      ) : (
        <Entries entries={entries} />
      )}
    </fieldset>
  );
}
