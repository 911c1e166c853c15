/** A finding in words and in the person's units. */
import { show, showNumber } from '../app/quantities.ts';
import { lessonsWords as words } from '../text/lessons.ts';
import type { Finding } from './check.ts';
import type { Goal } from './lesson.ts';

const DIGITS = 1;

/** `−14.2 %`, `+3.0 %`, `0 %`. */
function signedPercent(share: number): string {
  const number = showNumber(share * 100, DIGITS);
  const isZero = Number.parseFloat(number.replace(/[^\d]/g, '')) === 0;
  return isZero ? '0 %' : `${share > 0 ? '+' : ''}${number} %`;
}

const written = (goal: Goal, value: number): string =>
  goal.kind === 'force' ? signedPercent(value) : show('pressure', value);

/** `Compression at 0.30 m/s` */
export function goalName(goal: Goal): string {
  const way = goal.way === 1 ? words.way.compression : words.way.rebound;
  const at = words.at(way, show('speed', goal.speed_m_s));
  return goal.kind === 'margin' ? words.marginOf(at) : at;
}

/** `−20.0 % to −10.0 %` */
export function goalRange(goal: Goal): string {
  if (goal.kind === 'margin') return words.between(written(goal, goal.least_Pa), written(goal, goal.most_Pa));
  if (goal.least === -goal.most) return words.asBefore(`${showNumber(goal.most * 100, DIGITS)} %`);
  return words.between(written(goal, goal.least), written(goal, goal.most));
}

/** `now −14.2 %, as asked` */
export function findingWords({ goal, measured, state }: Finding): string {
  const now = measured === undefined ? [] : [words.now(written(goal, measured))];
  return [...now, words.short[state]].join(', ');
}
