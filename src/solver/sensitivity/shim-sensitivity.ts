/**
 * What each single shim of one stack does to the force of its damper, speed by speed: the slopes of force over its thickness and over
 * its diameter, and the force with it taken out.
 *
 * Shims of one size that lie on one another move as one plate (merge-neighbours.ts), so their thickness and their presence tell the
 * same of each, and are solved once; their diameters do not, since one of another size moves by itself.
 *
 * symbol  unit  meaning
 * t       m     thickness of one shim
 * h       m     step of a difference
 */
import { InputError, type InputFault } from '../../units/fault.ts';
import { valveAt } from '../damper/damper-valves.ts';
import { forceCurveWith } from '../damper/force-curve.ts';
import { type Forces, matchedForces } from '../damper/matched-forces.ts';
import type { DamperInput, StackPlace, StackTheories, ValveInput } from '../damper/types.ts';
import { withStack } from '../damper/with-stack.ts';
import { validateStack } from '../stack/validate-stack.ts';
import { stopIfAsked } from '../stopped.ts';
import type { ShimInput, SolveHooks, TheoryChoice } from '../types.ts';
import { followStacks, followUnstressed } from '../valve/followed-stack.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import { thicker, wider, without } from './changed-shims.ts';
import { type Slope, slopesOf } from './slopes.ts';

/** Step of a thickness, as a share of it: below what bends the curve, far above the rounding of a solve. */
const THICKNESS_STEP = 0.01;
/** Step of a diameter [m]: several times what the mesh tells apart. */
const DIAMETER_STEP_M = 1e-4;

export type Slopes = readonly (Slope | null)[];

/** The force with a shim taken out less that of the whole stack, each as the curve of that build says it [N]. */
export type Absence =
  | { readonly status: 'solved'; readonly change_N: Forces }
  /** The stack without it cannot be built. */
  | { readonly status: 'refused'; readonly fault: InputFault };

export interface ShimSensitivity {
  /** Force over thickness, per speed [N/m]. */
  readonly byThickness: Slopes;
  /** Force over outer diameter, per speed [N/m]. */
  readonly byDiameter: Slopes;
  readonly absence: Absence;
}

export interface StackSensitivity {
  readonly speeds_m_s: readonly number[];
  /** Of the whole damper, which the slopes keep to. */
  readonly theories: StackTheories;
  /** Of the whole stack [N]. */
  readonly force_N: Forces;
  /** One a single shim, piston side first. */
  readonly shims: readonly ShimSensitivity[];
}

/**
 * @param speeds_m_s  any order, positive in compression
 * @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run
 */
export function stackSensitivity(
  damper: DamperInput,
  place: StackPlace,
  speeds_m_s: readonly number[],
  theory: TheoryChoice,
  hooks: SolveHooks = {},
): StackSensitivity {
  const { stack } = valveAt(damper, place);
  const forces = matchedForces(damper, speeds_m_s, theory, hooks);
  const whole = wholeCurves(speeds_m_s, theory, hooks);
  const force_N = whole(damper);
  const leftOut = (s: number) => {
    const left = without(stack, s);
    validateStack(left);
    return whole(withStack(damper, place, left));
  };
  const ofStack = (changed: ValveInput['stack']): Forces | undefined =>
    allowed(() => forces.of(changed === stack ? damper : withStack(damper, place, changed)));
  const shims: ShimSensitivity[] = [];
  stack.shims.forEach((shim, s) => {
    const last = shims[s - 1];
    const alike = s > 0 && isSame(stack.shims[s - 1], shim);
    const byDiameter = slopesOf((step) => ofStack(step === 0 ? stack : wider(stack, s, step)), DIAMETER_STEP_M);
    const byThickness = alike
      ? last.byThickness
      : slopesOf((step) => ofStack(step === 0 ? stack : thicker(stack, s, step)), THICKNESS_STEP * shim.thickness_m);
    const absence = alike ? last.absence : absenceOf(() => leftOut(s), force_N);
    shims.push({ byThickness, byDiameter, absence });
    hooks.onProgress?.(s + 1, stack.shims.length);
  });
  return { speeds_m_s, theories: forces.theories, force_N, shims };
}

/** As the force curve of each build is, the stacks that stay solved once. */
function wholeCurves(
  speeds_m_s: readonly number[],
  theory: TheoryChoice,
  hooks: SolveHooks,
): (damper: DamperInput) => Forces {
  const solver = followStacks(hooks, followUnstressed);
  const stacks = { ...solver, lift: rememberedLift(solver.lift) };
  const { shouldStop } = hooks;
  return (damper) => {
    stopIfAsked(hooks);
    const { points } = forceCurveWith(stacks, damper, speeds_m_s, { theory }, shouldStop ? { shouldStop } : {});
    return points.map((point) => (point.status === 'converged' ? point.force_N : null));
  };
}

function absenceOf(run: () => Forces, whole: Forces): Absence {
  try {
    const left = run();
    const change = (force: number | null, i: number) => {
      const before = whole[i];
      return force === null || before === null ? null : force - before;
    };
    return { status: 'solved', change_N: left.map(change) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { status: 'refused', fault: error.fault };
  }
}

/** Undefined for a stack that cannot be. */
function allowed(run: () => Forces): Forces | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

const KEYS = ['outerRadius_m', 'innerRadius_m', 'thickness_m', 'youngsModulus_Pa', 'poissonsRatio', 'dish_m'] as const;

const isSame = (p: ShimInput, q: ShimInput): boolean => KEYS.every((key) => p[key] === q[key]);
