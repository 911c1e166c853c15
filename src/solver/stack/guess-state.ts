/**
 * Where a stack will be at a pressure, judged by the states that were solved at others.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | φ | Pa^⅓ | ∛p, with which the lift of a far bent plate goes |
 *
 * Between solved states every unknown lies on the parabola in φ through the two round p and the next nearest one; beyond
 * the last of them, but not far, on the line through the last two (Lagrange's form of a polynomial through points).
 * A ring that nothing clamps may lie anywhere, and a coned shim may snap. A stack with one of these is guessed between
 * its two neighbours only, where all gaps stay open since they are linear in the unknowns, or else where it is.
 */
import type { Body } from './balanced-system.ts';
import type { SavedState } from './follow-path.ts';
import type { MergedPlate } from './merge-neighbours.ts';

/** A line is followed up to this multiple of the last pressure. */
const FARTHEST = 10;

/** What a guess asks of a stack system. */
interface Guessed {
  readonly bodies: readonly Pick<Body, 'x'>[];
  readonly merged: readonly Pick<MergedPlate, 'clamped' | 'dish_m'>[];
}

/**
 * Puts the plates there; surfaces may pass through one another.
 * @param solved states in order of pressure @param i the one next below p, or the least
 */
export function guessState({ bodies, merged }: Guessed, solved: readonly SavedState[], i: number, p: number): void {
  const steady = merged.every(({ clamped, dish_m }) => clamped && dish_m === 0);
  const known = steady ? neighbours(solved, i, p) : solved.slice(i, solved[i].p < p ? i + 2 : i + 1);
  const weights = lagrangeWeights(
    known.map((state) => Math.cbrt(state.p)),
    Math.cbrt(p),
  );
  for (const [k, { x }] of bodies.entries()) {
    x.fill(0);
    for (const [s, state] of known.entries()) for (let j = 0; j < x.length; j++) x[j] += weights[s] * state.x[k][j];
  }
}

/** The states that count for a guess at p, the i-th being next below it. */
function neighbours(solved: readonly SavedState[], i: number, p: number): readonly SavedState[] {
  if (solved[i].p === p) return [solved[i]];
  if (i === solved.length - 1) return solved.slice(p <= FARTHEST * solved[i].p ? -2 : -1);
  const [before, after] = [solved[i - 1], solved[i + 2]];
  const takesAfter = after !== undefined && (before === undefined || p * p > before.p * after.p);
  return solved.slice(takesAfter ? i : Math.max(0, i - 1), takesAfter ? i + 3 : i + 2);
}

const lagrangeWeights = (nodes: readonly number[], at: number): number[] =>
  nodes.map((node) => nodes.reduce((w, other) => (other === node ? w : (w * (at - other)) / (node - other)), 1));
