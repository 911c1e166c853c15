/**
 * A damper driven over time: its stacks are solved and its static valves tabulated once, as far as the fastest motion asked for needs and
 * some way beyond, then every motion runs on them. Source: that of damper-model.ts and run-cycle.ts.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */
import { checkDamper } from '../damper/check-damper.ts';
import { eachStack, stackPlaces, tableOf, valvesOn } from '../damper/damper-valves.ts';
import { pistonAreas } from '../damper/piston-areas.ts';
import type { DamperInput, StackTheories } from '../damper/types.ts';
import { type AeratedOil, aeratedOil } from '../fluid/bulk-modulus.ts';
import { type Coefficients, DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { type FollowStacks, followStacks } from '../valve/followed-stack.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import { CHECK_LAG } from './check-lag.ts';
import { checkOptions } from './check-model.ts';
import { damperModel } from './damper-model.ts';
import { driveFor, fastest, type SineDrive, type TraceDrive } from './drive.ts';
import { runCycle } from './run-cycle.ts';
import type { CycleModel, CycleOptions, CycleRun, FailedCycle } from './types.ts';
import { ValveFailed } from './valve-flow.ts';

export interface DampingCycleOptions extends CycleOptions {
  readonly theory: TheoryChoice;
  /** Replaces single entries of the coefficient table. */
  readonly coefficients?: Partial<Coefficients>;
  /** How the oil compresses; of the compressibility table when absent. */
  readonly oil?: AeratedOil;
  /** Time in which the refill check follows its drop [s]; of CHECK_LAG when absent. */
  readonly checkLag_s?: number;
  /** Follows the stacks; when absent, afresh. */
  readonly follow?: FollowStacks;
}

/** A run, and which theory gave each stack. */
export interface DrivenDamper extends CycleRun {
  readonly theories: StackTheories;
}

/** Speed beyond the fastest for which stacks are solved: oil that springs back adds to the flow. */
const RESERVE = 1.3;
/** Motion each way for which stacks are solved at least, as a share of the other way and as a speed: oil springs back where the shaft does not. */
const LEAST_SHARE = 0.1;
const LEAST_SPEED_M_S = 0.01;

/**
 * One run of a damper.
 * @throws InputError for a damper that cannot be (`checkDamper`, `gasAtStroke`), for a motion that cannot be (`driveFor`), for options that
 *   cannot be (`checkOptions`); SolveStopped when the caller stops the run
 */
export function dampingCycle(
  damper: DamperInput,
  drive: SineDrive | TraceDrive,
  options: DampingCycleOptions,
  hooks: SolveHooks = {},
): DrivenDamper | FailedCycle {
  return dampingCycles(damper, [drive], options, hooks)[0];
}

/** As `dampingCycle`, for several motions on the same valves; progress counts motions, and stacks before them. */
export function dampingCycles(
  damper: DamperInput,
  drives: readonly (SineDrive | TraceDrive)[],
  options: DampingCycleOptions,
  hooks: SolveHooks = {},
): (DrivenDamper | FailedCycle)[] {
  checkOptions(options);
  const motions = drives.map((drive) => driveFor(drive, damper.travel_m));
  const speeds = motions.map(fastest).flatMap(({ compression, rebound }) => [compression, 0 - rebound]);
  checkDamper(damper, speeds);
  const stages = stackPlaces(damper).length + motions.length;
  let done = 0;
  const onStage = () => hooks.onProgress?.(++done, stages);
  const found = modelFor(damper, speeds, options, hooks, onStage);
  if ('status' in found) return motions.map(() => found);
  const { model, theories } = found;
  return motions.map((motion) => {
    const run = runCycle(model, motion, options, { shouldStop: hooks.shouldStop });
    onStage();
    return run.status === 'finished' ? { ...run, theories } : run;
  });
}

function modelFor(
  damper: DamperInput,
  speeds_m_s: readonly number[],
  options: DampingCycleOptions,
  hooks: SolveHooks,
  onStage: () => void,
): { readonly model: CycleModel; readonly theories: StackTheories } | FailedCycle {
  const coefficients = { ...DEFAULT_COEFFICIENTS, ...options.coefficients };
  const solver = (options.follow ?? followStacks)(hooks);
  const request = {
    stacks: { ...solver, lift: rememberedLift(solver.lift) },
    damper,
    theory: options.theory,
    sets: [coefficients],
    voids: true,
  };
  const ways = bothWays(speeds_m_s);
  const { piston_m2, annulus_m2 } = pistonAreas(damper);
  const tables = eachStack(damper, (place) => {
    // While a void fills, all that the piston presses out may go through it, and not only what the rebound chamber gains.
    const share = place === 'compression' ? piston_m2 / annulus_m2 : 1;
    const table = tableOf(place, { ...request, speeds_m_s: ways.map((v) => RESERVE * share * v) });
    onStage();
    return table;
  });
  try {
    const model = damperModel(damper, valvesOn(tables, damper, coefficients), {
      oil: options.oil ?? aeratedOil(),
      airReleasePressure_Pa: coefficients.airReleasePressure_Pa,
      checkLag_s: options.checkLag_s ?? CHECK_LAG.value,
    });
    return { model, theories: eachStack(damper, (place) => (tables[place] as OpeningTable).table.theory) };
  } catch (error) {
    if (error instanceof ValveFailed) return { status: 'valve', reason: error.message };
    throw error;
  }
}

function bothWays(speeds_m_s: readonly number[]): [number, number] {
  const least = Math.max(LEAST_SPEED_M_S, ...speeds_m_s.map((v) => LEAST_SHARE * Math.abs(v)));
  return [Math.max(least, ...speeds_m_s), Math.min(0 - least, ...speeds_m_s)];
}
