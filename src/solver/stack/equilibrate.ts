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
 * energy decides α alone. Where the exact tangent is indefinite the stiffened one gives a direction downhill.
 * Source: sequential quadratic programming, Nocedal & Wright, Numerical Optimization, 2nd ed. 2006, chapter 18.
 */
import { solveContact } from '../contact/complementarity.ts';
import { forgetColumns } from '../contact/compliance.ts';
import { RIGID } from '../contact/contact-pairs.ts';
import { factorBandedLdl, solveBandedLdl } from '../linalg/banded-ldl.ts';
import { assembleBand, assembleInternal, strainEnergy } from '../plate/assemble.ts';
import type { Plate } from '../plate/plate.ts';
import type { SolveStatus } from '../types.ts';
import { gapOf, type StackSystem } from './stack-system.ts';

/** Largest out-of-balance force of a solved state, as a share of the largest load or contact force. */
export const RESIDUAL_TOLERANCE = 1e-7;
/**
 * A last correction below this share of the lift also ends the iteration: in fine meshes rounding alone leaves an
 * out-of-balance force over the tolerance, one that moves nothing.
 */
export const CORRECTION_TOLERANCE = 1e-9;
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
export function equilibrate(system: StackSystem, p: number, ramp: number): Equilibrium {
  const gapTolerance = GAP_TOLERANCE * thinnest(system);
  let residual = Number.POSITIVE_INFINITY;
  let correction = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration <= ITERATION_LIMIT; iteration++) {
    for (const plate of system.plates) assembleInternal(plate);
    if (iteration > 0) {
      residual = outOfBalance(system, p);
      const balanced = residual <= RESIDUAL_TOLERANCE || correction <= CORRECTION_TOLERANCE;
      if (balanced && worstGap(system, ramp) >= -gapTolerance) {
        return { status: 'converged', iterations: iteration, residual };
      }
    }
    const keep = system.theory === 'small-deflection' && system.factored;
    if (!keep && !factorPlates(system)) return { status: 'singular', iterations: iteration, residual };
    const feasible = worstGap(system, ramp) >= -gapTolerance;
    freeStep(system, p, ramp);
    const contact = solveContact(system.contact, gapTolerance);
    if (contact !== 'resolved') return { status: contact, iterations: iteration, residual };
    contactStep(system, p);
    correction = relativeStep(system);
    const alpha = system.theory === 'large-deflection' && correction > NEAR && feasible ? shareOfStep(system, p) : 1;
    for (const [k, plate] of system.plates.entries()) addScaled(plate.x, system.steps[k], alpha);
  }
  return { status: 'not-converged', iterations: ITERATION_LIMIT, residual };
}

function thinnest({ stack }: StackSystem): number {
  return stack.shims.reduce((least, s) => Math.min(least, s.thickness_m), Number.POSITIVE_INFINITY);
}

function factorPlates(system: StackSystem): boolean {
  for (const [k, plate] of system.plates.entries()) {
    const { size, b, d, band } = plate;
    assembleBand(plate, 'exact');
    let factor = factorBandedLdl(band, size, b, d);
    if (factor.status === 'singular' || factor.negativePivots > 0) {
      assembleBand(plate, 'stiffened');
      factor = factorBandedLdl(band, size, b, d);
    }
    if (factor.status === 'singular') return false;
    forgetColumns(system.compliances[k]);
  }
  system.factored = true;
  return true;
}

/** Step y of each plate alone, and the gaps that it would leave. */
function freeStep(system: StackSystem, p: number, ramp: number): void {
  const { pairs, contact, steps } = system;
  for (const [k, plate] of system.plates.entries()) {
    loadLessInternal(plate, p, steps[k]);
    solveBandedLdl(plate.band, plate.size, plate.b, steps[k], 0, plate.d);
  }
  for (let c = 0; c < pairs.size; c++) contact.freeGap[c] = gapOf(system, c, ramp) + gapChange(system, c);
}

function gapChange({ pairs, plates, steps }: StackSystem, c: number): number {
  const above = pairs.above[c];
  const below = pairs.below[c];
  const up = above === RIGID ? 0 : steps[above][pairs.aboveNode[c] * plates[above].d];
  const down = below === RIGID ? 0 : steps[below][pairs.belowNode[c] * plates[below].d];
  return up - down;
}

