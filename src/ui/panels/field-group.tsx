/** A group of boxes that opens on its own, with what it holds in short. */
import type { ComponentChildren, JSX } from 'preact';
import type { Project } from '../../model/project.ts';
import type { FieldKind } from '../app/quantities.ts';
import type { SketchName } from '../sketches/catalogue.ts';
import { Measured } from '../sketches/measured.tsx';
import type { MeasureId } from '../text/measures.ts';
import { NumberField } from './number-field.tsx';

export interface Entry {
  readonly label: string;
  readonly kind: FieldKind;
  readonly value: number | undefined;
  readonly edit: (value: number) => Project;
  /** Where nothing is an answer. */
  readonly clear?: () => Project;
  readonly placeholder?: string;
  readonly title?: string;
  /** What it is in the sketch beside it. */
  readonly dimension?: MeasureId;
}

export const Entries = ({ entries }: { entries: readonly Entry[] }): JSX.Element => (
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
  /** Tells the group from the others. */
  readonly name: string;
  /** Of what goes into the boxes. */
  readonly sketch?: SketchName;
}

export const FieldGroup = ({ title, summary, children, name, sketch }: GroupProps): JSX.Element => (
  <details class="group-of-fields" data-group={name}>
    <summary>
      <span class="lettering">{title}</span> <span class="hint">{summary}</span>
    </summary>
    {sketch ? <Measured sketch={sketch}>{children}</Measured> : <div class="fields">{children}</div>}
  </details>
);
