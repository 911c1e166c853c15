/** Whether a lesson is answered: from its start, the document as it is now, and what the solver computed for both. */
import type { Project } from '../../model/project.ts';
import type { ForceCurve, ForcePoint } from '../app/solved.ts';
import { airMargin } from '../charts/air-margin.ts';
import { isSolved, pointAt, pointsOf } from '../section/shape-at.ts';
import { OWN_BUILD, START_BUILD } from './document.ts';
import type { Goal, Lesson } from './lesson.ts';
import { changedParts, type Part } from './parts.ts';

export interface Evidence {
  readonly start: Project;
  readonly now: Project;
  /** Of the person's own build, in the start and as it is now; absent where it could not be solved. */
  readonly startCurve?: ForceCurve;
  readonly curve?: ForceCurve;
}

/** What one goal comes to. `measured` is a share for a force and pascals for a margin; absent where there is no number. */
export interface Finding {
  readonly goal: Goal;
  readonly measured?: number;
  readonly state: 'met' | 'too-low' | 'too-high' | 'not-solved' | 'beyond-chart';
}

export interface Verdict {
  readonly isMet: boolean;
  readonly findings: readonly Finding[];
  /** Changed, though the lesson asks to leave it. */
  readonly strayed: readonly Part[];
  /** The build that the lesson looks at was deleted. */
  readonly ownIsGone: boolean;
}

export function check(lesson: Lesson, evidence: Evidence): Verdict {
  const { start, now } = evidence;
  const ownIsGone = !now.builds.some(({ id }) => id === OWN_BUILD);
  const findings = ownIsGone ? [] : lesson.goals.map((goal) => find(goal, evidence));
  const changed = ownIsGone ? [] : changedParts(start, now, OWN_BUILD, START_BUILD);
  const strayed = changed.filter((part) => !lesson.mayChange.includes(part));
  const isMet = !ownIsGone && strayed.length === 0 && findings.every(({ state }) => state === 'met');
  return { isMet, findings, strayed, ownIsGone };
}

function find(goal: Goal, { startCurve, curve }: Evidence): Finding {
  const [before, after] = [read(startCurve, goal), read(curve, goal)];
  if (typeof before === 'string') return { goal, state: before };
  if (typeof after === 'string') return { goal, state: after };
  if (goal.kind === 'margin') return judged(goal, airMargin(after), goal.least_Pa, goal.most_Pa);
  return judged(goal, withoutGas(after) / withoutGas(before) - 1, goal.least, goal.most);
}

/** As the charts show it on “Less gas” [N]. */
const withoutGas = ({ force_N, gasForce_N }: ForcePoint): number => force_N - gasForce_N;

/** The damper at the speed of the goal; beyond the last speed solved there is no number. */
function read(curve: ForceCurve | undefined, { way, speed_m_s }: Goal): ForcePoint | 'not-solved' | 'beyond-chart' {
  if (!curve) return 'not-solved';
  const fastest = pointsOf(curve, way).at(-1);
  if (fastest && Math.abs(fastest.shaftSpeed_m_s) < speed_m_s) return 'beyond-chart';
  const point = pointAt(curve, way, speed_m_s);
  return point && isSolved(point) ? point : 'not-solved';
}

function judged(goal: Goal, measured: number, least: number, most: number): Finding {
  if (!Number.isFinite(measured)) return { goal, state: 'not-solved' };
  return { goal, measured, state: measured < least ? 'too-low' : measured > most ? 'too-high' : 'met' };
}
