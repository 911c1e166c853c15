/** A group of boxes that opens on its own, with what it holds in short. */
import { type ComponentChildren, createContext, type JSX } from 'preact';
import { useContext } from 'preact/hooks';
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

/** True where groups stand one at a time and nothing is to be unfolded. */
export const UnfoldedGroups = createContext(false);

export function FieldGroup({ title, summary, children, name, sketch }: GroupProps): JSX.Element {
  const isUnfolded = useContext(UnfoldedGroups);
  const content = sketch ? <Measured sketch={sketch}>{children}</Measured> : <div class="fields">{children}</div>;
  if (isUnfolded)
    return (
      <section class="group-of-fields" data-group={name} aria-label={title}>
        <h3>{title}</h3>
        {content}
      </section>
    );
  return (
    <details class="group-of-fields" data-group={name}>
      <summary>
        <span class="lettering">{title}</span> <span class="hint">{summary}</span>
      </summary>
      {content}
    </details>
  );
}
