/** Quantities within a sentence of the solver, such as `ends at a drop of 1.2 MPa`, in the units of its reader. */
import { fromSI, toSI } from './convert.ts';
import { type DecimalSign, withSign } from './decimal-sign.ts';
import { type Units, unitIn } from './own-units.ts';
import type { Kind, UnitOf } from './unit-table.ts';

/** The units in which the solver tells them. */
const TOLD_IN = { GPa: 'pressure', MPa: 'pressure', 'L/s': 'flow' } as const satisfies Record<string, Kind>;
type Told = keyof typeof TOLD_IN;

/** As many as the solver tells. */
const DIGITS = 4;

const QUANTITY = new RegExp(`(-?\\d+(?:\\.\\d+)?(?:e[-+]?\\d+)?) (${Object.keys(TOLD_IN).join('|')})(?!\\w)`, 'g');

/** @param text written by the program: with decimal points, and a space between number and unit */
export function quantitiesInText(text: string, units: Units, sign: DecimalSign): string {
  const converted = text.replace(QUANTITY, (_, number: string, told: Told) => {
    const kind: Kind = TOLD_IN[told];
    const unit = unitIn(units, kind);
    // The kind and its unit come as a pair from the table above, which the compiler cannot follow through the index.
    const si = toSI(Number(number), kind, told as UnitOf<Kind>);
    return `${Number(fromSI(si, kind, unit).toPrecision(DIGITS))} ${unit}`;
  });
  return withSign(converted, sign);
}
