/** What each shim does as a table: a row a shim and solved speed, slopes per unit of length with their errors. */
import type { Units } from '../../units/own-units.ts';
import type { StackSensitivity } from '../app/effects-solve.ts';
import { text } from '../text/en.ts';
import { headed, measureOf } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.effects;

/** Signs as at the shaft: positive in compression. Empty while nothing is solved. */
export function effectsTable(effects: StackSensitivity | undefined, units: Units): Row[] {
  if (!effects) return [];
  const [force, length, speed] = [measureOf(units, 'force'), measureOf(units, 'length'), measureOf(units, 'speed')];
  const perLength = { unit: `${force.unit}/${length.unit}`, of: (si: number) => force.of(si) / length.of(1) };
  const heads = [
    words.shim,
    headed(words.speed, speed),
    headed(words.byThickness, perLength),
    headed(words.error1, perLength),
    headed(words.byDiameter, perLength),
    headed(words.error1, perLength),
    headed(words.change, force),
  ];
  const told = (value: number | null | undefined, of: (si: number) => number) =>
    value === null || value === undefined ? undefined : of(value);
  const body = effects.shims.flatMap(({ byThickness, byDiameter, absence }, s) =>
    effects.speeds_m_s.map(
      (v, i): Row => [
        s + 1,
        speed.of(v),
        told(byThickness[i]?.value, perLength.of),
        told(byThickness[i]?.error, perLength.of),
        told(byDiameter[i]?.value, perLength.of),
        told(byDiameter[i]?.error, perLength.of),
        absence.status === 'solved' ? told(absence.change_N[i], force.of) : undefined,
      ],
    ),
  );
  return [heads, ...body];
}
