/**
 * What a search by large deflection has to aim at, so that its answers meet the aim by `auto`: the aim and the least reserves, each
 * times the ratio of the two theories at a stack near by. Stacks that come near one aim lift alike, and so the ratio is nearly theirs.
 *
 * Source: space mapping, J. W. Bandler et al., IEEE Trans. Microw. Theory Techn. 42 (1994) 2536-2544 (from memory).
 *
 * symbol  unit  meaning
 * ratio   -     large deflection over `auto`, of a force at one speed or of a reserve
 */
import { judgeAnswer } from './judge-answer.ts';
import type { Arrangement, Judgement, SearchProblem } from './types.ts';

export type Goal = Pick<SearchProblem, 'aim' | 'limits'>;

/** A ratio beyond it comes from forces near 0, and says nothing [-]. */
const MOST = 3;

/** @returns undefined where the stack does not solve by both */
export function alignedGoal(problem: SearchProblem, near: Arrangement): Goal | undefined {
  const { minFatigueReserve, minYieldReserve, minGasMargin_Pa: _, ...others } = problem.limits;
  const judge = (theory: SearchProblem['theory']) => judgeAnswer({ ...problem, theory, limits: others }, near);
  const round = judge('large-deflection');
  if (!round) return undefined;
  const { aim, limits } = problem;
  if (!round.leavesRound) return { aim, limits };
  const chosen = judge('auto')?.judgement;
  if (!chosen) return undefined;
  const least = (of: 'fatigueReserve' | 'yieldReserve', wanted: number) =>
    wanted * ratioOf(round.judgement[of], chosen[of]);
  return {
    aim: aim.map((point, i) => ({ ...point, force_N: point.force_N * forceRatio(round.judgement, chosen, i) })),
    limits: {
      ...limits,
      ...(minFatigueReserve !== undefined && { minFatigueReserve: least('fatigueReserve', minFatigueReserve) }),
      ...(minYieldReserve !== undefined && { minYieldReserve: least('yieldReserve', minYieldReserve) }),
    },
  };
}

const forceRatio = (round: Judgement, chosen: Judgement, i: number): number =>
  ratioOf(round.force_N[i], chosen.force_N[i]);

function ratioOf(round: number | undefined, chosen: number | undefined): number {
  const ratio = (round ?? 1) / (chosen ?? 1);
  return ratio > 1 / MOST && ratio < MOST ? ratio : 1;
}
