/**
 * One step from a stack to a neighbour: a shim put in, taken out, exchanged for another size, or moved. A step that
 * breaks a rule is thrown again.
 */
import { valveAt } from '../damper/damper-valves.ts';
import type { ShimInput } from '../types.ts';
import { countsOf, largestRadius, type Rules, sizesAt } from './arrangement.ts';
import type { Chance } from './random.ts';
import type { Arrangement, SearchPlace, SearchProblem } from './types.ts';

export interface Step {
  readonly arrangement: Arrangement;
  /** The only stack that changed. */
  readonly place: SearchPlace['place'];
}

const MOST_THROWS = 200;
/** Free width of the narrowest shim that is proposed, over that of the face: less is a washer, which only adds height. */
const LEAST_SHARE = 0.02;

export interface Mover {
  /** A neighbour that keeps every rule; undefined when none was found. */
  readonly next: (from: Arrangement) => Step | undefined;
}

/** @param usable  by place, the sizes that could stand in its stack at all */
export function moverOf(problem: SearchProblem, rules: Rules, chance: Chance): Mover {
  const usable = new Map(problem.places.map((at) => [at.place, usableAt(problem, at)]));
  const next = (from: Arrangement): Step | undefined => {
    for (let throws = 0; throws < MOST_THROWS; throws++) {
      const at = chance.pick(problem.places);
      const sizes = changed(sizesAt(from, at.place), leftOver(problem, from, usable.get(at.place) ?? []), chance);
      if (!sizes || !rules.mayBeLaid(at, sizes)) continue;
      const arrangement = { ...from, [at.place]: sizes };
      if (rules.mayBeTogether(arrangement)) return { arrangement, place: at.place };
    }
    return undefined;
  };
  return { next };
}

/** No larger than the present face, and wide enough over the clamp to be a plate. */
function usableAt({ damper, supply }: SearchProblem, { place, present }: SearchPlace): number[] {
  const { clampRadius_m } = valveAt(damper, place).stack;
  const largest = largestRadius(present, supply);
  const least = clampRadius_m + LEAST_SHARE * (largest - clampRadius_m);
  const fits = ({ outerRadius_m }: ShimInput) => outerRadius_m <= largest && outerRadius_m >= least;
  return supply.flatMap(({ shim, count }, size) => (count > 0 && fits(shim) ? [size] : []));
}

/** Sizes of which one more may be laid. */
function leftOver({ supply, places }: SearchProblem, from: Arrangement, usable: readonly number[]): number[] {
  const used = countsOf(places.flatMap(({ place }) => sizesAt(from, place)));
  return usable.filter((size) => (used.get(size) ?? 0) < supply[size].count);
}

type Change = (sizes: readonly number[], free: readonly number[], chance: Chance) => readonly number[] | undefined;

const putIn: Change = (sizes, free, chance) =>
  free.length === 0 ? undefined : sizes.toSpliced(chance.below(sizes.length + 1), 0, chance.pick(free));

const takeOut: Change = (sizes, _free, chance) => sizes.toSpliced(chance.below(sizes.length), 1);

const exchange: Change = (sizes, free, chance) =>
  free.length === 0 ? undefined : sizes.with(chance.below(sizes.length), chance.pick(free));

const move: Change = (sizes, _free, chance) => {
  const from = chance.below(sizes.length);
  const to = chance.below(sizes.length);
  if (sizes[from] === sizes[to]) return undefined;
  return sizes.toSpliced(from, 1).toSpliced(to, 0, sizes[from]);
};

/** Exchanges are the finest step, so they come most often. */
const CHANGES: readonly Change[] = [putIn, takeOut, exchange, exchange, exchange, move];

const changed: Change = (sizes, free, chance) => chance.pick(CHANGES)(sizes, free, chance);
