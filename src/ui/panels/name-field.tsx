/** A name in a box as high as it needs: it is one line however it is typed, and never cut off. */
import type { JSX } from 'preact';
import type { Project } from '../../model/project.ts';
import { WordsField } from './words-field.tsx';

interface NameProps {
  readonly label: string;
  readonly value: string;
  readonly edit: (name: string) => Project;
}

const LINE_BREAKS = /\s*\n\s*/g;

export const NameField = ({ label, value, edit }: NameProps): JSX.Element => (
  <WordsField label={label} value={value} edit={(typed = '') => edit(typed.replace(LINE_BREAKS, ' '))} rows={1} />
);
