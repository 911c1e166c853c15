import { describe, expect, it } from 'vitest';
import { damperFromProject } from '../../../../src/solver/from-model.ts';
import { sampleOpenings } from '../../../../src/solver/search/sample-openings.ts';
import { stayingTables } from '../../../../src/solver/search/staying-tables.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';
import { PLANTED, withCompression } from '../../../helpers/search-studies.ts';

const project = withCompression(loadDemo('larkspur-trail-rear.shimwright.json'), PLANTED);
const { stack } = damperFromProject(project, project.baselineBuild).compression;
/** The planted stack stays round up to 0.37 MPa or so. */
const ROUND_PA = [0, 1e5, 2e5, 3e5];
const WAVED_PA = [...ROUND_PA, 6e5, 9e5];

describe('the openings of one stack', () => {
  const openings = (theory: Parameters<typeof sampleOpenings>[2], pressures_Pa: readonly number[], of = stack) =>
    sampleOpenings(of, pressures_Pa, theory, false)?.opening_m ?? [];

  it('are round under auto where the stack stays so', () => {
    expect(openings('auto', ROUND_PA)).toEqual(openings('large-deflection', ROUND_PA));
  });

  it('follow the waves under auto where it does not', () => {
    const waved = openings('auto', WAVED_PA);
    expect(waved).toEqual(openings('port-periodic', WAVED_PA));
    expect(waved[5]).toBeGreaterThan(1.2 * openings('large-deflection', WAVED_PA)[5]);
  });

  it('are under the mean pressure on the zone, whatever share of it few ports open', () => {
    const ported = { ...stack, ports: { count: 4, coveredFraction: 0.6 } };
    const [auto, periodic] = [openings('auto', WAVED_PA, ported), openings('port-periodic', WAVED_PA, ported)];
    for (const [i, opening] of auto.entries()) expect(opening).toBeCloseTo(periodic[i], 9);
    expect(auto[5] / openings('auto', WAVED_PA)[5]).toBeGreaterThan(0.9);
  });

  it('come with what the shims bear at the crests of their waves', () => {
    const use = (theory: 'auto' | 'large-deflection') => sampleOpenings(stack, WAVED_PA, theory, true)?.use ?? [];
    const [waved, round] = [use('auto'), use('large-deflection')];
    expect(waved).toHaveLength(WAVED_PA.length);
    expect(waved[2].yield).toBeCloseTo(round[2].yield, 6);
    expect(Math.abs(waved[5].yield / round[5].yield - 1)).toBeGreaterThan(0.01);
  });
});

describe('a stack that a search leaves as it is', () => {
  it('goes by the theory that is asked for', () => {
    const damper = damperFromProject(project, project.baselineBuild);
    const tables = stayingTables({
      damper,
      places: [{ place: 'rebound', present: [], kept: new Map(), keepsFace: false }],
      supply: [],
      aim: [
        { shaftSpeed_m_s: 1.5, force_N: 800 },
        { shaftSpeed_m_s: -1.5, force_N: -2000 },
      ],
      limits: { maxShims: 12 },
      theory: 'auto',
    });
    expect([...tables.keys()]).toEqual(['compression']);
    expect(tables.get('compression')?.table.theory).toBe('port-periodic');
  });
});
