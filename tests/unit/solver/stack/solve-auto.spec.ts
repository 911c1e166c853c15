import { describe, expect, it } from 'vitest';
import { failedLift } from '../../../../src/solver/stack/failed-lift.ts';
import { createLoadedPeriodicStack } from '../../../../src/solver/stack/periodic/loaded-periodic-stack.ts';
import { solveAuto } from '../../../../src/solver/stack/solve-auto.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import { findWavinessOnset } from '../../../../src/solver/stack/waviness/find-onset.ts';
import type { LiftOptions, PortsUnderShims, StackInput, Theory } from '../../../../src/solver/types.ts';

/** One shim of 24 × 0.15 mm on a clamp of 10 mm. */
const STACK: StackInput = {
  clampRadius_m: 5e-3,
  shims: [{ outerRadius_m: 12e-3, thickness_m: 0.15e-3, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 }],
  pressureZone: { innerRadius_m: 6.6e-3, outerRadius_m: 11.04e-3 },
};
const ported = (ports: PortsUnderShims): StackInput => ({ ...STACK, ports });

const onset = findWavinessOnset(STACK, 1e6);
if (onset.status !== 'found') throw new Error(`the stack was to ruffle: ${onset.status}`);
const below = [0.3, 0.6, 0.95].map((share) => share * onset.pressure_Pa);
const across = [...below, 1.5 * onset.pressure_Pa];

const by = (theory: Theory | 'auto', stack: StackInput, pressures_Pa: readonly number[], more?: Partial<LiftOptions>) =>
  solveLift(stack, pressures_Pa, { ...more, theory });

describe('the theory that a stack calls for', () => {
  it('is the round one under a groove up to the onset of waves, with its very numbers', () => {
    const found = by('auto', STACK, below, { waviness: true });
    expect(found).toEqual(by('large-deflection', STACK, below, { waviness: true }));
    expect(found.theory).toBe('large-deflection');
  });

  it('follows the waves from the first pressure on where the last lies beyond the onset', () => {
    const found = by('auto', STACK, across, { waviness: true });
    expect(found).toEqual(by('port-periodic', STACK, across));
    expect(found.theory).toBe('port-periodic');
  });

  it('follows few ports at any pressure, and spreads many evenly', () => {
    const few = ported({ count: 3, coveredFraction: 0.7 });
    expect(by('auto', few, [1e3])).toEqual(by('port-periodic', few, [1e3]));
    const many = ported({ count: 12, coveredFraction: 0.7 });
    expect(by('auto', many, [1e3])).toEqual(by('large-deflection', many, [1e3]));
  });

  it('answers in the order that was asked for', () => {
    const falling = [...across].reverse();
    expect(by('auto', STACK, falling).points.map(({ pressure_Pa }) => pressure_Pa)).toEqual(falling);
  });

  it('stays round where a pressure has no state of either kind', () => {
    const beyond = [below[0], 1e205];
    expect(by('auto', STACK, beyond)).toEqual(by('large-deflection', STACK, beyond));
  });

  it('has nothing to choose without a pressure', () => {
    expect(by('auto', STACK, [])).toEqual({ theory: 'large-deflection', points: [] });
  });
});

describe('waves that cannot be followed', () => {
  const refused = { status: 'not-converged', iterations: 7, residual: 0.5, reason: 'asked to fail' } as const;
  const failingFrom =
    (p_Pa: number): typeof createLoadedPeriodicStack =>
    (stack, options) => {
      const loaded = createLoadedPeriodicStack(stack, options);
      return { at: (p) => (p < p_Pa ? loaded.at(p) : failedLift(p, refused)) };
    };

  it('leave the whole round curve, its onset marked, with a status and a reason', () => {
    const found = solveAuto(STACK, across, { waviness: true }, failingFrom(across[3]));
    const { points } = by('large-deflection', STACK, across, { waviness: true });
    expect(found).toMatchObject({ theory: 'large-deflection', points });
    expect(found.fallback?.status).toBe('not-converged');
    expect(found.fallback?.reason).toMatch(/^at 0\.2\d+ MPa: balance left 5\.0e-1 of the load/);
    const last = found.points[3];
    expect(last.status === 'converged' && last.waviness?.margin).toBeLessThan(0);
  });

  it('do not matter where nobody asked for them', () => {
    const found = solveAuto(STACK, across, {}, failingFrom(2 * across[3]));
    expect(found.theory).toBe('port-periodic');
    expect(found.fallback).toBeUndefined();
  });

  it('take the round states that are there, and solve none of them again', () => {
    const given: (object | undefined)[] = [];
    const solved = solveAuto(STACK, across, {}, (stack, options) => {
      given.push(options.round);
      return createLoadedPeriodicStack(stack, options);
    });
    const [round] = given as { at: (p: number) => object }[];
    // The state below the onset is the one that was solved before, with nothing but its waves added.
    expect(solved.points[0]).toMatchObject(round.at(across[0]));
    expect(round.at(across[0])).toBe(round.at(across[0]));
  });
});
