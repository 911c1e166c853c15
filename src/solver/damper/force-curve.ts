/**
 * Force against shaft speed of a whole damper: builds its valves, each with a stack table that reaches the fastest speed asked for
 * in its direction, then reads every speed from them.
 */
import { usesAt, worstOf } from '../life/stack-life.ts';
import { type Coefficients, DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { type FollowStacks, followStacks } from '../valve/followed-stack.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import type { StackSolver } from '../valve/stack-samples.ts';
import { checkDamper } from './check-damper.ts';
import { damperPoints } from './damper-point.ts';
import { eachStack, type OpeningTables, stackPlaces, tableOf, valveAt, valvesOn } from './damper-valves.ts';
import { bandParts, type CoefficientRanges, rangeEnds, withBand } from './force-band.ts';
import type {
  DamperInput,
  FailedForce,
  ForceCurve,
  ForcePoint,
  PointLife,
  StackTable,
  StackTheories,
} from './types.ts';

export interface ForceCurveOptions {
  readonly theory: TheoryChoice;
  /** Replaces single entries of the coefficient table. */
  readonly coefficients?: Partial<Coefficients>;
  /** Gives every point the band that the ranges of the coefficients leave open. */
  readonly bands?: boolean;
  /** Replaces single ranges of the coefficient table in the bands. */
  readonly ranges?: CoefficientRanges;
  /** Follows the stacks; when absent, afresh. */
  readonly follow?: FollowStacks;
}

/**
 * Force curve of a damper.
 * @param speeds_m_s  any order, positive in compression; each gives one point, converged or failed with its reason
 * @throws InputError for a damper that cannot be (see `checkDamper`); SolveStopped when the caller stops the run
 */
export function forceCurve(
  damper: DamperInput,
  speeds_m_s: readonly number[],
  options: ForceCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  const stacks = (options.follow ?? followStacks)(hooks);
  const curve = forceCurveWith(stacks, damper, speeds_m_s, { ...options, marked: true }, hooks);
  const judged = eachStack(damper, (place) => {
    stopIfAsked(hooks);
    return stacks.judge(valveAt(damper, place).stack, curve.stacks[place] as StackTable);
  });
  return { ...curve, points: curve.points.map((point) => withLife(point, judged)), stacks: judged };
}

/**
 * The points of a force curve alone, without judging its stacks: for sweeps, which ask for many curves and draw no stack.
 * @param speeds_m_s, @throws as `forceCurve`
 */
export function forcePoints(
  damper: DamperInput,
  speeds_m_s: readonly number[],
  options: ForceCurveOptions,
  hooks: SolveHooks = {},
): PointsByTheory {
  const stacks = (options.follow ?? followStacks)(hooks);
  const curve = forceCurveWith(stacks, damper, speeds_m_s, options, hooks);
  return { points: curve.points, theories: theoriesOf(curve) };
}

export interface PointsByTheory extends Pick<ForceCurve, 'points'> {
  readonly theories: StackTheories;
}

/** Which theory gave each stack. */
export const theoriesOf = ({ stacks }: Pick<ForceCurve, 'stacks'>): StackTheories => ({
  compression: stacks.compression.theory,
  rebound: stacks.rebound.theory,
  ...(stacks.base && { base: stacks.base.theory }),
});

/** The working stack of the piston is that of the direction of motion; at rest all are closed, and that of compression stands for them. */
function withLife(point: ForcePoint | FailedForce, stacks: ForceCurve['stacks']): ForcePoint | FailedForce {
  if (point.status !== 'converged') return point;
  const { shaftSpeed_m_s, shimPressure_Pa, base } = point;
  const life = lifeAt(shaftSpeed_m_s < 0 ? stacks.rebound : stacks.compression, shimPressure_Pa);
  const baseLife = base && stacks.base && shaftSpeed_m_s >= 0 ? lifeAt(stacks.base, base.shimPressure_Pa) : undefined;
  return { ...point, ...(life && { life }), ...(base && baseLife && { base: { ...base, life: baseLife } }) };
}

function lifeAt({ life, pressure_Pa }: StackTable, p: number): PointLife | undefined {
  return life && worstOf(usesAt(life, pressure_Pa, p));
}

export interface CurveRun extends ForceCurveOptions {
  /** Whether the tables of large deflection say where it does not serve. */
  readonly marked?: boolean;
}

/** As `forceCurve`, with the solver of the stacks given; its bands keep to the theories of the curve. */
export function forceCurveWith(
  solver: StackSolver,
  damper: DamperInput,
  speeds_m_s: readonly number[],
  options: CurveRun,
  hooks: SolveHooks = {},
): ForceCurve {
  checkDamper(damper, speeds_m_s);
  const { theory, marked, bands } = options;
  const coefficients = { ...DEFAULT_COEFFICIENTS, ...options.coefficients };
  const stacks = { ...solver, lift: rememberedLift(solver.lift) };
  const places = stackPlaces(damper).length;
  const stages = places + (bands ? 2 : 1);
  const request = { stacks, damper, theory, marked, speeds_m_s };
  const tables = tablesReaching({ ...request, sets: [coefficients] }, hooks, (done) =>
    hooks.onProgress?.(done, stages),
  );
  const points = pointsWith(tables, damper, coefficients, speeds_m_s);
  hooks.onProgress?.(places + 1, stages);
  const curve = { theory, points, stacks: eachStack(damper, (place) => (tables[place] as OpeningTable).table) };
  if (!bands) return curve;
  const ends = rangeEnds(coefficients, options.ranges ?? {});
  const sets = [coefficients, ...ends.map((end) => end.coefficients)];
  const reaching = tablesReaching({ ...request, sets, theories: theoriesOf(curve) }, hooks);
  const parts = bandParts((set) => pointsWith(reaching, damper, set, speeds_m_s), coefficients, ends);
  hooks.onProgress?.(stages, stages);
  return { ...curve, points: points.map((point, i) => withBand(point, parts[i])) };
}

/** Points of a curve on tables that are there, with one set of coefficients. */
export function pointsWith(
  tables: OpeningTables,
  damper: DamperInput,
  coefficients: Coefficients,
  speeds_m_s: readonly number[],
): (ForcePoint | FailedForce)[] {
  return damperPoints(damper, valvesOn(tables, damper, coefficients), coefficients.airReleasePressure_Pa, speeds_m_s);
}

/**
 * The tables of all stacks. A void in the rebound chamber leaves the base valve all that the piston presses out, several times
 * the volume of the rod; only where one opens is its table built that far.
 */
export function tablesReaching(
  request: Omit<Parameters<typeof tableOf>[1], 'voids'>,
  hooks: SolveHooks,
  onTable?: (done: number) => void,
): OpeningTables {
  const { damper, speeds_m_s, sets } = request;
  let done = 0;
  const tables: OpeningTables = eachStack(damper, (place) => {
    stopIfAsked(hooks);
    const table = tableOf(place, { ...request, voids: false });
    onTable?.(++done);
    return table;
  });
  if (!tables.base) return tables;
  const fastest = Math.max(0, ...speeds_m_s);
  const opensVoid = sets.some((set) => {
    const [point] = pointsWith(tables, damper, set, [fastest]);
    return point.status !== 'converged' || point.airRelease;
  });
  return opensVoid ? { ...tables, base: tableOf('base', { ...request, voids: true }) } : tables;
}
