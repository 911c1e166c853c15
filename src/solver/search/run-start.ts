/**
 * One start of a search: simulated annealing from the present stacks (start 0) or from a random way off them, and whole force curves for
 * the best at the end. Theories stand on a ladder: small deflection is a sieve, large deflection tries what passes, and `auto`, where
 * it is asked for and may follow waves at ten times the price, is solved for what seems the best so far.
 *
 * A neighbour differs by one shim, so that what a better theory does to its opening is nearly what it does to the stack one came
 * from. Its opening is taken as that of the rougher theory times the ratio of the two there (space mapping), until it is solved.
 *
 * Source: S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, Science 220 (1983) 671-680; space mapping: J. W. Bandler et al., IEEE
 * Trans. Microw. Theory Techn. 42 (1994) 2536-2544 (both from memory).
 *
 * symbol  unit  meaning
 * T       N     temperature: a worse neighbour by T is taken once in e times
 */

import type { StackPlace } from '../damper/types.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
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
/** As many of the nearest as are wanted, times this, have their guesses solved before they are put in order. */
const SOLVED_PER_ANSWER = 2;
/** Whole curves are made of so many more than are handed on, since a coarse verdict may put the wrong one first. */
const JUDGED_BESIDE = 2;
/** ... and, where limits refuse them, of no more than this many for each that is wanted. */
const JUDGED_PER_ANSWER = 3;

interface Standing {
  readonly arrangement: Arrangement;
  /** Openings with small deflection, those with the theory that tries, and those with the theory asked for. */
  readonly small: Samples;
  readonly tried: Samples;
  readonly asked: Samples;
  /** `asked` is no guess. */
  readonly isSolved: boolean;
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
  const visited = new Map<string, Standing>();
  let standing = standingAt(problem, laboratory, firstOf(problem, start, mover));
  let least_N = standing.cost_N;
  for (let step = 0; step < settings.steps; step++) {
    stopIfAsked(hooks);
    const T = laboratory.aimScale_N * HOT * (COLD / HOT) ** (step / settings.steps);
    const proposed = mover.next(standing.arrangement);
    if (!proposed) break;
    counts.proposed++;
    const bound_N = standing.cost_N - T * Math.log(1 - chance.share());
    const guess = tried(problem, laboratory, standing, proposed, bound_N, counts);
    // What seems the best so far is worth its waves, and the next guesses start from them.
    const next = guess && guess.cost_N <= Math.min(bound_N, least_N) ? solved(problem, laboratory, guess) : guess;
    if (next && next.cost_N <= bound_N) standing = next;
    if (next && (next === standing || next !== guess)) visited.set(keyOf(next.arrangement), next);
    if (next?.isSolved) least_N = Math.min(least_N, next.cost_N);
    hooks.onProgress?.(step + 1, settings.steps);
  }
  visited.set(keyOf(standing.arrangement), standing);
  return { start, counts, ...judged(problem, laboratory, settings, [...visited.values()]) };
}

function firstOf({ places }: SearchProblem, start: number, mover: Mover): Arrangement {
  let arrangement = presentArrangement(places);
  for (let step = 0; start > 0 && step < WAY_OFF; step++)
    arrangement = mover.next(arrangement)?.arrangement ?? arrangement;
  return arrangement;
}

function standingAt(problem: SearchProblem, laboratory: Laboratory, arrangement: Arrangement): Standing {
  const samplesOf = (theory: TheoryChoice) => {
    const samples = new Map<StackPlace, OpeningSamples>();
    for (const { place } of problem.places) {
      const found = laboratory.sample(place, sizesAt(arrangement, place), theory);
      if (found) samples.set(place, found);
    }
    return samples;
  };
  const [small, tried, asked] = [
    samplesOf('small-deflection'),
    samplesOf(trialTheory(problem.theory)),
    samplesOf(problem.theory),
  ];
  const isSolved = [small, tried, asked].every(({ size }) => size === problem.places.length);
  const cost_N = isSolved ? laboratory.cost(arrangement, asked) : Number.POSITIVE_INFINITY;
  return { arrangement, small, tried, asked, isSolved, cost_N };
}

