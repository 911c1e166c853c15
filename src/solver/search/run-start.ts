/**
 * One start of a search: simulated annealing from the present stacks (start 0) or from a random way off them, with small deflection as
 * a sieve before the theory asked for, and whole force curves for the best at the end. `auto` tries and ranks with large deflection
 * against a goal that is aligned to it (align-goal.ts), at the present stacks first and then at the best so far, and judges what is handed
 * on by itself.
 *
 * The sieve: a neighbour differs by one shim, so that what large deflection does to its opening is nearly what it does to
 * the stack one came from. Its opening is taken as that of small deflection times the ratio of the two theories there.
 *
 * Source: S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Science 220 (1983) 671-680 (from memory).
 *
 * symbol  unit  meaning
 * T       N     temperature: a worse neighbour by T is taken once in e times
 */

import type { StackPlace } from '../damper/types.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, Theory } from '../types.ts';
import { alignedGoal, type Goal } from './align-goal.ts';
import { changesOf, keyOf, presentArrangement, rulesOf, sizesAt } from './arrangement.ts';
import { checkProblem } from './check-problem.ts';
import { judgeAnswer } from './judge-answer.ts';
import { type Laboratory, laboratoryOf, type Samples } from './laboratory.ts';
import { type Mover, moverOf, type Step } from './moves.ts';
import { chanceOf } from './random.ts';
import type { OpeningSamples } from './sample-openings.ts';
import { trialTheory } from './trial-theory.ts';
import type { Arrangement, SearchAnswer, SearchProblem, SearchSettings, StartResult } from './types.ts';

/** Temperatures as shares of the aim: where a start begins, and where it ends. */
const HOT = 0.08;
const COLD = 0.001;
/** Random steps off the present stacks before a start other than the first begins. */
const WAY_OFF = 40;
/** The sieve may err by this share of the cost. */
const SIEVE_ERROR = 0.15;
/** When, as shares of the steps, the goal is aligned anew: while it is still warm enough to follow. */
const REALIGNED = [0.15, 0.3, 0.45];
/** More are judged to the end than are handed on, since a coarse verdict may put the wrong one first. */
const JUDGED_PER_ANSWER = 3;

interface Standing {
  readonly arrangement: Arrangement;
  readonly samples: Samples;
  /** The same with small deflection. */
  readonly small: Samples;
  readonly cost_N: number;
}

/**
 * @param start  whole number from 0; each is a search of its own
 * @throws InputError `search.*`, `damper.*`, those of the stacks that stay; SolveStopped when the caller stops the run
 */
export function runStart(
  problem: SearchProblem,
  settings: SearchSettings,
  start: number,
  hooks: SolveHooks = {},
): StartResult {
  checkProblem(problem, settings);
  return anneal(problem, settings, start, laboratoryOf(problem), hooks);
}

function anneal(
  problem: SearchProblem,
  settings: SearchSettings,
  start: number,
  laboratory: Laboratory,
  hooks: SolveHooks,
): StartResult {
  const chance = chanceOf(settings.seed, start);
  const mover = moverOf(problem, rulesOf(problem), chance);
  const counts = { proposed: 0, screened: 0, judged: 0 };
  const best = new Map<string, Standing>();
  const realignAt = problem.theory === 'auto' ? REALIGNED.map((share) => Math.floor(share * settings.steps)) : [];
  let goal = (problem.theory === 'auto' && alignedGoal(problem, presentArrangement(problem.places))) || problem;
  let standing = standingAt(problem, laboratory, firstOf(problem, start, mover), goal);
  for (let step = 0; step < settings.steps; step++) {
    stopIfAsked(hooks);
    if (realignAt.includes(step)) {
      goal = alignedGoal(problem, nearest([...best.values(), standing]).arrangement) ?? goal;
      standing = costed(standing, laboratory, goal);
    }
    const T = laboratory.aimScale_N * HOT * (COLD / HOT) ** (step / settings.steps);
    const proposed = mover.next(standing.arrangement);
    if (!proposed) break;
    counts.proposed++;
    const bound_N = standing.cost_N - T * Math.log(1 - chance.share());
    const next = tried(problem, laboratory, goal, standing, proposed, bound_N, counts);
    if (next && next.cost_N <= bound_N) {
      standing = next;
      best.set(keyOf(next.arrangement), next);
    }
    hooks.onProgress?.(step + 1, settings.steps);
  }
  best.set(keyOf(standing.arrangement), standing);
  const candidates = [...best.values()].map((each) => costed(each, laboratory, goal));
  return { start, counts, ...judged(problem, goal, settings, candidates) };
}

const nearest = (standings: readonly Standing[]): Standing => standings.reduce((a, b) => (b.cost_N < a.cost_N ? b : a));

