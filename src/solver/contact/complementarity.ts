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
import { factorDenseLdl, solveDenseLdl } from '../linalg/dense-ldl.ts';
import { type Compliance, columnOf } from './compliance.ts';
import { type ContactPairs, RIGID } from './contact-pairs.ts';

/** Block exchanges that may fail to lower the number of broken signs before single exchanges take over. */
const PATIENCE = 20;
/** Single exchanges allowed, as a multiple of the number of pairs. */
const EXCHANGE_LIMIT = 10;
/**
 * Share of each diagonal entry that is added to M against a change of force since the last call. It keeps M definite
 * where a plate is held between two rigid faces at one radius, and has no part in a state that no longer changes.
 */
const PROXIMAL_SHARE = 1e-9;

export interface ContactProblem {
  readonly pairs: ContactPairs;
  readonly compliances: readonly Compliance[];
  /** Gaps left without contact forces, length pairs [m]. */
  readonly freeGap: Float64Array;
  /** Forces, length pairs, the answer [N]. */
  readonly force: Float64Array;
  /** Forces of the call before. */
  readonly lastForce: Float64Array;
  /** 1 where a pair is closed; kept between calls as the warm start. */
  readonly closed: Uint8Array;
  /** Gaps with the contact forces, length pairs [m]. */
  readonly gap: Float64Array;
  readonly matrix: Float64Array;
  readonly rhs: Float64Array;
  readonly members: Int32Array;
  /** Lift of each plate's nodes by the contact forces [m]. */
  readonly lifts: readonly Float64Array[];
}

const NOTHING = new Float64Array(0);

export type ContactStatus = 'resolved' | 'contact-not-resolved' | 'singular';

export function createContactProblem(pairs: ContactPairs, compliances: readonly Compliance[]): ContactProblem {
  const m = pairs.size;
  return {
    pairs,
    compliances,
    freeGap: new Float64Array(m),
    force: new Float64Array(m),
    lastForce: new Float64Array(m),
    closed: new Uint8Array(m),
    gap: new Float64Array(m),
    matrix: new Float64Array(m * m),
    rhs: new Float64Array(m),
    members: new Int32Array(m),
    lifts: compliances.map(({ plate }) => new Float64Array(plate.nodes)),
  };
}

/**
 * Solves for `force`, `closed` and `gap` from `freeGap`.
 * @param gapTolerance_m a gap above minus this counts as not broken [m]
 * @param negativeModes of the plates' tangents when none of them is tied to another. Where there are any, the closed
 *   pairs must hold every one of them, which M of these pairs tells by having as many (Sylvester's law of inertia)
 * @returns 'contact-not-resolved' when the exchanges run out, 'singular' when M of the closed pairs is not definite or
 *   does not hold the negative modes
 */
