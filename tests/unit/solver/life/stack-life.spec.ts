/** What a force curve says of the life of its shims, checked against lift solves of its own. */
import { describe, expect, it } from 'vitest';
import { forceCurve } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { shimUses } from '../../../../src/solver/life/shim-use.ts';
import { usesAt, worstOf } from '../../../../src/solver/life/stack-life.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ShimInput } from '../../../../src/solver/types.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';
import { converged, shim } from '../../../helpers/stacks.ts';

const stackOf = (shims: readonly ShimInput[]): DamperInput['compression'] => ({
  ...MONOTUBE.compression,
  stack: {
    clampRadius_m: 6e-3,
    shims,
    pressureZone: { innerRadius_m: 8e-3, outerRadius_m: 13e-3 },
    seat: { innerRadius_m: 13e-3, outerRadius_m: 13.5e-3, height_m: 0.05e-3 },
  },
});
const damper: DamperInput = {
  ...MONOTUBE,
  compression: stackOf([shim(15, 0.15), shim(15, 0.15), shim(10, 0.2)]),
  rebound: stackOf([shim(15, 0.2), shim(12, 0.2)]),
};
const SPEEDS = [-1, 0, 0.1, 0.2, 0.3];
const curve = forceCurve(damper, SPEEDS, { theory: 'large-deflection' });
const points = curve.points.map((point) => point as ForcePoint);

describe('life in a force curve', () => {
  it('judges every shim of a table at every pressure, as a solve of that pressure alone does', () => {
    const { life, pressure_Pa } = curve.stacks.rebound;
    const { stack } = damper.rebound;
    const options = { theory: 'large-deflection', landPressure: 'falling', profiles: true } as const;
    const solved = solveLift(stack, pressure_Pa, options).points.map((point) => converged(point).stress ?? []);
    const wanted = solved.map((open) => shimUses(stack.shims, solved[0], open));
    expect(life?.shims).toHaveLength(2);
    life?.shims.forEach((uses, s) => {
      uses?.forEach(({ fatigue, yield: yields }, i) => {
        expect(fatigue).toBeCloseTo(wanted[i][s]?.fatigue ?? Number.NaN, 4);
        expect(yields).toBeCloseTo(wanted[i][s]?.yield ?? Number.NaN, 4);
      });
    });
  });

  it('names the worst shim of the working stack at every speed, worse at higher speed', () => {
    const [rebound, rest, slow, fast, faster] = points.map(({ life }) => life);
    for (const life of [rebound, rest, slow, fast, faster]) expect(life?.unknownShims).toBe(0);
    expect(rest?.fatigue.use).toBeLessThan(slow?.fatigue.use ?? 0);
    expect(slow?.fatigue.use).toBeLessThan(fast?.fatigue.use ?? 0);
    expect(fast?.yield.use).toBeLessThan(faster?.yield.use ?? 0);
    const { life, pressure_Pa } = curve.stacks.rebound;
    const uses = life ? usesAt(life, pressure_Pa, points[0].shimPressure_Pa) : [];
    expect(rebound?.fatigue).toEqual({ use: Math.max(...uses.map((use) => use?.fatigue ?? 0)), shim: 0 });
  });

  it('keeps the stress profiles out of the result', () => {
    for (const { points: lifts } of Object.values(curve.stacks)) {
      for (const lift of lifts) expect(lift).not.toHaveProperty('stress');
    }
  });

  it('warns of a set where the metal is weak, and of none where it is strong', () => {
    const of = (yield_Pa: number) => {
      const shims = damper.compression.stack.shims.map((s) => ({ ...s, strength: { yield_Pa } }));
      const [point] = forceCurve({ ...damper, compression: stackOf(shims) }, [1], {
        theory: 'large-deflection',
      }).points;
      return (point as ForcePoint).life;
    };
    expect(of(10e6)?.takesSet).toBe(true);
    expect(of(10e9)?.takesSet).toBe(false);
  });

  it('says nothing of metals whose strength is not known, and how many there are', () => {
    const brass = (s: ShimInput): ShimInput => ({ ...s, youngsModulus_Pa: 100e9 });
    const lifeWith = (shims: readonly ShimInput[]) => {
      const [point] = forceCurve({ ...damper, compression: stackOf(shims) }, [1], {
        theory: 'small-deflection',
      }).points;
      return (point as ForcePoint).life;
    };
    const [face, second, last] = damper.compression.stack.shims;
    expect(lifeWith([face, second, brass(last)])).toMatchObject({ unknownShims: 1 });
    expect(lifeWith([face, second, last].map(brass))).toBeUndefined();
  });
});

describe('uses between the pressures of a table', () => {
  const life = { shims: [[1, 3, 4].map((use) => ({ fatigue: use / 10, yield: use / 5 })), null] };
  const pressures = [0, 100, 300];

  it.each([
    [0, 0.1],
    [50, 0.2],
    [100, 0.3],
    [200, 0.35],
    [300, 0.4],
  ])('at %d Pa go straight: %d', (p, fatigue) => {
    const [known, unknown] = usesAt(life, pressures, p);
    expect(known?.fatigue).toBeCloseTo(fatigue, 12);
    expect(known?.yield).toBeCloseTo(2 * fatigue, 12);
    expect(unknown).toBeNull();
  });

  it('are those of the one pressure of a table of one', () => {
    const [only] = usesAt({ shims: [[{ fatigue: 0.1, yield: 0.2 }]] }, [0], 0);
    expect(only).toEqual({ fatigue: 0.1, yield: 0.2 });
  });

  it('give the worst shim of each limit, and a set only above the limit', () => {
    const use = (fatigue: number, yields: number) => ({ fatigue, yield: yields });
    expect(worstOf([use(0.5, 0.9), null, use(0.7, 0.2)])).toEqual({
      fatigue: { use: 0.7, shim: 2 },
      yield: { use: 0.9, shim: 0 },
      takesSet: false,
      unknownShims: 1,
    });
    expect(worstOf([use(0.1, 1)])?.takesSet).toBe(false);
    expect(worstOf([use(0.1, 1.001)])?.takesSet).toBe(true);
    expect(worstOf([null])).toBeUndefined();
  });
});
