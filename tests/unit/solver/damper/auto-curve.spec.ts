/** What `auto` makes of whole dampers: the theories that are told, and that every result keeps to them. */
import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../../scripts/lib/demo-project.ts';
import {
  dampingCyclesForBuild,
  type ForcePoint,
  fitBuild,
  forceCurveForBuild,
  forcePointsForBuild,
  type StackTheories,
  sensitivityForBuild,
  type TheoryChoice,
  theoriesOf,
  toleranceForBuild,
} from '../../../../src/solver/index.ts';

/** Its rebound has six ports over three quarters of the circle, the others a groove under which they stay round at these speeds. */
const PORTED = demoProject('wagtail-hill-climb-rear');
const BUILD = PORTED.baselineBuild;
const MIXED: StackTheories = { compression: 'large-deflection', rebound: 'port-periodic', base: 'large-deflection' };
const SPEEDS = [-0.5, -0.1, 0.1, 0.5];

/** Stacks as they are drawn, which are solved once. */
const SOUND_SHIMS = { thickness: 0, diameter: 0, clamp: 0, seat: 0 };

const curveBy = (theory: TheoryChoice, more: { bands?: boolean } = {}) =>
  forceCurveForBuild(PORTED, BUILD, { speeds_m_s: SPEEDS, theory, ...more });
const forces = (points: readonly unknown[]): number[] => (points as ForcePoint[]).map(({ force_N }) => force_N);

describe('a force curve under auto', () => {
  const auto = curveBy('auto');

  it('tells what it was asked for, and of each stack what gave it', () => {
    expect(auto.theory).toBe('auto');
    expect(theoriesOf(auto)).toEqual(MIXED);
  });

  it('is in each direction the curve of the theory that it used, to the digit', () => {
    const [large, waved] = [curveBy('large-deflection'), curveBy('port-periodic')];
    expect(forces(auto.points).slice(0, 2)).toEqual(forces(waved.points).slice(0, 2));
    expect(forces(auto.points).slice(2)).toEqual(forces(large.points).slice(2));
    expect(forces(auto.points).slice(0, 2)).not.toEqual(forces(large.points).slice(0, 2));
  });

  it('has no onset where it follows the waves, and one where it does not', () => {
    expect(auto.stacks.rebound.waves).toBeUndefined();
    expect(auto.stacks.compression.waves).toBeDefined();
  });

  it('changes its mind with the speeds that are asked for', () => {
    const grooved = demoProject('larkspur-trail-rear');
    const at = (speed: number) =>
      theoriesOf(forceCurveForBuild(grooved, grooved.baselineBuild, { speeds_m_s: [-speed], theory: 'auto' })).rebound;
    expect(at(0.3)).toBe('large-deflection');
    expect(at(2)).toBe('port-periodic');
  });

  it('lays its bands round its own forces', () => {
    const { points } = curveBy('auto', { bands: true });
    expect(forces(points)).toEqual(forces(auto.points));
    for (const { band, force_N } of points as ForcePoint[]) {
      if (band?.status !== 'converged') throw new Error('no band');
      expect(band.low_N).toBeLessThan(force_N);
      expect(band.high_N).toBeGreaterThan(force_N);
    }
  });

  it('marks under large deflection where auto would leave it, and only there', () => {
    const { stacks } = curveBy('large-deflection');
    expect(stacks.rebound.leavesRound).toBe('ports');
    expect(stacks.compression).not.toHaveProperty('leavesRound');
    expect(stacks.base).not.toHaveProperty('leavesRound');
  });
});

describe('what else asks for auto tells the theories of its stacks', () => {
  it('the forces of a sweep, which are those of the curve', () => {
    const { points, theories } = forcePointsForBuild(PORTED, BUILD, { speeds_m_s: SPEEDS, theory: 'auto' });
    expect(theories).toEqual(MIXED);
    expect(forces(points)).toEqual(forces(curveBy('auto').points));
  });

  it('a run of the cycle', () => {
    const drive = { kind: 'sine', stroke_m: 0.04, frequency_Hz: 4, middle_m: 0.075, cycles: 1 } as const;
    const [auto] = dampingCyclesForBuild(PORTED, BUILD, [drive], { theory: 'auto' });
    const [large] = dampingCyclesForBuild(PORTED, BUILD, [drive], { theory: 'large-deflection' });
    if (auto.status !== 'finished' || large.status !== 'finished') throw new Error('not finished');
    expect(auto.theories).toEqual(MIXED);
    expect(Math.min(...auto.series.force_N)).toBeGreaterThan(Math.min(...large.series.force_N));
  });

  it('a tolerance, whose samples keep to what was chosen as drawn', () => {
    const question = { speeds_m_s: [-0.5], seed: 1, samples: 4, tolerances: SOUND_SHIMS } as const;
    const { theories, drawn_N } = toleranceForBuild(PORTED, BUILD, { ...question, theory: 'auto' });
    expect(theories).toEqual(MIXED);
    const [waved] = toleranceForBuild(PORTED, BUILD, { ...question, theory: 'port-periodic' }).drawn_N;
    expect(drawn_N[0]).toBe(waved);
  });

  it('the effects of single shims', () => {
    const question = { place: 'base', speeds_m_s: [0.5] } as const;
    const { theories } = sensitivityForBuild(PORTED, BUILD, { ...question, theory: 'auto' });
    expect(theories).toEqual(MIXED);
  });

  it('a fit, which finds again what was put in', () => {
    const hidden = 0.66;
    const { points } = forceCurveForBuild(PORTED, BUILD, {
      speeds_m_s: SPEEDS,
      theory: 'auto',
      coefficients: { jetDischarge: hidden },
    });
    const measurement = {
      ...{ id: 'a', name: 'invented', notes: '', sourceFile: 'a.csv', kind: 'force-speed' as const },
      ...{ conditions: {}, rawCount: SPEEDS.length, steps: [], outliers: [] },
      points: { speed_m_s: SPEEDS, force_N: forces(points) },
    };
    const outcome = fitBuild(PORTED, BUILD, {
      measurements: [measurement],
      names: ['jetDischarge'],
      theory: 'auto',
    });
    if (outcome.status !== 'fitted') throw new Error(outcome.reason);
    expect(outcome.theory).toBe('auto');
    expect(outcome.theories).toEqual([MIXED]);
    expect(outcome.coefficients[0].value).toBeCloseTo(hidden, 3);
  });
});

describe('a stack whose ports open a share of the circumference', () => {
  it('feels the same force in differences of dampers as in a curve', () => {
    const question = { place: 'rebound', speeds_m_s: [-0.3] } as const;
    const { force_N } = sensitivityForBuild(PORTED, BUILD, { ...question, theory: 'small-deflection' });
    const options = { speeds_m_s: [-0.3], theory: 'small-deflection' } as const;
    expect(force_N).toEqual(forces(forceCurveForBuild(PORTED, BUILD, options).points));
  });
});
