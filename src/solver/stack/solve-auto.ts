/**
 * Lift of a stack by the theory that its state calls for: the round one where its ports are many and it is stable up to
 * the greatest pressure, the port-periodic one otherwise; the round one again where that solves less.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 */
import { pressureInWords } from '../in-words.ts';
import type { Fallback, LiftPoint, LiftResult, StackInput } from '../types.ts';
import type { SolveLiftOptions } from './load-stack.ts';
import { createLoadedStack, type LoadedStack } from './loaded-stack.ts';
import { portsAreMany } from './many-ports.ts';
import { createLoadedPeriodicStack } from './periodic/loaded-periodic-stack.ts';
import { rememberedStack } from './remembered-stack.ts';

/**
 * @param rising_Pa pressures on the zone, none below the one before it [Pa]
 * @param followWaves sets a stack up under the port-periodic theory
 * @returns one point a pressure, all of one theory, which is named
 * @throws InputError `stack.*` for a stack outside the model
 */
export function solveAuto(
  stack: StackInput,
  rising_Pa: readonly number[],
  options: Omit<SolveLiftOptions, 'theory'>,
  followWaves: typeof createLoadedPeriodicStack = createLoadedPeriodicStack,
): LiftResult {
  const round = rememberedStack(createLoadedStack(stack, { ...options, theory: 'large-deflection' }));
  const roundPoints = rising_Pa.map(round.at);
  const isRound = portsAreMany(stack.ports) && staysRound(round, roundPoints);
  const asRound: LiftResult = { theory: 'large-deflection', points: roundPoints };
  if (isRound && roundPoints.every(isSolved)) return asRound;
  const points = rising_Pa.map(followWaves(stack, { ...options, round }).at);
  // Nobody is to be told of waves that would not have been followed but for a state that was not found.
  if (isRound && points.filter(isSolved).length <= roundPoints.filter(isSolved).length) return asRound;
  const fallback = solvesLess(points, roundPoints);
  return fallback ? { ...asRound, fallback } : { theory: 'port-periodic', points };
}

/** Pressing grows with the pressure, so that the last state that was found tells for all. */
function staysRound(round: LoadedStack, points: readonly LiftPoint[]): boolean {
  const last = points.findLast(isSolved);
  return !last || round.rufflingAt(last.pressure_Pa).status === 'round';
}

const isSolved = ({ status }: LiftPoint): boolean => status === 'converged';

function solvesLess(points: readonly LiftPoint[], round: readonly LiftPoint[]): Fallback | undefined {
  for (const [i, point] of points.entries()) {
    if (point.status === 'converged' || !isSolved(round[i])) continue;
    return { status: point.status, reason: `at ${pressureInWords(point.pressure_Pa)}: ${point.reason}` };
  }
  return undefined;
}
