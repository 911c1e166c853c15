/**
 * Unilateral contact without friction: find forces λ >= 0 with gaps g = q + M λ >= 0 and λ·g = 0.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | q | m | gaps that the step would leave without contact forces |
 * | M | m/N | compliance of the pairs, B K⁻¹ Bᵀ, symmetric positive definite |
 * | λ | N | force of each pair, spread over its circle |
 * | A | - | set of closed pairs |
 *
 * Block principal pivoting: exchange every pair that breaks a sign; while that lowers the number of broken signs it is
 * fast, and when it stops doing so single exchanges by least index follow, which end for every P-matrix.
 * Source: Júdice & Pires, Computers & Operations Research 21 (1994) 587-596 (from memory); Murty, Linear Algebra and
 * its Applications 8 (1974) 53-66 for the single exchange (from memory).
 */
import { factorCholesky, solveCholesky } from '../linalg/dense-cholesky.ts';
import { type Compliance, columnOf } from './compliance.ts';
import { type ContactPairs, RIGID } from './contact-pairs.ts';

/** Block exchanges that may fail to lower the number of broken signs before single exchanges take over. */
const PATIENCE = 4;
/** Single exchanges allowed, as a multiple of the number of pairs. */
const EXCHANGE_LIMIT = 60;
/**
 * Added to each diagonal entry of M: the surfaces' own compliance, a billionth of that of the plates. It keeps M
 * definite where a plate is held between two rigid faces at one radius.
 */
const SURFACE_COMPLIANCE = 1e-9;

export interface ContactProblem {
  readonly pairs: ContactPairs;
  readonly compliances: readonly Compliance[];
  /** Gaps left without contact forces, length pairs [m]. */
  readonly freeGap: Float64Array;
  /** Forces, length pairs, the answer [N]. */
  readonly force: Float64Array;
  /** 1 where a pair is closed; kept between calls as the warm start. */
  readonly closed: Uint8Array;
  /** Gaps with the contact forces, length pairs [m]. */
  readonly gap: Float64Array;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  readonly members: Int32Array;
}

export type ContactStatus = 'resolved' | 'contact-not-resolved' | 'singular';

export function createContactProblem(pairs: ContactPairs, compliances: readonly Compliance[]): ContactProblem {
  const m = pairs.size;
  return {
    pairs,
    compliances,
    freeGap: new Float64Array(m),
    force: new Float64Array(m),
    closed: new Uint8Array(m),
    gap: new Float64Array(m),
    matrix: new Float64Array(m * m),
    rhs: new Float64Array(m),
    members: new Int32Array(m),
  };
}

/**
 * Solves for `force`, `closed` and `gap` from `freeGap`.
 * @param gapTolerance_m a gap above minus this counts as not broken [m]
 * @returns 'contact-not-resolved' when the exchanges run out, 'singular' when M of the closed pairs is not definite
 */
export function solveContact(problem: ContactProblem, gapTolerance_m: number): ContactStatus {
  const { pairs, closed } = problem;
  let fewest = pairs.size + 1;
  let patience = PATIENCE;
  for (let exchange = 0; exchange < EXCHANGE_LIMIT * (pairs.size + 1); exchange++) {
    if (!solveClosedPairs(problem)) return 'singular';
    const broken = countBroken(problem, gapTolerance_m);
    if (broken === 0) return 'resolved';
    if (broken < fewest) {
      fewest = broken;
      patience = PATIENCE;
    } else if (patience > 0) patience--;
    const single = broken >= fewest && patience === 0;
    for (let c = pairs.size - 1; c >= 0; c--) {
      if (!isBroken(problem, c, gapTolerance_m)) continue;
      closed[c] = 1 - closed[c];
      if (single) break;
    }
  }
  return 'contact-not-resolved';
}

function isBroken({ closed, force, gap }: ContactProblem, c: number, gapTolerance: number): boolean {
  return closed[c] === 1 ? force[c] < 0 : gap[c] < -gapTolerance;
}

function countBroken(problem: ContactProblem, gapTolerance: number): number {
  let broken = 0;
  for (let c = 0; c < problem.pairs.size; c++) if (isBroken(problem, c, gapTolerance)) broken++;
  return broken;
}

/** Forces that close exactly the pairs of the set A, then all gaps. */
function solveClosedPairs(problem: ContactProblem): boolean {
  const { pairs, closed, force, gap, freeGap, matrix, rhs, members } = problem;
  let n = 0;
  for (let c = 0; c < pairs.size; c++) {
    force[c] = 0;
    if (closed[c] === 1) members[n++] = c;
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) matrix[i * n + j] = pairCompliance(problem, members[i], members[j]);
    matrix[i * n + i] *= 1 + SURFACE_COMPLIANCE;
    rhs[i] = -freeGap[members[i]];
  }
  if (!factorCholesky(matrix, n)) return false;
  solveCholesky(matrix, n, rhs);
  for (let i = 0; i < n; i++) force[members[i]] = rhs[i];
  for (let c = 0; c < pairs.size; c++) {
    let g = freeGap[c];
    if (closed[c] === 0) for (let j = 0; j < n; j++) g += pairCompliance(problem, c, members[j]) * rhs[j];
    gap[c] = closed[c] === 1 ? 0 : g;
  }
  return true;
}

/** M entry: change of the gap of pair c for a unit force in pair e. */
function pairCompliance(problem: ContactProblem, c: number, e: number): number {
  const { pairs } = problem;
  const { node, below, above } = pairs;
  let sum = 0;
  if (above[e] !== RIGID) {
    if (above[c] === above[e]) sum += entry(problem, above[e], node[c], node[e]);
    else if (below[c] === above[e]) sum -= entry(problem, above[e], node[c], node[e]);
  }
  if (below[e] !== RIGID) {
    if (below[c] === below[e]) sum += entry(problem, below[e], node[c], node[e]);
    else if (above[c] === below[e]) sum -= entry(problem, below[e], node[c], node[e]);
  }
  return sum;
}

function entry(problem: ContactProblem, plate: number, i: number, j: number): number {
  const compliance = problem.compliances[plate];
  return compliance.columns[columnOf(compliance, j) + i];
}
