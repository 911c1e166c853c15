/** The loops of the last cycle, or the whole of a trace, as a table: four columns a build, one row a moment. */
import type { Units } from '../../units/own-units.ts';
import type { CycleReading } from '../app/cycle-solve.ts';
import { text } from '../text/en.ts';
import { headed, measureOf } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.export.columns;

export interface NamedLoop {
  readonly name: string;
  readonly loop: CycleReading['loop'];
}

/** Empty without loops. */
export function cycleRows(loops: readonly NamedLoop[], units: Units): Row[] {
  if (loops.length === 0) return [];
  const [position, speed, force] = (['length', 'speed', 'force'] as const).map((kind) => measureOf(units, kind));
  const columns = loops.flatMap(({ name, loop }) => [
    { head: words.of(name, words.time), values: Array.from(loop.time_s) },
    { head: headed(words.of(name, words.position), position), values: Array.from(loop.position_m, position.of) },
    { head: headed(words.of(name, words.speed), speed), values: Array.from(loop.speed_m_s, speed.of) },
    { head: headed(words.of(name, words.force), force), values: Array.from(loop.force_N, force.of) },
  ]);
  const moments = Math.max(...columns.map(({ values }) => values.length));
  return [
    columns.map(({ head }) => head),
    ...Array.from({ length: moments }, (_, i): Row => columns.map(({ values }) => values[i])),
  ];
}
