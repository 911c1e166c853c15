/** A finding in words and in the person's units. */
import { show, showNumber } from '../app/quantities.ts';
import { lessonsWords as words } from '../text/lessons.ts';
import type { Finding } from './check.ts';
import type { Goal } from './lesson.ts';

/** `−14.2 %`, `+3 %`, `0 %`: a tenth only where there is one. */
function percent(share: number, sign = true): string {
  const tenths = Math.round(share * 1000);
  if (tenths === 0) return '0\u00a0%';
  return `${sign && tenths > 0 ? '+' : ''}${showNumber(tenths / 10, tenths % 10 === 0 ? 0 : 1)}\u00a0%`;
}

const written = (goal: Goal, value: number): string =>
  goal.kind === 'force' ? percent(value) : show('pressure', value);

/** `Compression at 0.30 m/s` */
export function goalName(goal: Goal): string {
  const way = goal.way === 1 ? words.way.compression : words.way.rebound;
  const at = words.at(way, show('speed', goal.speed_m_s));
  return goal.kind === 'margin' ? words.marginOf(at) : at;
}

/** `−20 % to −10 %` */
export function goalRange(goal: Goal): string {
  if (goal.kind === 'margin') return words.between(written(goal, goal.least_Pa), written(goal, goal.most_Pa));
  if (goal.least === -goal.most) return words.asBefore(percent(goal.most, false));
  return words.between(written(goal, goal.least), written(goal, goal.most));
}

/** `now −4 %, too firm` */
export function findingWords({ goal, measured, state }: Finding): string {
  if (measured === undefined || state === 'not-solved' || state === 'beyond-chart')
    return words.noNumber[state === 'beyond-chart' ? state : 'not-solved'];
  return `${words.now(written(goal, measured))}, ${words.state[goal.kind][state]}`;
}
