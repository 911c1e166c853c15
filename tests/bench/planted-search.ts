/** Whether a search finds a planted stack again, over twenty seeds. */
import { rankFound } from '../../src/model/rank-found.ts';
import { type FoundByStart, forceCurveForBuild, searchStart } from '../../src/solver/index.ts';
import { PLANTED, plantedStudy, SPEEDS, withCompression } from '../helpers/search-studies.ts';
import type { BenchCase } from './bench-case.ts';

const SEEDS = 20;
const STARTS = 8;
const STEPS = 250;
/** To reach: a curve within 2 % of the planted one, root mean square. */
const WITHIN = 0.02;
/** What a search says of a force may differ from the whole curve by rounding alone. */
const SAME = 1e-9;

const rms = (values: readonly number[]): number => Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

/** A run is a whole search of one seed on one core, from a drawer of 60 shims; to reach: 20 s, which is 10 s on two. */
function plantedSearch(): BenchCase {
  const { project, request } = plantedStudy();
  const shares: number[] = [];
  const forces = (shims: Parameters<typeof withCompression>[1]): number[] => {
    const options = { speeds_m_s: SPEEDS, theory: 'large-deflection' } as const;
    const { points } = forceCurveForBuild(withCompression(project, shims), project.baselineBuild, options);
    return points.map((point) => (point.status === 'converged' ? point.force_N - point.gasForce_N : Number.NaN));
  };
  return {
    name: 'searchPlanted',
    items: 1,
    longRuns: SEEDS,
    verdict: () =>
      `${shares.filter((share) => share < WITHIN).length} of ${shares.length} seeds within 2 % of the planted`,
    prepare() {
      let seed = 0;
      return () => {
        seed++;
        const settings = { seed, steps: STEPS, answers: 4, theory: 'large-deflection' } as const;
        return Array.from({ length: STARTS }, (_, start) => searchStart(project, request, settings, start));
      };
    },
    check(result) {
      const [best] = rankFound(result as FoundByStart[], 1);
      const [got, wanted] = [forces(best.shims.pistonCompression ?? []), forces(PLANTED)];
      const share = rms(got.map((force, i) => force - wanted[i])) / rms(wanted);
      if (!(Math.abs(share - best.judgement.rmsShare) < SAME))
        throw new Error(`searchPlanted: the curve lies ${share} off, the search says ${best.judgement.rmsShare}`);
      shares.push(share);
    },
  };
}

export const searchPlanted: BenchCase = plantedSearch();
