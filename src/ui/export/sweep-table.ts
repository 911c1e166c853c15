/** A sweep at the speed cursor as a table: a row a place, a column a build and direction. */
import type { Units } from '../../units/own-units.ts';
import type { SweepCurve } from '../sweeps/sweep-curves.ts';
import { text } from '../text/en.ts';
import { headed, measureOf } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.export;

/** Empty without a solved point; an empty cell where a curve has no answer. */
export function sweepRows(
  axis: string,
  curves: readonly SweepCurve[],
  toShown: (at: number) => number,
  units: Units,
): Row[] {
  const places = [...new Set(curves.flatMap(({ at }) => at))].sort((a, b) => a - b);
  if (places.length === 0) return [];
  const force = measureOf(units, 'force');
  const headOf = ({ build, way, stale }: SweepCurve): string => {
    const name = stale ? words.lastSolved(build.name) : build.name;
    const direction = way === 1 ? words.columns.way.compression : words.columns.way.rebound;
    return headed(words.columns.of(name, `${words.columns.force}, ${direction}`), force);
  };
  const cellOf = ({ at, force_N }: SweepCurve, place: number): number | undefined => {
    const value = force_N[at.indexOf(place)];
    return value === undefined || value === null ? undefined : force.of(value);
  };
  return [
    [axis, ...curves.map(headOf)],
    ...places.map((place): Row => [toShown(place), ...curves.map((curve) => cellOf(curve, place))]),
  ];
}
