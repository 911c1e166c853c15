/**
 * Newton's method for one load: linearise the plates, solve the contact of the linearised stack, step, repeat.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | f, p F, λ | N | internal force, pressure load, contact forces; balance is p F + Bᵀλ - f = 0 |
 * | y, dx | m | step without and with contact forces |
 * | Π | J | strain energy less the work of the pressure; the step must lower it |
 * | α | - | share of the step taken |
 *
 * The contact constraints are linear in w, so a state that keeps them keeps them for every share of a step, and the
 * energy decides α alone. Where the exact tangent is indefinite a stiffened one gives a direction downhill.
 * Source: sequential quadratic programming, Nocedal & Wright, Numerical Optimization, 2nd ed. 2006, chapter 18.
 */
import { type ContactStatus, solveContact } from '../contact/complementarity.ts';
import { forgetColumns } from '../contact/compliance.ts';
import { RIGID } from '../contact/contact-pairs.ts';
import { solveBandedLdl } from '../linalg/banded-ldl.ts';
import type { SolveStatus } from '../types.ts';
import { type BalancedSystem, type Body, gapOf } from './balanced-system.ts';
import { factorBody, factorExact } from './factor-bodies.ts';

/** Largest out-of-balance force of a solved state, as a share of the largest load or contact force. */
export const RESIDUAL_TOLERANCE = 1e-7;
/** Penetration that counts as none, as a share of the thinnest shim. */
export const GAP_TOLERANCE = 1e-6;
export const ITERATION_LIMIT = 40;
/** Armijo's share of the predicted energy loss. */
const SUFFICIENT = 1e-4;
const SHORTEST_STEP = 1 / 1024;
/** A step under this share of the state is taken whole: Newton converges there, and energies differ by rounding only. */
const NEAR = 1e-2;

export interface Equilibrium {
  readonly status: SolveStatus;
  readonly iterations: number;
  /** Largest out-of-balance force over the largest load or contact force [-]. */
  readonly residual: number;
}

/** Brings the state in `system` to balance under pressure p with the share `ramp` of every interference enforced. */
export function equilibrate(system: BalancedSystem, p: number, ramp: number): Equilibrium {
  const gapTolerance = GAP_TOLERANCE * system.thinnest_m;
  let residual = Number.POSITIVE_INFINITY;
  let correction = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration <= ITERATION_LIMIT; iteration++) {
    for (const body of system.bodies) body.assembleInternal();
    if (iteration > 0) {
      residual = outOfBalance(system, p);
      const balanced =
        residual <= RESIDUAL_TOLERANCE || (correction <= system.noise.correction && residual <= system.noise.residual);
      if (balanced && worstGap(system, ramp) >= -gapTolerance) {
        return { status: 'converged', iterations: iteration, residual };
      }
    }
    const feasible = worstGap(system, ramp) >= -gapTolerance;
    const contact = solveStep(system, p, ramp, gapTolerance);
    if (contact !== 'resolved') return { status: contact, iterations: iteration, residual };
    contactStep(system, p);
    correction = relativeStep(system);
    const alpha = !system.isLinear && correction > NEAR && feasible ? shareOfStep(system, p) : 1;
    for (const [k, body] of system.bodies.entries()) addScaled(body.x, system.steps[k], alpha);
  }
  return { status: 'not-converged', iterations: ITERATION_LIMIT, residual };
}

/**
 * Forces of contact at the end of a step. The exact tangents serve where contact holds all their negative modes, as in
 * a pack of thin shims each of which would ruffle alone; where it does not, stiffened ones do.
 */
function solveStep(system: BalancedSystem, p: number, ramp: number, gapTolerance: number): ContactStatus {
  const { bodies, contact } = system;
  const negativeModes = system.isLinear && system.factored ? 0 : factorExact(system);
  if (negativeModes === 0) {
    freeStep(system, p, ramp);
    return solveContact(contact, gapTolerance);
  }
  if (negativeModes !== undefined) {
    const [closed, force] = [contact.closed.slice(), contact.force.slice()];
    freeStep(system, p, ramp);
    if (solveContact(contact, gapTolerance, negativeModes) === 'resolved') return 'resolved';
    contact.closed.set(closed);
    contact.force.set(force);
  }
  for (const [k, body] of bodies.entries()) {
    if (!factorBody(body)) return 'singular';
    forgetColumns(system.compliances[k]);
  }
  freeStep(system, p, ramp);
  return solveContact(contact, gapTolerance);
}

/** Step y of each plate alone, and the gaps that it would leave. */
function freeStep(system: BalancedSystem, p: number, ramp: number): void {
  const { pairs, contact, steps } = system;
  for (const [k, body] of system.bodies.entries()) {
    loadLessInternal(body, p, steps[k]);
    solveBandedLdl(body.band, body.size, body.b, steps[k], 0, body.d);
  }
  for (let c = 0; c < pairs.size; c++) contact.freeGap[c] = gapOf(system, c, ramp) + gapChange(system, c);
}

