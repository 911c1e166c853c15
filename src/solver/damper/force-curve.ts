/**
 * Force against shaft speed of a whole damper: builds the two piston valves, each with a stack table that reaches the
 * fastest speed asked for in its direction, then reads every speed from them.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 * d       m     diameter of a bleed hole
 */
import { InputError } from '../../units/fault.ts';
import { usesAt, worstOf } from '../life/stack-life.ts';
import { closedPath } from '../restriction/closed.ts';
import { type Coefficients, DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import { drilledHole } from '../restriction/drilled-hole.ts';
import { roundHoles } from '../restriction/round-holes.ts';
import type { FluidState, Restriction } from '../restriction/types.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, StackInput, Theory } from '../types.ts';
import { type ExplicitValve, explicitValve } from '../valve/explicit-valve.ts';
import { type FollowedStack, followStack } from '../valve/followed-stack.ts';
import type { LiftSolver } from '../valve/stack-samples.ts';
import { checkMonotube } from './check-monotube.ts';
import { monotubeAreas, monotubePoint } from './monotube.ts';
import type { BleedInput, FailedForce, ForceCurve, ForcePoint, MonotubeInput, StackTable } from './types.ts';

export interface ForceCurveOptions {
  readonly theory: Theory;
  /** Replaces single entries of the coefficient table. */
  readonly coefficients?: Partial<Coefficients>;
}

/** Stages that progress counts: two stack tables, then all speeds. */
const STAGES = 3;

/**
 * Force curve of a monotube.
 * @param speeds_m_s  any order, positive in compression; each gives one point, converged or failed with its reason
 * @throws InputError for a damper that cannot be (see `checkMonotube`); SolveStopped when the caller stops the run
 */
export function forceCurve(
  damper: MonotubeInput,
  speeds_m_s: readonly number[],
  options: ForceCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  const { theory } = options;
  const stacks = new Map<StackInput, FollowedStack>();
  const lift: LiftSolver = (stack, pressures_Pa) => {
    stopIfAsked(hooks);
    const followed = stacks.get(stack) ?? followStack(stack, theory);
    stacks.set(stack, followed);
    return { theory, points: pressures_Pa.map(followed.at) };
  };
  const curve = forceCurveWith(lift, damper, speeds_m_s, options, hooks);
  const judged = (place: 'compression' | 'rebound'): StackTable => {
    stopIfAsked(hooks);
    return stacks.get(damper[place].stack)?.judge(curve.stacks[place]) ?? curve.stacks[place];
  };
  const tables = { compression: judged('compression'), rebound: judged('rebound') };
  return { ...curve, points: curve.points.map((point) => withLife(point, tables)), stacks: tables };
}

/** The working stack is that of the direction of motion; at rest both are closed, and that of compression stands for them. */
function withLife(point: ForcePoint | FailedForce, tables: ForceCurve['stacks']): ForcePoint | FailedForce {
  if (point.status !== 'converged') return point;
  const { life, pressure_Pa } = point.shaftSpeed_m_s < 0 ? tables.rebound : tables.compression;
  const worst = life && worstOf(usesAt(life, pressure_Pa, point.shimPressure_Pa));
  return worst ? { ...point, life: worst } : point;
}

/** As `forceCurve`, with the solver of the stacks given. */
export function forceCurveWith(
  lift: LiftSolver,
  damper: MonotubeInput,
  speeds_m_s: readonly number[],
  { theory, coefficients: replaced }: ForceCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  checkMonotube(damper, speeds_m_s);
  const coefficients = { ...DEFAULT_COEFFICIENTS, ...replaced };
  const { fluid } = damper;
  const bleed = bleedPath(damper.bleed, fluid, coefficients);
  const { annulus_m2 } = monotubeAreas(damper);
  const build = (place: 'compression' | 'rebound', direction: number, stage: number): ExplicitValve => {
    stopIfAsked(hooks);
    const fastest = Math.max(0, ...speeds_m_s.map((speed) => speed * direction));
    const setting = { valve: damper[place], bleed, fluid, coefficients, theory };
    const valve = inPlace(place, () => explicitValve(lift, setting, annulus_m2 * fastest));
    hooks.onProgress?.(stage, STAGES);
    return valve;
  };
  const valves = { compression: build('compression', 1, 1), rebound: build('rebound', -1, 2) };
  const points = speeds_m_s.map((v) => monotubePoint(damper, valves, coefficients.airReleasePressure_Pa, v));
  hooks.onProgress?.(STAGES, STAGES);
  return { theory, points, stacks: { compression: valves.compression.table, rebound: valves.rebound.table } };
}

/** A refusal of the stack solver names its place in the stack; here it also names the valve. */
function inPlace<Result>(place: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError({ ...error.fault, path: `${place}.stack.${error.fault.path}` });
  }
}

function bleedPath(bleed: BleedInput, fluid: FluidState, coefficients: Coefficients): Restriction {
  return bleed.count === 0 ? closedPath : drilledHole(roundHoles(bleed), fluid, coefficients);
}
