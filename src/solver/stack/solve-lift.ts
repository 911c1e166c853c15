/**
 * Lift and stress of a stack at a list of pressures: the door of the stack solver.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 */
import { InputError } from '../../units/fault.ts';
import type { LiftPoint, LiftResult, StackInput } from '../types.ts';
import { loadStack, type SolveLiftOptions } from './load-stack.ts';
import { solveAuto } from './solve-auto.ts';

/**
 * @param pressures_Pa pressures on the zone, >= 0, in any order; they are visited from the least to the greatest [Pa]
 * @returns one point per pressure, in the order asked for; a point that failed says why and carries no lift
 * @throws InputError `stack.*` for a stack outside the model, `pressure.*` for a pressure that is not a number >= 0
 */
export function solveLift(stack: StackInput, pressures_Pa: readonly number[], options: SolveLiftOptions): LiftResult {
  pressures_Pa.forEach(requirePressure);
  const order = pressures_Pa.map((_, i) => i).sort((i, j) => pressures_Pa[i] - pressures_Pa[j]);
  const rising_Pa = order.map((i) => pressures_Pa[i]);
  const solved = solveRising(stack, rising_Pa, options);
  const points: LiftPoint[] = new Array(pressures_Pa.length);
  for (const [k, i] of order.entries()) points[i] = solved.points[k];
  return { ...solved, points };
}

function solveRising(stack: StackInput, rising_Pa: readonly number[], options: SolveLiftOptions): LiftResult {
  const { theory } = options;
  if (theory === 'auto') return solveAuto(stack, rising_Pa, options);
  return { theory, points: rising_Pa.map(loadStack(stack, { ...options, theory }).at) };
}

function requirePressure(p: number, i: number): void {
  if (p >= 0 && Number.isFinite(p)) return;
  const where = { code: 'pressure.range', path: `pressures_Pa[${i}]` };
  throw new InputError({ ...where, got: `${p}`, wanted: '0 or more', unit: 'Pa' });
}