/** The neighbour with its cost; undefined where the sieve holds it back or it does not solve. */
function tried(
  problem: SearchProblem,
  laboratory: Laboratory,
  from: Standing,
  { arrangement, place }: Step,
  bound_N: number,
  counts: { screened: number; judged: number },
): Standing | undefined {
  const sizes = sizesAt(arrangement, place);
  counts.screened++;
  const quick = laboratory.sample(place, sizes, 'small-deflection');
  if (!quick) return undefined;
  const guess = guessed(quick, from.small.get(place), from.asked.get(place));
  const guessed_N = guess && laboratory.cost(arrangement, new Map(from.asked).set(place, guess));
  if (guessed_N !== undefined && guessed_N > bound_N * (1 + SIEVE_ERROR)) return undefined;
  counts.judged++;
  const found = laboratory.sample(place, sizes, trialTheory(problem.theory));
  if (!found) return undefined;
  const isSolved = trialTheory(problem.theory) === problem.theory;
  const opening = isSolved ? found : (guessed(found, from.tried.get(place), from.asked.get(place)) ?? found);
  const asked = new Map(from.asked).set(place, opening);
  const cost_N = laboratory.cost(arrangement, asked);
  const [small, round] = [new Map(from.small).set(place, quick), new Map(from.tried).set(place, found)];
  return { arrangement, small, tried: round, asked, isSolved, cost_N };
}

/** With the theory asked for in place of a guess; beyond every bound where that does not solve. */
function solved(problem: SearchProblem, laboratory: Laboratory, standing: Standing): Standing {
  if (standing.isSolved) return standing;
  const asked = new Map<StackPlace, OpeningSamples>();
  for (const { place } of problem.places) {
    const found = laboratory.sample(place, sizesAt(standing.arrangement, place), problem.theory);
    if (!found) return { ...standing, cost_N: Number.POSITIVE_INFINITY };
    asked.set(place, found);
  }
  return { ...standing, asked, isSolved: true, cost_N: laboratory.cost(standing.arrangement, asked) };
}

/** What a better theory makes of a neighbour, from a rougher one and what the two make of the stack one shim away. */
function guessed(
  quick: OpeningSamples,
  rough: OpeningSamples | undefined,
  known: OpeningSamples | undefined,
): OpeningSamples | undefined {
  if (!rough || !known) return undefined;
  const ratio = (i: number) => (rough.opening_m[i] > 0 ? known.opening_m[i] / rough.opening_m[i] : 1);
  const opening_m: number[] = [];
  // A ratio that changes from point to point must not let the opening fall.
  for (const [i, h] of quick.opening_m.entries()) opening_m.push(Math.max(opening_m.at(-1) ?? 0, h * ratio(i)));
  const use = quick.use?.map(({ fatigue, yield: atYield }, i) => ({
    fatigue: fatigue * ratioOf(known.use?.[i].fatigue, rough.use?.[i].fatigue),
    yield: atYield * ratioOf(known.use?.[i].yield, rough.use?.[i].yield),
  }));
  return { opening_m, ...(use && { use }) };
}

const ratioOf = (known = 1, rough = 1): number => (rough > 0 ? known / rough : 1);

/** The nearest go on to the theory asked for, and from there to whole force curves, until there are enough that keep the limits. */
function judged(
  problem: SearchProblem,
  laboratory: Laboratory,
  { answers }: SearchSettings,
  candidates: readonly Standing[],
): Pick<StartResult, 'answers' | 'refused'> {
  const [near, far] = split(byCost(candidates), answers * SOLVED_PER_ANSWER);
  const ranked = [...byCost(near.map((each) => solved(problem, laboratory, each))), ...far];
  const found: SearchAnswer[] = [];
  let refused = 0;
  for (const { arrangement } of ranked.slice(0, answers * JUDGED_PER_ANSWER)) {
    if (found.length === answers + JUDGED_BESIDE) break;
    const judgement = judgeAnswer(problem, arrangement)?.judgement;
    if (judgement) found.push({ arrangement, changes: changesOf(arrangement, problem.places), judgement });
    else refused++;
  }
  return { answers: bestOf(found, answers), refused };
}

const byCost = (standings: readonly Standing[]): Standing[] =>
  [...standings].sort((a, b) => a.cost_N - b.cost_N || (keyOf(a.arrangement) < keyOf(b.arrangement) ? -1 : 1));

const split = <Item>(items: readonly Item[], at: number): [Item[], Item[]] => [items.slice(0, at), items.slice(at)];

/** The nearest to the aim, each arrangement once; of equals the one with the lesser key. */
export function bestOf<Answer extends SearchAnswer>(found: readonly Answer[], count: number): Answer[] {
  const byKey = new Map(found.map((answer) => [keyOf(answer.arrangement), answer]));
  return [...byKey.entries()]
    .sort(([a, x], [b, y]) => x.judgement.rms_N - y.judgement.rms_N || (a < b ? -1 : 1))
    .map(([, answer]) => answer)
    .slice(0, count);
}
