/** A study of scatter as a table: a row a speed, with the band and every share with its interval. */
import type { Units } from '../../units/own-units.ts';
import { text } from '../text/en.ts';
import { anyPiece, type Study } from '../tolerance/scatter-study.ts';
import { headed, measureOf, SHARE } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.tolerance.columns;

/** Signs as at the shaft: positive in compression. Empty while nothing is solved. */
export function toleranceTable(study: Study | undefined, units: Units): Row[] {
  const piece = study && anyPiece(study);
  if (!study?.read || !piece) return [];
  const { names, spreads, shares } = study.read.reading;
  const [force, speed] = [measureOf(units, 'force'), measureOf(units, 'speed')];
  const told = names.filter((name) => piece.parts.includes(name)).map((name) => ({ name, group: names.indexOf(name) }));
  const heads = [
    headed(words.speed, speed),
    ...[words.drawn, words.p5, words.p50, words.p95, words.deviation].map((head) => headed(head, force)),
    ...told.flatMap(({ name }) => shareHeads(text.tolerance.names[name])),
    words.samples,
    words.without,
  ];
  const body = piece.speeds_m_s.map((v, i): Row => {
    const spread = spreads[i];
    const drawn = piece.drawn_N[i];
    const forces = [drawn, spread?.p5, spread?.p50, spread?.p95, spread?.deviation];
    const own = told.flatMap(({ group }) => {
      const { first, total } = shares[i][group];
      return [first, total].flatMap(({ value, low, high }) => [value, low, high]);
    });
    return [
      speed.of(v),
      ...forces.map((each) => (each === null || each === undefined ? undefined : force.of(each))),
      ...own.map((share) => (spread ? SHARE.of(share) : undefined)),
      study.read?.samples,
      spread?.without,
    ];
  });
  return [heads, ...body];
}

const shareHeads = (name: string): string[] =>
  [words.first(name), words.total(name)].flatMap((head) =>
    [head, words.low(head), words.high(head)].map((each) => headed(each, SHARE)),
  );
