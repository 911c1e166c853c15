/** Tolerances as a person writes them: `thickness=0.004,gas=0.2`, in mm, per cent, °C and bar. */
import {
  DEFAULT_TOLERANCES,
  SCATTER_TABLE,
  TOLERANCE_NAMES,
  type ToleranceName,
  type Tolerances,
} from '../solver/index.ts';
import { metresFromMillimetres, pascalsFromBars } from '../units/si.ts';
import { UsageError } from './command.ts';
import { numberList } from './number-list.ts';

/** What one written unit is in SI. */
const WRITTEN = {
  m: { unit: 'mm', si: metresFromMillimetres(1) },
  K: { unit: '°C', si: 1 },
  Pa: { unit: 'bar', si: pascalsFromBars(1) },
  '-': { unit: '%', si: 0.01 },
} as const;

const writtenAs = (name: ToleranceName) => WRITTEN[SCATTER_TABLE[name].unit];
const written = (name: ToleranceName, si: number): number => Number((si / writtenAs(name).si).toPrecision(12));

/** @throws UsageError for an unknown name or anything but a number of 0 or more */
export function tolerancesOf(text: string | undefined, option: string): Partial<Tolerances> {
  if (text === undefined) return {};
  const given = text.split(',').map((entry) => {
    const [typed, value = ''] = entry.split('=');
    const name = TOLERANCE_NAMES.find((each) => each === typed.trim());
    if (!name) throw new UsageError(`--${option}: got ${JSON.stringify(typed)}, wanted ${TOLERANCE_NAMES.join(', ')}`);
    return [name, numberList(value, `${option} ${name}`, { from: 0 })[0] * writtenAs(name).si] as const;
  });
  return Object.fromEntries(given);
}

/** With the unit at the end of each name. */
export const shownTolerances = (tolerances: Tolerances): Readonly<Record<string, string>> =>
  Object.fromEntries(
    TOLERANCE_NAMES.map((name) => [name, `${written(name, tolerances[name])} ${writtenAs(name).unit}`]),
  );

/** One line a tolerance for the help. */
export const tolerancesInWords = TOLERANCE_NAMES.map(
  (name) =>
    `${name}=${written(name, DEFAULT_TOLERANCES[name])} (${writtenAs(name).unit}, ${SCATTER_TABLE[name].meaning})`,
).join(',\n');