function gapChange({ pairs, bodies, steps }: BalancedSystem, c: number): number {
  const above = pairs.above[c];
  const below = pairs.below[c];
  const up = above === RIGID ? 0 : steps[above][pairs.aboveNode[c] * bodies[above].d];
  const down = below === RIGID ? 0 : steps[below][pairs.belowNode[c] * bodies[below].d];
  return up - down;
}

/** Whole step with the contact forces just found; for small deflection the sum of columns, for large one more solve. */
function contactStep(system: BalancedSystem, p: number): void {
  const { bodies, steps } = system;
  for (const [k, body] of bodies.entries()) loadLessInternal(body, p, steps[k]);
  addContactForces(system, steps);
  for (const [k, body] of bodies.entries()) {
    for (const f of body.fixed) steps[k][f] = 0;
    solveBandedLdl(body.band, body.size, body.b, steps[k], 0, body.d);
  }
}

function addContactForces({ pairs, contact, bodies }: BalancedSystem, target: readonly Float64Array[]): void {
  for (let c = 0; c < pairs.size; c++) {
    const force = contact.force[c];
    if (force === 0) continue;
    const above = pairs.above[c];
    const below = pairs.below[c];
    if (above !== RIGID) target[above][pairs.aboveNode[c] * bodies[above].d] += force;
    if (below !== RIGID) target[below][pairs.belowNode[c] * bodies[below].d] -= force;
  }
}

/** out = p F - f with the held unknowns at nothing. */
function loadLessInternal(body: Body, p: number, out: Float64Array): void {
  const { unitLoad, internal, size } = body;
  for (let i = 0; i < size; i++) out[i] = p * unitLoad[i] - internal[i];
  for (const f of body.fixed) out[f] = 0;
}

/** Largest component of p F + Bᵀλ - f over the largest of p F and λ; moments count per span of the mesh. */
function outOfBalance(system: BalancedSystem, p: number): number {
  const { bodies, steps, contact, span_m } = system;
  let worst = 0;
  let scale = 0;
  for (const [k, body] of bodies.entries()) loadLessInternal(body, p, steps[k]);
  addContactForces(system, steps);
  for (const [k, body] of bodies.entries()) {
    for (const f of body.fixed) steps[k][f] = 0;
    for (let i = 0; i < body.size; i++) {
      const lever = body.isTurn[i] === 0 ? 1 : span_m;
      worst = Math.max(worst, Math.abs(steps[k][i]) / lever);
      scale = Math.max(scale, Math.abs(p * body.unitLoad[i]) / lever);
    }
  }
  for (const force of contact.force) scale = Math.max(scale, force);
  return scale === 0 ? worst : worst / scale;
}

function worstGap(system: BalancedSystem, ramp: number): number {
  let worst = Number.POSITIVE_INFINITY;
  for (let c = 0; c < system.pairs.size; c++) worst = Math.min(worst, gapOf(system, c, ramp));
  return worst;
}

/** Halves the step until the energy falls by a fair share of what its slope promises. */
function shareOfStep(system: BalancedSystem, p: number): number {
  const slope = energySlope(system, p);
  const start = potential(system, p);
  let alpha = 1;
  let taken = 0;
  while (alpha > SHORTEST_STEP) {
    moveBy(system, alpha - taken);
    taken = alpha;
    if (potential(system, p) <= start + SUFFICIENT * alpha * slope) break;
    alpha /= 2;
  }
  moveBy(system, -taken);
  return alpha;
}

/** Largest change of a lift over the largest lift [-]. */
function relativeStep({ bodies, steps }: BalancedSystem): number {
  let step = 0;
  let lift = 0;
  for (const [k, { x, d, size }] of bodies.entries()) {
    for (let i = 0; i < size; i += d) {
      step = Math.max(step, Math.abs(steps[k][i]));
      lift = Math.max(lift, Math.abs(x[i]));
    }
  }
  return lift === 0 ? Number.POSITIVE_INFINITY : step / lift;
}

function moveBy({ bodies, steps }: BalancedSystem, alpha: number): void {
  for (const [k, body] of bodies.entries()) addScaled(body.x, steps[k], alpha);
}

function energySlope({ bodies, steps }: BalancedSystem, p: number): number {
  let slope = 0;
  for (const [k, { internal, unitLoad, size }] of bodies.entries()) {
    for (let i = 0; i < size; i++) slope += (internal[i] - p * unitLoad[i]) * steps[k][i];
  }
  return slope;
}

function potential({ bodies }: BalancedSystem, p: number): number {
  let sum = 0;
  for (const body of bodies) {
    sum += body.energy();
    for (let i = 0; i < body.size; i++) sum -= p * body.unitLoad[i] * body.x[i];
  }
  return sum;
}

function addScaled(x: Float64Array, dx: Float64Array, alpha: number): void {
  for (let i = 0; i < x.length; i++) x[i] += alpha * dx[i];
}
