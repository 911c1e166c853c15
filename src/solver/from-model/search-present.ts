/** What a search begins from: how far the present stacks are from the aim, and the reserves that it asks for unless told otherwise. */
import type { Project } from '../../model/project.ts';
import type { SearchLimits, SearchRequest } from '../../model/search-request.ts';
import { presentArrangement } from '../search/arrangement.ts';
import { checkAim } from '../search/check-problem.ts';
import { judgeAnswer } from '../search/judge-answer.ts';
import type { Judgement, SearchProblem } from '../search/types.ts';
import { searchProblem } from './search.ts';

export interface PresentStacks {
  /** Absent where the stacks as they are do not solve at every speed of the aim. */
  readonly judgement?: Judgement;
  /** Least reserves of a search that may not be worse than what is there. */
  readonly usualReserves: Required<Pick<SearchLimits, 'minFatigueReserve' | 'minYieldReserve'>>;
}

/** A shim with that reserve is used to its strength and no further. */
const FULL_USE = 1;

const noWorse = (present: number | undefined): number => Math.min(FULL_USE, present ?? FULL_USE);

/**
 * The present stacks of the searched places, judged like an answer but by no limit. A damper in service whose shims lie beyond what is
 * reckoned endless would otherwise leave a search nothing: it is asked to be no worse, and 1 where the present has more.
 * @throws InputError as `searchStart` does
 */
export function presentStacks(
  project: Project,
  request: SearchRequest,
  theory: SearchProblem['theory'],
): PresentStacks {
  const { problem } = searchProblem(project, { ...request, limits: {} }, theory);
  checkAim(problem);
  const judgement = judgeAnswer(problem, presentArrangement(problem.places))?.judgement;
  return {
    ...(judgement && { judgement }),
    usualReserves: {
      minFatigueReserve: noWorse(judgement?.fatigueReserve),
      minYieldReserve: noWorse(judgement?.yieldReserve),
    },
  };
}
