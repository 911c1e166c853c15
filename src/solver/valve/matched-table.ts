/**
 * Opening table of a stack that differs a little from another one whose table is known: solved at the same pressures above its own
 * cracking pressure. What a table leaves between its points is then nearly the same in both, and drops out of their difference, which
 * two tables that each choose their own points would blur (each is good to half a percent of the pressure).
 *
 * symbol  unit  meaning
 * p_c     Pa    cracking pressure
 * p       Pa    pressure on the zone of the stack
 */

import { pressureInWords } from '../in-words.ts';
import type { StackInput } from '../types.ts';
import { findCracking } from './cracking-pressure.ts';
import type { OpeningTable, TableEnd } from './opening-table.ts';
import { openingCurve } from './refine-samples.ts';
import { isClosed, type LiftSolver, noSamples, type StackSamples, withPressures } from './stack-samples.ts';

/**
 * @param like  table of the stack that this one differs from a little
 * @returns a table that reaches as far above its cracking pressure, or ends before at a failed solve and says so
 */
export function matchedTable(solveLift: LiftSolver, stack: StackInput, like: OpeningTable): OpeningTable {
  const { theory } = like.table;
  const solve = (pressures: readonly number[]) => solveLift(stack, pressures, theory);
  const above = pressuresAbove(like);
  const p_c = crackingOf(like, above, solve);
  const base_Pa = baseOf(p_c);
  const samples = withPressures(
    noSamples,
    solve,
    above.map((offset) => base_Pa + offset),
  );
  const kinks_Pa = like.kinks_Pa.map((kink) => base_Pa + (kink - baseOf(like.crackingPressure_Pa)));
  const bends = { crackingPressure_Pa: p_c, kinks_Pa };
  return {
    table: { theory, pressure_Pa: pressuresOf(samples), points: samples.points, failures: samples.failures },
    opening: openingCurve(samples.points, bends),
    ...bends,
    end: endOf(samples, like.end),
  };
}

/** Points nearer to the cracking pressure than this share of it, left by its search, are nearer than it is known. */
const NEAREST = 0.02;

/** Of the open points of a table; of all of them where the stack stays on its seat. */
function pressuresAbove({ table, crackingPressure_Pa: p_c }: OpeningTable): number[] {
  if (!Number.isFinite(p_c)) return [...table.pressure_Pa];
  const open = table.points.filter((point) => !isClosed(point)).map(({ pressure_Pa }) => pressure_Pa - p_c);
  return open.filter((above) => above >= NEAREST * p_c);
}

/** From the seated stack, and a pressure at which both are open. */
function crackingOf(like: OpeningTable, above: readonly number[], solve: Parameters<typeof findCracking>[1]): number {
  const guess = like.crackingPressure_Pa;
  if (guess === 0 && above[0] === 0) return 0;
  const far = (Number.isFinite(guess) ? 2 * guess : 0) + (above[above.length - 1] ?? 0);
  const near = Number.isFinite(guess) ? [guess] : [];
  return findCracking(withPressures(noSamples, solve, [0, ...near, far]), solve).pressure_Pa;
}

/** What pressures are counted from. */
const baseOf = (p_c: number): number => (Number.isFinite(p_c) ? p_c : 0);

const pressuresOf = ({ points }: StackSamples): number[] => points.map(({ pressure_Pa }) => pressure_Pa);

function endOf({ failures }: StackSamples, end: TableEnd): TableEnd {
  const [failure] = failures;
  if (!failure) return end;
  const { status, pressure_Pa, reason } = failure;
  return { status, reason: `the changed stack did not solve at ${pressureInWords(pressure_Pa)}: ${reason}` };
}
