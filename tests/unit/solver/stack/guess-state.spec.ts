import { describe, expect, it } from 'vitest';
import type { SavedState } from '../../../../src/solver/stack/follow-path.ts';
import { guessState } from '../../../../src/solver/stack/guess-state.ts';

const FLAT = { clamped: true, dish_m: 0 };

/** A state whose unknowns are given by the pressure. */
const state = (p: number, unknowns: readonly number[]): SavedState => ({
  p,
  hubRise_m: 0,
  x: [Float64Array.from(unknowns)],
  closed: new Uint8Array(0),
  force: new Float64Array(0),
});

/** Unknowns that go with 1, ∛p and its square: what a parabola in ∛p holds exactly. */
const parabola = (p: number): number[] => [3, 2 + Math.cbrt(p), 1 - 0.5 * Math.cbrt(p) + 0.01 * Math.cbrt(p) ** 2];
const line = (p: number): number[] => parabola(p).slice(0, 2);

/** Unknowns of a stack of one plate after the guess. */
function guess(plate: typeof FLAT, solved: readonly SavedState[], i: number, p: number): number[] {
  const x = Float64Array.from(solved[i].x[0], () => Number.NaN);
  guessState({ bodies: [{ x }], merged: [plate] }, solved, i, p);
  return [...x];
}

function expectClose(guessed: readonly number[], wanted: readonly number[]): void {
  expect(guessed).toHaveLength(wanted.length);
  wanted.forEach((value, i) => {
    expect(guessed[i]).toBeCloseTo(value, 9);
  });
}

describe('guess of a state from those solved', () => {
  const pressures = [0, 1e4, 8e4, 1e6];

  it.each([3e3, 2e4, 7e4, 9e5])('is exact at %d Pa, between solved ones, for a parabola in ∛p', (p) => {
    const solved = pressures.map((q) => state(q, parabola(q)));
    const below = pressures.filter((q) => q <= p).length - 1;
    expectClose(guess(FLAT, solved, below, p), parabola(p));
  });

  it('is exact beyond the last one for a line in ∛p, and goes nowhere far beyond it', () => {
    const solved = pressures.map((q) => state(q, line(q)));
    expectClose(guess(FLAT, solved, 3, 5e6), line(5e6));
    expectClose(guess(FLAT, solved, 3, 1e10), line(1e6));
  });

  it('is the state itself where that is solved or is the only one', () => {
    const solved = pressures.map((q) => state(q, parabola(q)));
    expectClose(guess(FLAT, solved, 2, 8e4), parabola(8e4));
    expectClose(guess(FLAT, [state(0, [7])], 0, 1e6), [7]);
  });

  it.each([
    ['a ring', { ...FLAT, clamped: false }],
    ['a coned shim', { ...FLAT, dish_m: 1e-4 }],
  ])('of %s stays between the two neighbours, and where it is beyond the last', (_, plate) => {
    const solved = pressures.map((q) => state(q, parabola(q)));
    const [lift] = guess(plate, [state(0, [0]), state(1e4, [1]), state(8e4, [-5])], 0, 3e3);
    expect(lift).toBeGreaterThan(0);
    expect(lift).toBeLessThan(1);
    expectClose(guess(plate, solved, 3, 5e6), parabola(1e6));
  });
});
