/**
 * Force against shaft speed of a whole damper: builds the two piston valves, each with a stack table that reaches the
 * fastest speed asked for in its direction, then reads every speed from them.
 */
import { usesAt, worstOf } from '../life/stack-life.ts';
import { type Coefficients, DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, StackInput, Theory } from '../types.ts';
import { type FollowedStack, followStack } from '../valve/followed-stack.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import type { LiftSolver } from '../valve/stack-samples.ts';
import { checkMonotube } from './check-monotube.ts';
import { bandParts, type CoefficientRanges, rangeEnds, withBand } from './force-band.ts';
import { type Direction, type OpeningTables, pointsOn, tableOf } from './monotube-valves.ts';
import type { FailedForce, ForceCurve, ForcePoint, MonotubeInput, StackTable } from './types.ts';

export interface ForceCurveOptions {
  readonly theory: Theory;
  /** Replaces single entries of the coefficient table. */
  readonly coefficients?: Partial<Coefficients>;
  /** Gives every point the band that the ranges of the coefficients leave open. */
  readonly bands?: boolean;
  /** Replaces single ranges of the coefficient table in the bands. */
  readonly ranges?: CoefficientRanges;
}

/** Stages that progress counts: two stack tables, then all speeds; the bands are one more. */
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
  solveLift: LiftSolver,
  damper: MonotubeInput,
  speeds_m_s: readonly number[],
  options: ForceCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  checkMonotube(damper, speeds_m_s);
  const { theory, bands } = options;
  const coefficients = { ...DEFAULT_COEFFICIENTS, ...options.coefficients };
  const lift = bands ? rememberedLift(solveLift) : solveLift;
  const stages = bands ? STAGES + 1 : STAGES;
  const tablesFor = (sets: readonly Coefficients[], done?: (stage: number) => void): OpeningTables => {
    const table = (direction: Direction, stage: number) => {
      stopIfAsked(hooks);
      const built = tableOf(direction, { lift, damper, theory }, speeds_m_s, sets);
      done?.(stage);
      return built;
    };
    return { compression: table('compression', 1), rebound: table('rebound', 2) };
  };
  const tables = tablesFor([coefficients], (stage) => hooks.onProgress?.(stage, stages));
  const points = pointsOn(tables, damper, coefficients, speeds_m_s);
  hooks.onProgress?.(STAGES, stages);
  const curve = { theory, points, stacks: { compression: tables.compression.table, rebound: tables.rebound.table } };
  if (!bands) return curve;
  const ends = rangeEnds(coefficients, options.ranges ?? {});
  const reaching = tablesFor([coefficients, ...ends.map((end) => end.coefficients)]);
  const parts = bandParts(reaching, damper, speeds_m_s, coefficients, ends);
  hooks.onProgress?.(stages, stages);
  return { ...curve, points: points.map((point, i) => withBand(point, parts[i])) };
}
