/**
 * The table of a stack by the theory that was asked for, or by the one that its states call for: large deflection where the
 * ports are many and the stack is stable up to the largest flow, port-periodic otherwise; large deflection again where
 * the valve would not reach that flow on the other table.
 */
import { portsAreMany } from '../stack/many-ports.ts';
import type { Fallback, LeavesRound, Theory, TheoryChoice } from '../types.ts';
import { type FailedValve, tableReaching, type ValvePoint, type ValveSetting, valveOn } from './explicit-valve.ts';
import type { OpeningTable } from './opening-table.ts';
import type { StackSolver } from './stack-samples.ts';

export interface TableChoice {
  readonly theory: TheoryChoice;
  /** Whether large deflection, where it was asked for, is to say where it does not serve. */
  readonly marked?: boolean;
}

/**
 * @param settings of one valve; the first of them, with its own coefficients, chooses for all
 * @param largestFlow_m3_s through the whole valve
 * @returns a table that reaches the flow with every setting, or ends earlier for a reason that its points give
 */
export function chosenTable(
  { lift, onset }: StackSolver,
  settings: readonly ValveSetting[],
  { theory: choice, marked = false }: TableChoice,
  largestFlow_m3_s: number,
): OpeningTable {
  const tableBy = (theory: Theory) => tableReaching(lift, settings, theory, largestFlow_m3_s);
  if (choice !== 'auto' && !(marked && choice === 'large-deflection')) return tableBy(choice);
  const [setting] = settings;
  const endOf = (table: OpeningTable) => valveOn(table, setting).atFlow(largestFlow_m3_s);
  const round = tableBy('large-deflection');
  const left = leavesRound(round, setting, () => endOf(round), onset);
  if (!left) return round;
  if (choice !== 'auto') return withMark(round, { leavesRound: left });
  const waved = tableBy('port-periodic');
  if (left === 'not-solved' && endOf(waved).status !== 'converged') return withMark(round, { leavesRound: left });
  const fallback = solvesLess(endOf(waved), endOf(round));
  return fallback ? withMark(round, { leavesRound: left, fallback }) : waved;
}

type Marks = { readonly leavesRound: LeavesRound; readonly fallback?: Fallback };

const withMark = (opening: OpeningTable, marks: Marks): OpeningTable => ({
  ...opening,
  table: { ...opening.table, ...marks },
});

function leavesRound(
  { table, end }: OpeningTable,
  { valve }: ValveSetting,
  atEnd: () => ValvePoint | FailedValve,
  onset: StackSolver['onset'],
): LeavesRound | undefined {
  if (!portsAreMany(valve.stack.ports)) return 'ports';
  const waves = onset(valve.stack, table.pressure_Pa);
  if (waves.status === 'none') return isFailure(end) ? 'not-solved' : undefined;
  if (waves.status === 'unknown') return 'waves';
  const reached = atEnd();
  return reached.status === 'converged' && reached.shimPressure_Pa < waves.pressure_Pa ? undefined : 'waves';
}

const isFailure = ({ status }: OpeningTable['end']): boolean => status !== 'reached' && status !== 'beyond-table';

function solvesLess(waved: ValvePoint | FailedValve, round: ValvePoint | FailedValve): Fallback | undefined {
  if (waved.status === 'converged' || round.status !== 'converged') return undefined;
  return { status: waved.status, reason: waved.reason };
}
