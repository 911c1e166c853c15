/**
 * Forces of dampers that differ a little from one another, on tables at matching pressures, so that their differences are those
 * of the dampers and not of their tables. Each table is built once, however many dampers share its stack.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */
import { DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, StackInput, TheoryChoice } from '../types.ts';
import { followStacks, followUnstressed } from '../valve/followed-stack.ts';
import { matchedTable } from '../valve/matched-table.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import { checkDamper } from './check-damper.ts';
import { eachStack, type OpeningTables, valveAt } from './damper-valves.ts';
import { pointsWith, tablesReaching } from './force-curve.ts';
import type { DamperInput, StackPlace, StackTheories } from './types.ts';

/** A stiffer stack passes its flow at a higher pressure: the tables reach as far as this many times the speeds. */
const REACH = 1.25;

/** One number a speed; null where the damper has no state [N]. */
export type Forces = readonly (number | null)[];

export interface MatchedForces {
  /** @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run */
  readonly of: (damper: DamperInput) => Forces;
  /** Chosen once, from the damper that the others are like. */
  readonly theories: StackTheories;
}

/**
 * @param like  the damper that the others differ from a little: it decides at which pressures all tables are solved
 * @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run
 */
export function matchedForces(
  like: DamperInput,
  speeds_m_s: readonly number[],
  theory: TheoryChoice,
  hooks: Pick<SolveHooks, 'shouldStop'> = {},
): MatchedForces {
  checkDamper(like, speeds_m_s);
  const solver = followStacks(hooks, followUnstressed);
  const reached = [...speeds_m_s, ...speeds_m_s.map((v) => v * REACH)];
  const request = {
    stacks: { ...solver, lift: rememberedLift(solver.lift) },
    damper: like,
    theory,
    speeds_m_s: reached,
    sets: [DEFAULT_COEFFICIENTS],
  };
  const reference = tablesReaching(request, hooks);
  const known = new WeakMap<StackInput, OpeningTable>();
  const tableAt = (damper: DamperInput, place: StackPlace): OpeningTable => {
    stopIfAsked(hooks);
    const { stack } = valveAt(damper, place);
    const table = known.get(stack) ?? matchedTable(solver.lift, stack, reference[place] as OpeningTable);
    known.set(stack, table);
    return table;
  };
  const of = (damper: DamperInput): Forces => {
    checkDamper(damper, speeds_m_s);
    const tables: OpeningTables = eachStack(damper, (place) => tableAt(damper, place));
    return pointsWith(tables, damper, DEFAULT_COEFFICIENTS, speeds_m_s).map((point) =>
      point.status === 'converged' ? point.force_N : null,
    );
  };
  return { of, theories: eachStack(like, (place) => (reference[place] as OpeningTable).table.theory) };
}
