import { describe, expect, it } from 'vitest';
import { matchedForces } from '../../../../src/solver/damper/matched-forces.ts';
import { withStack } from '../../../../src/solver/damper/with-stack.ts';
import {
  DEFAULT_TOLERANCES,
  damperFromProject,
  forcePointsForBuild,
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

  it('takes the tolerances of the document, and common practice for those that it leaves out', () => {
    const speeds_m_s = [0.3];
    const question = { speeds_m_s, theory, seed: 1, samples: 4 };
    const written = {
      thickness_mm: 0,
      shimDiameter_mm: 0,
      clampDiameter_mm: 0,
      seatHeight_mm: 0.004,
      portEdgeDiameter_mm: 0,
      portDiameter_mm: 0,
      bleedDiameter_mm: 0,
      viscosity_percent: 12,
      oilTemperatureDifference_K: 0,
    };
    const asWritten = toleranceForBuild({ ...project, tolerances: written }, id, question);
    const inSI = { seat: 4e-6, viscosity: 0.12, gas: 1e4 };
    expect(asWritten.samples).toEqual(ask(inSI, speeds_m_s, 4).samples);
    const replaced = toleranceForBuild({ ...project, tolerances: written }, id, {
      ...question,
      tolerances: { gas: 0 },
    });
    expect(replaced.samples).toEqual(ask({ ...inSI, gas: 0 }, speeds_m_s, 4).samples);
  });

  it('of the edge of the ports is that of a piston with wider rings of pressure and land (two dampers by hand)', () => {
    const at = (wider_mm: number) => {
      const { valves } = project.damper;
      const { pressureZone, seat } = valves.pistonRebound;
      const turned = {
        ...valves.pistonRebound,
        pressureZone: { ...pressureZone, outerDiameter_mm: pressureZone.outerDiameter_mm + wider_mm },
        seat: { ...seat, innerDiameter_mm: seat.innerDiameter_mm + wider_mm },
      };
      const of = { ...project, damper: { ...project.damper, valves: { ...valves, pistonRebound: turned } } };
      return forcePointsForBuild(of, id, { speeds_m_s: [-0.3], theory }).points[0];
    };
    const [low, high] = [at(-0.05), at(0.05)].map((point) => (point.status === 'converged' ? point.force_N : NaN));
    const [spread] = ask({ portEdge: 5e-5 }, [-0.3], 64).spreads;
    // The tolerance is two standard deviations; both stacks' edges scatter, of which only that of rebound works at this speed.
    expect((spread?.deviation ?? NaN) / Math.abs((high - low) / 4)).toBeCloseTo(1, 1);
  });

  it('tells which tolerances the build has parts for, whether they scatter or not', () => {
    const closed = {
      ...project,
      builds: project.builds.map((build) => ({ ...build, bleed: { ...build.bleed, count: 0 } })),
    };
    const question = { speeds_m_s: [0.3], theory, seed: 1, samples: 4, tolerances: NONE };
    expect(toleranceForBuild(project, id, question).parts).toEqual(TOLERANCE_NAMES);
    expect(toleranceForBuild(closed, id, question).parts).toEqual(TOLERANCE_NAMES.filter((name) => name !== 'bleed'));
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
