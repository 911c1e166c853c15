/** A number of the document in a box. */
import type { JSX } from 'preact';
import type { Project } from '../../model/project.ts';
import { type EditFault, editProject } from '../app/apply.ts';
import { type FieldKind, kindOf, readField, unitOf, writeField } from '../app/quantities.ts';
import { BoxField, type BoxFieldProps } from './box-field.tsx';

export type NumberFieldProps = Omit<BoxFieldProps, 'unit' | 'quantity' | 'written' | 'attempt'> & {
  readonly kind: FieldKind;
  /** In the document's unit; undefined when nothing is entered in an optional field. */
  readonly value: number | undefined;
  /** The edit this value makes. */
  readonly edit: (value: number) => Project;
  /** The edit of an emptied field, where nothing is an answer. */
  readonly clear?: () => Project;
};

export function NumberField({ kind, value, edit, clear, ...box }: NumberFieldProps): JSX.Element {
  const attempt = (typed: string, session: string): EditFault | undefined => {
    const entered = (): Project => (clear && typed.trim() === '' ? clear() : edit(readField(kind, typed)));
    return editProject(entered, { label: box.label, mergeKey: session });
  };
  return (
    <BoxField
      {...box}
      unit={unitOf(kind)}
      quantity={kindOf(kind)}
      written={value === undefined ? '' : writeField(kind, value)}
      attempt={attempt}
    />
  );
}
