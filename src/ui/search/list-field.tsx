/** Several numbers of one kind in a box, with a comma between, or a semicolon where the comma is the decimal sign. */
import type { JSX } from 'preact';
import { InputError } from '../../units/fault.ts';
import { type EditFault, faultInWords } from '../app/apply.ts';
import { decimalSign } from '../app/preferences.ts';
import { type FieldKind, readField, unitOf, writeField } from '../app/quantities.ts';
import { BoxField } from '../panels/box-field.tsx';
import { text } from '../text/en.ts';

interface ListFieldProps {
  readonly label: string;
  readonly kind: FieldKind;
  readonly values: readonly number[];
  readonly wanted: string;
  readonly onValues: (values: number[]) => void;
}

export function ListField({ label, kind, values, wanted, onValues }: ListFieldProps): JSX.Element {
  const attempt = (typed: string): EditFault | undefined => {
    try {
      const read = typed
        .split(decimalSign.value === ',' ? /[;\s]+/ : /[,;\s]+/)
        .filter((part) => part !== '')
        .map((part) => readField(kind, part));
      if (read.length === 0 || read.some((value) => !(value > 0)))
        return { code: 'search.list', message: text.fault(typed, wanted) };
      onValues([...new Set(read)]);
      return undefined;
    } catch (error) {
      if (error instanceof InputError) return faultInWords(error.fault);
      throw error;
    }
  };
  return (
    <div class="wide-box">
      <BoxField
        label={label}
        unit={unitOf(kind)}
        written={values.map((value) => writeField(kind, value)).join(decimalSign.value === ',' ? '; ' : ', ')}
        attempt={attempt}
      />
    </div>
  );
}