/** What did not solve has no cost by any goal. */
const costed = (standing: Standing, laboratory: Laboratory, goal: Goal): Standing =>
  Number.isFinite(standing.cost_N)
    ? { ...standing, cost_N: laboratory.cost(standing.arrangement, standing.samples, goal) }
    : standing;

function firstOf({ places }: SearchProblem, start: number, mover: Mover): Arrangement {
  let arrangement = presentArrangement(places);
  for (let step = 0; start > 0 && step < WAY_OFF; step++)
    arrangement = mover.next(arrangement)?.arrangement ?? arrangement;
  return arrangement;
}

function standingAt(problem: SearchProblem, laboratory: Laboratory, arrangement: Arrangement, goal: Goal): Standing {
  const samplesOf = (theory: Theory) => {
    const samples = new Map<StackPlace, OpeningSamples>();
    for (const { place } of problem.places) {
      const found = laboratory.sample(place, sizesAt(arrangement, place), theory);
      if (found) samples.set(place, found);
    }
    return samples;
  };
  const samples = samplesOf(trialTheory(problem.theory));
  const small = samplesOf('small-deflection');
  const solved = samples.size === problem.places.length && small.size === problem.places.length;
  const cost_N = solved ? laboratory.cost(arrangement, samples, goal) : Number.POSITIVE_INFINITY;
  return { arrangement, samples, small, cost_N };
}

/** The neighbour with its cost; undefined where the sieve holds it back or it does not solve. */
function tried(
  problem: SearchProblem,
  laboratory: Laboratory,
  goal: Goal,
  from: Standing,
  { arrangement, place }: Step,
  bound_N: number,
  counts: { screened: number; judged: number },
): Standing | undefined {
  const sizes = sizesAt(arrangement, place);
  counts.screened++;
  const quick = laboratory.sample(place, sizes, 'small-deflection');
  if (!quick) return undefined;
  const small = new Map(from.small).set(place, quick);
  const guess = guessed(quick, from.small.get(place), from.samples.get(place));
  const guessed_N = guess && laboratory.cost(arrangement, new Map(from.samples).set(place, guess), goal);
  if (guessed_N !== undefined && guessed_N > bound_N * (1 + SIEVE_ERROR)) return undefined;
  counts.judged++;
  const found = laboratory.sample(place, sizes, trialTheory(problem.theory));
  if (!found) return undefined;
  const samples = new Map(from.samples).set(place, found);
  return { arrangement, samples, small, cost_N: laboratory.cost(arrangement, samples, goal) };
}

/** Opening of a neighbour, from small deflection and what the theory makes of it one shim away; uses are left out. */
function guessed(
  quick: OpeningSamples,
  small: OpeningSamples | undefined,
  known: OpeningSamples | undefined,
): OpeningSamples | undefined {
  if (!small || !known) return undefined;
  const ratio = (i: number) => (small.opening_m[i] > 0 ? known.opening_m[i] / small.opening_m[i] : 1);
  const opening_m: number[] = [];
  // A ratio that changes from point to point must not let the opening fall.
  for (const [i, h] of quick.opening_m.entries()) opening_m.push(Math.max(opening_m.at(-1) ?? 0, h * ratio(i)));
  return { opening_m };
}

/** The nearest to the goal go on to the theory asked for, which large deflection with its goal only stands in for. */
function judged(
  problem: SearchProblem,
  goal: Goal,
  { answers }: SearchSettings,
  candidates: readonly { arrangement: Arrangement; cost_N: number }[],
): Pick<StartResult, 'answers' | 'refused'> {
  const ranked = [...candidates]
    .sort((a, b) => a.cost_N - b.cost_N || (keyOf(a.arrangement) < keyOf(b.arrangement) ? -1 : 1))
    .slice(0, answers * JUDGED_PER_ANSWER);
  const found = judgedBy({ ...problem, ...goal, theory: trialTheory(problem.theory) }, ranked);
  const best = bestOf(found, answers);
  const last = problem.theory === 'auto' ? bestOf(judgedBy(problem, best), answers) : best;
  return { answers: last, refused: ranked.length - found.length + best.length - last.length };
}

const judgedBy = (problem: SearchProblem, candidates: readonly { arrangement: Arrangement }[]): SearchAnswer[] =>
  candidates.flatMap(({ arrangement }) => {
    const judgement = judgeAnswer(problem, arrangement)?.judgement;
    return judgement ? [{ arrangement, changes: changesOf(arrangement, problem.places), judgement }] : [];
  });

/** The nearest to the aim, each arrangement once; of equals the one with the lesser key. */
export function bestOf<Answer extends SearchAnswer>(found: readonly Answer[], count: number): Answer[] {
  const byKey = new Map(found.map((answer) => [keyOf(answer.arrangement), answer]));
  return [...byKey.entries()]
    .sort(([a, x], [b, y]) => x.judgement.rms_N - y.judgement.rms_N || (a < b ? -1 : 1))
    .map(([, answer]) => answer)
    .slice(0, count);
}
