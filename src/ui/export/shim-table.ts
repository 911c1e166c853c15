/** The shims of the stack on show at the speed cursor as a table: one row each, piston side first. */
import type { Units } from '../../units/own-units.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import type { ShimRow } from '../charts/shim-rows.ts';
import { text } from '../text/en.ts';
import { headed, measureOf } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.shims;

/** A reserve is the reciprocal of a use; a shim that bears nothing has no bound to it. */
const reserveOf = (use: number | undefined): number | undefined =>
  use === undefined || use === 0 ? undefined : 1 / use;

/** Empty while the stack is not solved. */
export function shimTable(shims: readonly ShimRow[], units: Units): Row[] {
  if (shims.length === 0) return [];
  const [length, stress] = [measureOf(units, 'length'), measureOf(units, 'stress')];
  const heads = [
    words.shim,
    headed(text.stack.diameter, length),
    headed(text.stack.thickness, length),
    headed(words.lift, length),
    headed(words.stress, stress),
    words.life,
    words.yield,
  ];
  return [
    heads,
    ...shims.map(
      ({ n, outerDiameter_mm, thickness_mm, values }): Row => [
        n,
        length.of(metresFromMillimetres(outerDiameter_mm)),
        length.of(metresFromMillimetres(thickness_mm)),
        length.of(values.lift_m),
        stress.of(values.stress_Pa),
        reserveOf(values.use?.life),
        reserveOf(values.use?.yield),
      ],
    ),
  ];
}
