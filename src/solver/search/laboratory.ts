/**
 * What all proposals of one search are measured with: the grids of pressures, the tables of the stacks that stay, and the openings of
 * every stack that was solved before.
 */
import { eachStack } from '../damper/damper-valves.ts';
import type { StackPlace } from '../damper/types.ts';
import type { TheoryChoice } from '../types.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { pressureGrid } from './pressure-grid.ts';
import { type OpeningSamples, sampleOpenings } from './sample-openings.ts';
import { stayingTables } from './staying-tables.ts';
import { brokenBy, coarseTable, distanceOf, scaleOf, trialPoints } from './trial.ts';
import { trialTheory } from './trial-theory.ts';
import type { Arrangement, SearchProblem } from './types.ts';
import { valveWith, withStacks } from './with-stacks.ts';

/** The openings of every searched stack. */
export type Samples = ReadonlyMap<StackPlace, OpeningSamples>;

export interface Laboratory {
  /** Openings of one stack; undefined where it does not solve. */
  readonly sample: (place: StackPlace, sizes: readonly number[], theory: TheoryChoice) => OpeningSamples | undefined;
  /** Distance of the damper with these openings from the aim, raised where a limit is broken [N]. */
  readonly cost: (arrangement: Arrangement, samples: Samples) => number;
  /** Root mean square of the aim [N]. */
  readonly aimScale_N: number;
}

/** Openings kept before all are forgotten: a bound for memory, above what one start looks at. */
const MOST_KEPT = 20_000;

/** @throws InputError of the stacks that stay */
export function laboratoryOf(problem: SearchProblem): Laboratory {
  const { damper, places, supply, aim, limits } = problem;
  const theory = trialTheory(problem.theory);
  const grids = new Map(places.map(({ place }) => [place, pressureGrid(damper, place, aim)] as const));
  const staying = stayingTables(problem);
  const withUse = limits.minFatigueReserve !== undefined || limits.minYieldReserve !== undefined;
  const kept = new Map<string, OpeningSamples | undefined>();
  const aimScale_N = scaleOf(aim);
  const gridOf = (place: StackPlace) => grids.get(place) ?? [];

  const sample: Laboratory['sample'] = (place, sizes, wanted) => {
    const key = `${place} ${wanted} ${sizes.join(',')}`;
    if (kept.has(key)) return kept.get(key);
    const { stack } = valveWith(damper, place, sizes, supply);
    const found = sampleOpenings(stack, gridOf(place), wanted, withUse && wanted !== 'small-deflection');
    if (kept.size >= MOST_KEPT) kept.clear();
    kept.set(key, found);
    return found;
  };
  const tableAt = (place: StackPlace, samples: Samples): OpeningTable => {
    const found = samples.get(place);
    const table = found ? coarseTable(gridOf(place), found.opening_m, theory) : staying.get(place);
    if (!table) throw new Error(`the stack ${place} is neither searched nor kept`);
    return table;
  };
  const cost: Laboratory['cost'] = (arrangement, samples) => {
    const tables = eachStack(damper, (place) => tableAt(place, samples));
    const points = trialPoints(withStacks(damper, arrangement, supply), tables, aim);
    return distanceOf(points, aim) + aimScale_N * brokenBy(points, samples, grids, limits);
  };
  return { sample, cost, aimScale_N };
}
