/** Columns of a table over the solver's points: a name with its unit, and a number in that unit. */
import { fromSI } from '../../units/convert.ts';
import { type Units, unitIn } from '../../units/own-units.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import type { Kind } from '../../units/unit-table.ts';
import { text } from '../text/en.ts';

const words = text.export.columns;

export interface Measure {
  readonly unit: string;
  readonly of: (si: number) => number;
}

/** Numbers of a kind in the chosen unit. */
export function measureOf(units: Units, kind: Kind): Measure {
  const unit = unitIn(units, kind);
  return { unit, of: (si) => fromSI(si, kind, unit) };
}

/** Pressures stand absolute inside and are told above atmosphere. */
export function gaugeOf(units: Units): Measure {
  const { unit, of } = measureOf(units, 'pressure');
  return { unit: words.gauge(unit), of: (absolute_Pa) => of(absolute_Pa - STANDARD_ATMOSPHERE_PA) };
}

export const SHARE: Measure = { unit: '%', of: (share) => share * 100 };

export const headed = (name: string, { unit }: Measure): string => words.withUnit(name, unit);
