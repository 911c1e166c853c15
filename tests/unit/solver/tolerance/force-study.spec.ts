import { describe, expect, it } from 'vitest';
import { matchedForces } from '../../../../src/solver/damper/matched-forces.ts';
import { withStack } from '../../../../src/solver/damper/with-stack.ts';
import {
  DEFAULT_TOLERANCES,
  damperFromProject,
  TOLERANCE_NAMES,
  type Tolerances,
  toleranceForBuild,
} from '../../../../src/solver/index.ts';
import { slopesOf } from '../../../../src/solver/sensitivity/slopes.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';

const project = loadDemo('larkspur-trail-rear.shimwright.json');
const id = project.baselineBuild;
const NONE = Object.fromEntries(TOLERANCE_NAMES.map((name) => [name, 0])) as unknown as Tolerances;
const theory = 'large-deflection' as const;
const ask = (tolerances: Partial<Tolerances>, speeds_m_s: readonly number[], samples: number) =>
  toleranceForBuild(project, id, { speeds_m_s, theory, seed: 1, samples, tolerances: { ...NONE, ...tolerances } });

describe('the band of a force', () => {
  it('has no width without tolerances: every sample is the damper as it is drawn', () => {
    const { drawn_N, spreads } = ask({}, [0.3, -0.3], 4);
    spreads.forEach((spread, i) => {
      expect(spread).toMatchObject({ p5: drawn_N[i], p95: drawn_N[i], without: 0 });
      expect(spread?.deviation).toBeLessThan(1e-9);
    });
    expect(drawn_N[0]).toBeGreaterThan(500);
  });

  it('of one small tolerance has the deviation |dF/dx| σ, two deviations being the tolerance (first-order propagation, JCGM 100)', () => {
    const seat = 4e-6;
    const [spread] = ask({ seat }, [-0.3], 64).spreads;
    const damper = damperFromProject(project, id);
    const { stack } = damper.rebound;
    const forces = matchedForces(damper, [-0.3], theory);
    const raised = (by: number) => ({ ...stack, seat: { ...stack.seat, height_m: stack.seat.height_m + by } });
    const [slope] = slopesOf((by) => forces.of(withStack(damper, 'rebound', raised(by))), 2e-6);
    const expected = (Math.abs(slope?.value ?? NaN) * seat) / 2;
    expect((spread?.deviation ?? NaN) / expected).toBeCloseTo(1, 1);
    expect(expected).toBeGreaterThan(2);
  });

  it('comes from the one tolerance that is left: its share is the whole', () => {
    const [spread] = ask({ gas: DEFAULT_TOLERANCES.gas }, [0.3], 64).spreads;
    const gas = spread?.shares[TOLERANCE_NAMES.indexOf('gas')];
    expect(gas?.total).toBeCloseTo(1, 1);
    expect(gas?.first).toBeCloseTo(1, 1);
    expect(spread?.shares[TOLERANCE_NAMES.indexOf('seat')]).toEqual({ first: 0, total: 0 });
  });

  it('goes on from samples that were solved before to what it is at once', () => {
    const question = { speeds_m_s: [0.3], theory, seed: 3, tolerances: { ...NONE, gas: 1e4, viscosity: 0.1 } };
    const { samples } = toleranceForBuild(project, id, { ...question, samples: 5 });
    const grown = toleranceForBuild(project, id, { ...question, samples: 9, before: samples });
    expect(grown).toEqual(toleranceForBuild(project, id, { ...question, samples: 9 }));
  });

  it('leaves out dampers that cannot be, counts them and says why', () => {
    const { spreads, refusals } = ask({ diameter: 10e-3 }, [0.3], 8);
    expect(spreads[0]?.without).toBeGreaterThan(0);
    expect(refusals.length).toBeGreaterThan(0);
  });
});
