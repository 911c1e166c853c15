/** What the scatter of the build on show says, in sentences. */
import { inReaderUnits, show, showPercent } from '../app/quantities.ts';
import { cursorSpeed, direction, topSpeed } from '../app/store.ts';
import { text } from '../text/en.ts';
import { refusalsOf } from './scatter-study.ts';
import { scatterAtCursor, sortedBy, toleranceRows } from './tolerance-rows.ts';
import { shownStudy } from './tolerance-solve.ts';
import { shareBy, type Verdict, verdictOf } from './verdict.ts';

const words = text.tolerance;

/** A share estimated from samples may lie a little out of its range. */
export const clipped = (share: number): number => Math.min(1, Math.max(0, share));
export const percent = (share: number): string => showPercent(clipped(share));

const wayNow = (): string => (direction.value === 1 ? text.chart.compression : text.chart.rebound);

export const whereNow = (): string =>
  sortedBy.value === 'cursor'
    ? words.where(show('speed', cursorSpeed.value), wayNow())
    : words.whereAll(show('speed', topSpeed.value), wayNow());

interface Told {
  readonly first: string;
  /** What comes next, and what holding the first exactly would bring. */
  readonly rest: string;
}

function sentencesOf({ most, share, next, isTied, half_N, without_N }: Verdict): Told {
  const { value, low, high } = share.total;
  const nextShare = next && shareBy(next, sortedBy.value).total.value;
  const rest = [
    ...(next && nextShare !== undefined
      ? [(isTied ? words.tied : words.next)(words.names[next.name], percent(nextShare))]
      : []),
    ...(half_N !== undefined && without_N !== undefined
      ? [words.exact(words.names[most.name], show('force', half_N), show('force', without_N))]
      : []),
  ];
  const first = words.verdict(words.names[most.name], percent(value), percent(low), percent(high), whereNow());
  return { first, rest: rest.join(' ') };
}

/** Nothing where nothing scatters. */
export function verdictInWords(): Told | undefined {
  const verdict = verdictOf(toleranceRows.value, sortedBy.value, scatterAtCursor.value);
  return verdict && sentencesOf(verdict);
}

export function bandInWords(): string | undefined {
  const scatter = scatterAtCursor.value;
  if (!scatter) return undefined;
  const { p5_N, p95_N, drawn_N } = scatter;
  const drawn = drawn_N === undefined ? text.readout.notSolved : show('force', drawn_N);
  return words.band(show('force', p5_N), show('force', p95_N), drawn);
}

export function lackInWords(): string | undefined {
  const { study } = shownStudy.value;
  const without = scatterAtCursor.value?.without ?? 0;
  return study && without > 0
    ? words.withoutForce(without, refusalsOf(study).map(inReaderUnits).join('; '))
    : undefined;
}

/** For a picture: the legend has the bars. */
export function toleranceLines(): string[] {
  const told = verdictInWords();
  const samples = shownStudy.value.study?.read?.samples;
  return [
    ...(told ? [told.first, told.rest] : [words.nothing]),
    bandInWords() ?? '',
    lackInWords() ?? '',
    samples === undefined ? '' : words.bySamples(words.samplesOf(samples)),
  ].filter((line) => line !== '');
}
