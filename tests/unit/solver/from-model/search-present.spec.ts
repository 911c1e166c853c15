import { describe, expect, it } from 'vitest';
import type { SearchRequest } from '../../../../src/model/search-request.ts';
import { forceCurveForBuild, presentStacks, searchStart } from '../../../../src/solver/index.ts';
import { aimOf, PLANTED, plantedStudy, SPEEDS, withCompression } from '../../../helpers/search-studies.ts';

const THEORY = 'large-deflection';
const { project, request } = plantedStudy();

describe('the present stacks of a search', () => {
  it('lie off the aim by the root of the mean square of force less aim', () => {
    const present = aimOf(project, SPEEDS);
    const squares = present.map(({ force_N }, i) => (force_N - request.aim[i].force_N) ** 2);
    const rms_N = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    const { judgement } = presentStacks(project, request, THEORY);
    expect(rms_N).toBeGreaterThan(20);
    expect(judgement?.rms_N).toBeCloseTo(rms_N, 1);
    const planted = presentStacks(withCompression(project, PLANTED), request, THEORY);
    expect(planted.judgement?.rmsShare).toBeLessThan(1e-3);
  });

  it('are not measured by the limits that a search has', () => {
    const strict: SearchRequest = { ...request, limits: { minFatigueReserve: 50, maxShims: 1 } };
    expect(presentStacks(project, strict, THEORY)).toEqual(presentStacks(project, request, THEORY));
  });

  it('ask for a reserve of 1, or their own where it is less, which an answer then has', () => {
    const least = { ...presentStacks(project, request, THEORY).usualReserves };
    const { points } = forceCurveForBuild(project, request.buildId, { speeds_m_s: SPEEDS, theory: THEORY });
    const uses = points.flatMap((point) => (point.status === 'converged' && point.life ? [point.life] : []));
    expect(uses).toHaveLength(SPEEDS.length);
    expect(least.minFatigueReserve).toBeCloseTo(Math.min(1, 1 / Math.max(...uses.map((use) => use.fatigue.use))), 6);
    expect(least.minYieldReserve).toBeCloseTo(Math.min(1, 1 / Math.max(...uses.map((use) => use.yield.use))), 6);
    // Twice as fast, shims are bent beyond endless life.
    const fast = {
      ...request,
      aim: request.aim.map((point) => ({ ...point, shaftSpeed_m_s: 2.5 * point.shaftSpeed_m_s })),
    };
    const { usualReserves } = presentStacks(project, fast, THEORY);
    expect(usualReserves.minFatigueReserve).toBeLessThan(1);
    const settings = { seed: 1, steps: 40, answers: 3, theory: THEORY } as const;
    const none = searchStart(project, { ...fast, limits: { minFatigueReserve: 1, maxChanges: 1 } }, settings, 0);
    const some = searchStart(project, { ...fast, limits: { ...usualReserves, maxChanges: 1 } }, settings, 0);
    expect(none.answers).toEqual([]);
    expect(some.answers.length).toBeGreaterThan(0);
    for (const { judgement } of some.answers)
      expect(judgement.fatigueReserve).toBeGreaterThanOrEqual(usualReserves.minFatigueReserve);
  });

  it('have no distance where they do not solve, and then 1 is asked for', () => {
    const far = {
      ...request,
      aim: request.aim.map((point) => ({ ...point, shaftSpeed_m_s: 400 * point.shaftSpeed_m_s })),
    };
    expect(presentStacks(project, far, THEORY)).toEqual({
      usualReserves: { minFatigueReserve: 1, minYieldReserve: 1 },
    });
  });

  it('are refused without an aim in their direction', () => {
    const other = {
      ...request,
      aim: request.aim.map(({ shaftSpeed_m_s, force_N }) => ({ shaftSpeed_m_s: -shaftSpeed_m_s, force_N: -force_N })),
    };
    expect(() => presentStacks(project, other, THEORY)).toThrow('search.aim.direction');
  });
});