export function solveContact(problem: ContactProblem, gapTolerance_m: number, negativeModes = 0): ContactStatus {
  const { pairs, closed, force, lastForce } = problem;
  lastForce.set(force);
  let fewest = pairs.size + 1;
  let patience = PATIENCE;
  // Where M is not definite nothing promises an end.
  const limit = negativeModes > 0 ? PATIENCE : EXCHANGE_LIMIT * (pairs.size + 1);
  for (let exchange = 0; exchange < limit; exchange++) {
    const held = solveClosedPairs(problem, negativeModes);
    if (held === undefined) return 'singular';
    const broken = countBroken(problem, gapTolerance_m);
    if (broken === 0) return held === negativeModes ? 'resolved' : 'singular';
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

/** Forces that close exactly the pairs of the set A, then all gaps. @returns the negative eigenvalues of M, if it has a factor */
function solveClosedPairs(problem: ContactProblem, negativeModes: number): number | undefined {
  const { pairs, closed, force, matrix, rhs, members } = problem;
  let n = 0;
  for (let c = 0; c < pairs.size; c++) {
    force[c] = 0;
    if (closed[c] === 1) members[n++] = c;
  }
  fillMatrix(problem, n);
  for (let i = 0; i < n; i++) {
    const c = members[i];
    const held = (matrix[i * n + i] * PROXIMAL_SHARE) / (1 + PROXIMAL_SHARE);
    rhs[i] = held * problem.lastForce[c] - problem.freeGap[c];
  }
  const negative = negativeModes > 0 ? factorDenseLdl(matrix, n) : factorCholesky(matrix, n) ? 0 : undefined;
  if (negative === undefined) return undefined;
  if (negativeModes > 0) solveDenseLdl(matrix, n, rhs);
  else solveCholesky(matrix, n, rhs);
  for (let i = 0; i < n; i++) force[members[i]] = rhs[i];
  liftByForces(problem, n);
  readGaps(problem);
  return negative;
}

/** Negative modes of the plates' tangents that the pairs that press hold, see docs/theory-waviness.md; undefined without a factor of M. */
export function countHeldModes(problem: ContactProblem): number | undefined {
  const { pairs, force, matrix, members } = problem;
  let n = 0;
  for (let c = 0; c < pairs.size; c++) if (force[c] > 0) members[n++] = c;
  fillMatrix(problem, n);
  return factorDenseLdl(matrix, n);
}

/** Lower triangle of M for the closed pairs: the change of one gap for a unit force in another. */
function fillMatrix({ pairs, compliances, matrix, members }: ContactProblem, n: number): void {
  const { belowNode, aboveNode, below, above } = pairs;
  for (let j = 0; j < n; j++) {
    const e = members[j];
    const up = above[e];
    const down = below[e];
    const upColumns = up === RIGID ? NOTHING : compliances[up].columns;
    const downColumns = down === RIGID ? NOTHING : compliances[down].columns;
    const upAt = up === RIGID ? 0 : columnOf(compliances[up], aboveNode[e]);
    const downAt = down === RIGID ? 0 : columnOf(compliances[down], belowNode[e]);
    for (let i = j; i < n; i++) {
      const c = members[i];
      let sum = 0;
      if (up !== RIGID) {
        if (above[c] === up) sum += upColumns[upAt + aboveNode[c]];
        else if (below[c] === up) sum -= upColumns[upAt + belowNode[c]];
      }
      if (down !== RIGID) {
        if (below[c] === down) sum += downColumns[downAt + belowNode[c]];
        else if (above[c] === down) sum -= downColumns[downAt + aboveNode[c]];
      }
      matrix[i * n + j] = i === j ? sum * (1 + PROXIMAL_SHARE) : sum;
    }
  }
}

/** Adds up what the contact forces lift each plate. */
function liftByForces({ pairs, compliances, force, members, lifts }: ContactProblem, n: number): void {
  const { belowNode, aboveNode, below, above } = pairs;
  for (const lift of lifts) lift.fill(0);
  for (let i = 0; i < n; i++) {
    const c = members[i];
    if (above[c] !== RIGID) addColumn(compliances[above[c]], aboveNode[c], force[c], lifts[above[c]]);
    if (below[c] !== RIGID) addColumn(compliances[below[c]], belowNode[c], -force[c], lifts[below[c]]);
  }
}

function addColumn(compliance: Compliance, j: number, force: number, lift: Float64Array): void {
  const { columns } = compliance;
  const at = columnOf(compliance, j);
  for (let i = 0; i < lift.length; i++) lift[i] += force * columns[at + i];
}

function readGaps({ pairs, closed, freeGap, gap, lifts }: ContactProblem): void {
  const { belowNode, aboveNode, below, above } = pairs;
  for (let c = 0; c < pairs.size; c++) {
    let g = freeGap[c];
    if (above[c] !== RIGID) g += lifts[above[c]][aboveNode[c]];
    if (below[c] !== RIGID) g -= lifts[below[c]][belowNode[c]];
    gap[c] = closed[c] === 1 ? 0 : g;
  }
}
