import { describe, expect, it } from 'vitest';
import { createLoadedStack } from '../../../../src/solver/stack/loaded-stack.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { LiftPoint, Theory } from '../../../../src/solver/types.ts';
import { InputError } from '../../../../src/units/fault.ts';
import { SEAT, stackOf, steel } from './steel.ts';

const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];
const staged = stackOf([steel(30, 0.15), steel(30, 0.15), steel(16, 0.1), steel(28, 0.2)], {
  seat: { ...SEAT, height_m: 0.08e-3 },
});

const liftOf = (point: LiftPoint) => {
  if (point.status !== 'converged') throw new Error(point.reason);
  return point.faceEdgeLift_m;
};

describe.each(THEORIES)('%s: a list of pressures', (theory) => {
  it('comes back in the order asked for, each as if asked for alone', () => {
    const pressures = [4e5, 0, 1e5, 4e5, 2e5];
    const { points, theory: said } = solveLift(staged, pressures, { theory });
    expect(said).toBe(theory);
    expect(points.map(({ pressure_Pa }) => pressure_Pa)).toEqual(pressures);
    for (const [i, p] of pressures.entries()) {
      const alone = liftOf(solveLift(staged, [p], { theory }).points[0]);
      expect(Math.abs(liftOf(points[i]) / alone - 1)).toBeLessThan(1e-6);
    }
    expect(Math.abs(liftOf(points[0]) / liftOf(points[3]) - 1)).toBeLessThan(1e-8);
  });

  it('may be empty', () => {
    expect(solveLift(staged, [], { theory }).points).toEqual([]);
  });

  it('raises the preload first: without pressure the shims already rest on the high seat', () => {
    const [point] = solveLift(staged, [0], { theory }).points;
    if (point.status !== 'converged') throw new Error(point.reason);
    expect(point.seatForce_N).toBeGreaterThan(0);
    expect(point.seatOpening_m).toBeLessThan(1e-10);
    expect(point.faceEdgeLift_m).toBeGreaterThan(0.08e-3);
    expect(Math.abs(point.clampForce_N / point.seatForce_N - 1)).toBeLessThan(1e-6);
  });

  it('says at every point why the stack itself cannot be solved, and gives no numbers', () => {
    const { points } = solveLift(stackOf([steel(30, 1e-117)]), [2e5, 1e5], { theory });
    expect(points.map(({ status, pressure_Pa }) => [status, pressure_Pa])).toEqual([
      ['singular', 2e5],
      ['singular', 1e5],
    ]);
    for (const point of points) {
      expect(point).toMatchObject({ reason: expect.stringContaining('could not be factored') });
      expect(point).not.toHaveProperty('faceEdgeLift_m');
    }
  });

  it('follows a cone that snaps through in halved steps, down to a lift past flat', () => {
    const coned = stackOf([steel(30, 0.1, { dish_m: -0.6e-3 })]);
    const pressures = Array.from({ length: 12 }, (_, i) => 1e4 * (i + 1));
    const points = solveLift(coned, pressures, { theory }).points;
    expect(points.map(({ status }) => status)).toEqual(pressures.map(() => 'converged'));
    expect(liftOf(points[0])).toBeLessThan(0);
    expect(liftOf(points[11])).toBeGreaterThan(0);
  });
});

describe('large-deflection: one stack kept ready', () => {
  it('goes on after a point that failed, and is none the worse for it', () => {
    const session = createLoadedStack(staged, { theory: 'large-deflection' });
    const first = liftOf(session.at(1e5));
    const failed = session.at(1e305);
    expect(failed.status).not.toBe('converged');
    expect(failed.pressure_Pa).toBe(1e305);
    expect(Math.abs(liftOf(session.at(1e5)) / first - 1)).toBeLessThan(1e-7);
    const fresh = liftOf(solveLift(staged, [3e5], { theory: 'large-deflection' }).points[0]);
    expect(Math.abs(liftOf(session.at(3e5)) / fresh - 1)).toBeLessThan(1e-6);
  });
});

describe('a request is refused', () => {
  it.each([
    [-1, 1],
    [Number.NaN, 1],
    [Number.POSITIVE_INFINITY, 1],
  ])('with a pressure of %s', (p, i) => {
    try {
      solveLift(staged, [1e5, p], { theory: 'small-deflection' });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      expect(error.fault).toMatchObject({ code: 'pressure.range', path: `pressures_Pa[${i}]`, unit: 'Pa' });
      return;
    }
    throw new Error('not refused');
  });

  it('when seat and backing plate leave the shims no room', () => {
    const squeezed = { ...staged, backingPlate: { gap_m: 0.02e-3 }, shims: [steel(30, 0.15)] };
    expect(() => solveLift(squeezed, [1e5], { theory: 'small-deflection' })).toThrow(
      expect.objectContaining({
        fault: expect.objectContaining({ code: 'stack.no-room', path: 'backingPlate.gap_m' }),
      }),
    );
  });
});