/** Whole step with the contact forces just found; for small deflection the sum of columns, for large one more solve. */
function contactStep(system: StackSystem, p: number): void {
  const { plates, steps } = system;
  for (const [k, plate] of plates.entries()) loadLessInternal(plate, p, steps[k]);
  addContactForces(system, steps);
  for (const [k, plate] of plates.entries()) {
    for (const f of plate.fixed) steps[k][f] = 0;
    solveBandedLdl(plate.band, plate.size, plate.b, steps[k], 0, plate.d);
  }
}

function addContactForces({ pairs, contact, plates }: StackSystem, target: readonly Float64Array[]): void {
  for (let c = 0; c < pairs.size; c++) {
    const force = contact.force[c];
    if (force === 0) continue;
    const above = pairs.above[c];
    const below = pairs.below[c];
    if (above !== RIGID) target[above][pairs.aboveNode[c] * plates[above].d] += force;
    if (below !== RIGID) target[below][pairs.belowNode[c] * plates[below].d] -= force;
  }
}

/** out = p F - f with the held unknowns at nothing. */
function loadLessInternal(plate: Plate, p: number, out: Float64Array): void {
  const { unitLoad, internal, size } = plate;
  for (let i = 0; i < size; i++) out[i] = p * unitLoad[i] - internal[i];
  for (const f of plate.fixed) out[f] = 0;
}

/** Largest component of p F + Bᵀλ - f over the largest of p F and λ; moments count per span of the mesh. */
function outOfBalance(system: StackSystem, p: number): number {
  const { plates, steps, contact, tables } = system;
  const r = tables.radius_m;
  const span = r[r.length - 1] - r[0];
  let worst = 0;
  let scale = 0;
  for (const [k, plate] of plates.entries()) loadLessInternal(plate, p, steps[k]);
  addContactForces(system, steps);
  for (const [k, plate] of plates.entries()) {
    for (const f of plate.fixed) steps[k][f] = 0;
    for (let i = 0; i < plate.size; i++) {
      const lever = i % 2 === 0 ? 1 : span;
      worst = Math.max(worst, Math.abs(steps[k][i]) / lever);
      scale = Math.max(scale, Math.abs(p * plate.unitLoad[i]) / lever);
    }
  }
  for (const force of contact.force) scale = Math.max(scale, force);
  return scale === 0 ? worst : worst / scale;
}

function worstGap(system: StackSystem, ramp: number): number {
  let worst = Number.POSITIVE_INFINITY;
  for (let c = 0; c < system.pairs.size; c++) worst = Math.min(worst, gapOf(system, c, ramp));
  return worst;
}

/** Halves the step until the energy falls by a fair share of what its slope promises. */
function shareOfStep(system: StackSystem, p: number): number {
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
function relativeStep({ plates, steps }: StackSystem): number {
  let step = 0;
  let lift = 0;
  for (const [k, { x, d, size }] of plates.entries()) {
    for (let i = 0; i < size; i += d) {
      step = Math.max(step, Math.abs(steps[k][i]));
      lift = Math.max(lift, Math.abs(x[i]));
    }
  }
  return lift === 0 ? Number.POSITIVE_INFINITY : step / lift;
}

function moveBy({ plates, steps }: StackSystem, alpha: number): void {
  for (const [k, plate] of plates.entries()) addScaled(plate.x, steps[k], alpha);
}

function energySlope({ plates, steps }: StackSystem, p: number): number {
  let slope = 0;
  for (const [k, { internal, unitLoad, size }] of plates.entries()) {
    for (let i = 0; i < size; i++) slope += (internal[i] - p * unitLoad[i]) * steps[k][i];
  }
  return slope;
}

function potential({ plates }: StackSystem, p: number): number {
  let sum = 0;
  for (const plate of plates) {
    sum += strainEnergy(plate);
    for (let i = 0; i < plate.size; i++) sum -= p * plate.unitLoad[i] * plate.x[i];
  }
  return sum;
}

function addScaled(x: Float64Array, dx: Float64Array, alpha: number): void {
  for (let i = 0; i < x.length; i++) x[i] += alpha * dx[i];
}
