/**
 * Point or comma before the decimals. A reader has one sign of their own and never groups thousands; what is typed with the
 * other sign is taken where it can mean one thing only.
 */
import { InputError } from './fault.ts';

export type DecimalSign = '.' | ',';

/** Digits with points and commas among or around them. */
const NUMBER = /[\d.,]*\d[\d.,]*/g;

/** The sign before the decimals in the numbers of a locale; its digits are taken to be 0 to 9. */
export function decimalSignOf(locale: string | undefined): DecimalSign {
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(0.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}

/** A number of the program, such as `-0.5`, in the reader's own sign. */
export const withSign = (written: string, sign: DecimalSign): string =>
  sign === ',' ? written.replace(/(?<=\d)\.(?=\d)/g, ',') : written;

interface Reader {
  readonly own: DecimalSign;
  readonly refuse: (code: string, wanted: string) => never;
}

const count = (written: string, sign: DecimalSign): number => written.split(sign).length - 1;

/** `1.234,5` and `1,234.5`: the last sign stands before the decimals, the other one parts groups of three. */
function readBoth(written: string, { own, refuse }: Reader): string {
  const last = written.lastIndexOf(',') > written.lastIndexOf('.') ? ',' : '.';
  const group = last === ',' ? '\\.' : ',';
  const isGrouped = new RegExp(`^[1-9]\\d{0,2}(?:${group}\\d{3})+\\${last}\\d*$`).test(written);
  if (!isGrouped) refuse('units.number.signs', `one decimal sign: 1234${own}5`);
  return written.replace(last === ',' ? /\./g : /,/g, '').replace(last, '.');
}

/** The other sign before exactly three digits: decimals, or thousands. Nobody but the writer knows. */
function refuseAmbiguous(written: string, sign: DecimalSign, { own, refuse }: Reader): void {
  const others = count(written, sign);
  if (!new RegExp(`^[1-9]\\d{0,2}(?:\\${sign}\\d{3})+$`).test(written)) return;
  const [decimal, thousands] = [written.replace(sign, own), written.replaceAll(sign, '')];
  const code = sign === ',' ? 'units.number.ambiguous-comma' : 'units.number.ambiguous-point';
  refuse(code, others === 1 ? `${decimal} or ${thousands}, which could both be meant` : thousands);
}

function readOne(written: string, reader: Reader): string {
  const [points, commas] = [count(written, '.'), count(written, ',')];
  if (points > 0 && commas > 0) return readBoth(written, reader);
  const sign = commas > 0 ? ',' : '.';
  if (points + commas === 1 && sign === reader.own) return written.replace(',', '.');
  refuseAmbiguous(written, sign, reader);
  return written.replaceAll(',', '.');
}

/**
 * Every number of a typed text with a decimal point.
 * @param own the sign that the reader's numbers are shown with
 * @throws InputError `units.number.ambiguous-comma`, `units.number.ambiguous-point`, `units.number.signs`
 */
export function withDecimalPoints(text: string, own: DecimalSign, path: string): string {
  const refuse = (code: string, wanted: string): never => {
    throw new InputError({ code, path, got: JSON.stringify(text), wanted });
  };
  return text.replace(NUMBER, (written) => readOne(written, { own, refuse }));
}
