/** The last word on an arrangement: its whole force curve, with life and waves, against aim and limits. */

import { InputError } from '../../units/fault.ts';
import { forceCurve } from '../damper/force-curve.ts';
import type { ForceCurve, ForcePoint, StackPlace, WavesOnset } from '../damper/types.ts';
import { distanceOf, gasMargin, scaleOf } from './trial.ts';
import type { AimPoint, Arrangement, Judgement, SearchLimits, SearchProblem } from './types.ts';
import { withStacks } from './with-stacks.ts';

export interface Judged {
  readonly judgement: Judgement;
  /** Large deflection does not serve some stack of the damper: `auto` would say otherwise. */
  readonly leavesRound: boolean;
}

/** @returns undefined where a point does not solve, the stack is outside the model, or a limit is broken */
export function judgeAnswer(problem: SearchProblem, arrangement: Arrangement): Judged | undefined {
  const { damper, supply, aim, limits, theory } = problem;
  const curve = curveOf(() =>
    forceCurve(
      withStacks(damper, arrangement, supply),
      aim.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s),
      { theory },
    ),
  );
  const points = curve?.points.filter((point) => point.status === 'converged') ?? [];
  if (!curve || points.length < aim.length) return undefined;
  const judgement = read(
    points,
    curve,
    aim,
    problem.places.map(({ place }) => place),
  );
  const leavesRound = Object.values(curve.stacks).some((stack) => stack.leavesRound !== undefined);
  return keeps(judgement, limits) ? { judgement, leavesRound } : undefined;
}

function curveOf(solve: () => ForceCurve): ForceCurve | undefined {
  try {
    return solve();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

function read(
  points: readonly ForcePoint[],
  curve: ForceCurve,
  aim: readonly AimPoint[],
  searched: readonly StackPlace[],
): Judgement {
  const rms_N = distanceOf(points, aim);
  const force_N = points.map((point) => point.force_N - point.gasForce_N);
  const differences = force_N.map((force, i) => ({
    difference_N: force - aim[i].force_N,
    shaftSpeed_m_s: aim[i].shaftSpeed_m_s,
  }));
  return {
    rms_N,
    rmsShare: rms_N / scaleOf(aim),
    worst: differences.reduce((a, b) => (Math.abs(b.difference_N) > Math.abs(a.difference_N) ? b : a)),
    force_N,
    ...reserves(points, searched),
    gasMargin_Pa: gasMargin(points),
    theories: theoriesAt(curve, searched),
    waves: wavesOf(curve, searched),
  };
}

function reserves(points: readonly ForcePoint[], searched: readonly StackPlace[]) {
  const lives = points.flatMap(({ shaftSpeed_m_s, life, base }) => [
    ...(life && searched.includes(shaftSpeed_m_s < 0 ? 'rebound' : 'compression') ? [life] : []),
    ...(base?.life && searched.includes('base') ? [base.life] : []),
  ]);
  if (lives.length === 0) return {};
  return {
    fatigueReserve: 1 / Math.max(...lives.map(({ fatigue }) => fatigue.use)),
    yieldReserve: 1 / Math.max(...lives.map((life) => life.yield.use)),
  };
}

const theoriesAt = ({ stacks }: ForceCurve, searched: readonly StackPlace[]): NonNullable<Judgement['theories']> =>
  Object.fromEntries(searched.flatMap((place) => (stacks[place] ? [[place, stacks[place].theory]] : [])));

function wavesOf({ stacks }: ForceCurve, searched: readonly StackPlace[]): Judgement['waves'] {
  const found = searched.flatMap((place): [StackPlace, WavesOnset][] => {
    const waves = stacks[place]?.waves;
    return waves ? [[place, waves]] : [];
  });
  return Object.fromEntries(found);
}

function keeps(
  { fatigueReserve, yieldReserve, gasMargin_Pa }: Judgement,
  { minFatigueReserve, minYieldReserve, minGasMargin_Pa }: SearchLimits,
): boolean {
  const holds = (got: number | undefined, least: number | undefined) =>
    got === undefined || least === undefined || got >= least;
  return (
    holds(fatigueReserve, minFatigueReserve) &&
    holds(yieldReserve, minYieldReserve) &&
    holds(gasMargin_Pa, minGasMargin_Pa)
  );
}
