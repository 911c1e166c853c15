/** A number of the view, such as the speed cursor; it is no part of the document. */
import type { JSX } from 'preact';
import { InputError } from '../../units/fault.ts';
import { type EditFault, faultInWords } from '../app/apply.ts';
import { type FieldKind, kindOf, readField, unitOf, writeField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { BoxField } from './box-field.tsx';

interface ViewFieldProps {
  readonly label: string;
  readonly kind: FieldKind;
  readonly value: number | undefined;
  readonly holds: (value: number) => boolean;
  /** What is wanted where that does not hold. */
  readonly wanted: string;
  readonly onValue: (value: number) => void;
  /** Of an emptied field, where nothing is an answer. */
  readonly onEmpty?: () => void;
  readonly placeholder?: string;
  readonly title?: string;
}

export function ViewField({
  label,
  kind,
  value,
  holds,
  wanted,
  onValue,
  onEmpty,
  ...box
}: ViewFieldProps): JSX.Element {
  const take = (typed: string): EditFault | undefined => {
    const read = readField(kind, typed);
    if (!holds(read)) return { code: 'view.number', message: text.fault(typed, wanted) };
    onValue(read);
    return undefined;
  };
  const attempt = (typed: string): EditFault | undefined => {
    if (onEmpty && typed.trim() === '') {
      onEmpty();
      return undefined;
    }
    try {
      return take(typed);
    } catch (error) {
      if (error instanceof InputError) return faultInWords(error.fault);
      throw error;
    }
  };
  const written = value === undefined ? '' : writeField(kind, value);
  return (
    <BoxField {...box} label={label} unit={unitOf(kind)} quantity={kindOf(kind)} written={written} attempt={attempt} />
  );
}
