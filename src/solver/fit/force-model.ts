/**
 * Force of a damper at measured speeds for any values of the coefficients of a fit. The tables of the stacks, which cost most, are made
 * once for each height of the seats and reach as far as the ranges of the coefficients want; values that want more make them anew.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */

import { checkDamper } from '../damper/check-damper.ts';
import { eachStack, type OpeningTables } from '../damper/damper-valves.ts';
import { rangeEnds } from '../damper/force-band.ts';
import { pointsWith, tablesReaching } from '../damper/force-curve.ts';
import type { DamperInput, ForcePoint, StackTheories } from '../damper/types.ts';
import { pchip } from '../numeric/pchip.ts';
import { DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { followStacks, followUnstressed } from '../valve/followed-stack.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import { coefficientsWith, damperWith, type FitValues, fitValueOf } from './fit-coefficients.ts';

/** Points that were measured under one setting of the damper. */
export interface FitGroup {
  readonly damper: DamperInput;
  /** Positive in compression, none of them 0 [m/s]. */
  readonly speed_m_s: readonly number[];
  readonly force_N: readonly number[];
  /** What the measured forces have in them. */
  readonly hasGas: boolean;
  readonly hasFriction: boolean;
}

export interface ForceModel {
  /** Force at every point of the group [N]; undefined where one of them has no state. */
  readonly at: (values: FitValues) => number[] | undefined;
  /** Which theory gives each stack: chosen with the first values that were asked for, and kept. */
  readonly theories: () => StackTheories;
}

/** Of more speeds in one direction, that many are solved, and a curve through them is read. */
const MOST_SPEEDS = 32;

/** Speeds of one direction that stand for all of them: evenly among the measured ones, ends included. */
function standIns(speeds: readonly number[]): number[] {
  const sorted = [...new Set(speeds)].sort((a, b) => a - b);
  if (sorted.length <= MOST_SPEEDS) return sorted;
  const last = sorted.length - 1;
  return [
    ...new Set(Array.from({ length: MOST_SPEEDS }, (_, i) => sorted[Math.round((i * last) / (MOST_SPEEDS - 1))])),
  ];
}

/** @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run */
export function forceModel(group: FitGroup, theory: TheoryChoice, hooks: SolveHooks): ForceModel {
  const { damper, speed_m_s, hasGas, hasFriction } = group;
  const solved = [...standIns(speed_m_s.filter((v) => v < 0)), ...standIns(speed_m_s.filter((v) => v > 0))];
  checkDamper(damper, solved);
  const solver = followStacks(hooks, followUnstressed);
  const stacks = { ...solver, lift: rememberedLift(solver.lift) };
  let theories: StackTheories | undefined;
  const ends = rangeEnds(DEFAULT_COEFFICIENTS, {}).map(({ coefficients }) => coefficients);
  const known = new Map<string, OpeningTables>();
  const build = (changed: DamperInput, key: string, values: FitValues) => {
    const sets = [DEFAULT_COEFFICIENTS, ...ends, coefficientsWith(values)];
    const request = { stacks, damper: changed, theory, speeds_m_s: solved, sets };
    const tables = tablesReaching({ ...request, ...(theories && { theories }) }, hooks);
    theories ??= eachStack(damper, (place) => (tables[place] as OpeningTable).table.theory);
    known.set(key, tables);
    return tables;
  };
  const pointsOf = (values: FitValues): (ForcePoint | undefined)[] => {
    const key = `${fitValueOf(values, 'compressionSeatShift_m')} ${fitValueOf(values, 'reboundSeatShift_m')} ${fitValueOf(values, 'baseSeatShift_m')}`;
    const changed = damperWith(damper, values);
    const coefficients = coefficientsWith(values);
    const read = (tables: OpeningTables) => pointsWith(tables, changed, coefficients, solved);
    const first = read(known.get(key) ?? build(changed, key, values));
    const isShort = first.some(({ status }) => status === 'beyond-table');
    const points = isShort ? read(build(changed, key, values)) : first;
    return points.map((point) => (point.status === 'converged' ? point : undefined));
  };
  const at = (values: FitValues) => {
    const points = pointsOf(values);
    if (!points.every((point) => point !== undefined)) return undefined;
    const forces = (points as ForcePoint[]).map(
      ({ force_N, gasForce_N, frictionForce_N }) =>
        force_N - (hasGas ? 0 : gasForce_N) - (hasFriction ? 0 : frictionForce_N) + fitValueOf(values, 'forceOffset_N'),
    );
    return readAt(solved, forces, speed_m_s);
  };
  const chosen = (): StackTheories => {
    if (!theories) throw new Error('no force was asked for yet');
    return theories;
  };
  return { at, theories: chosen };
}

/** Each direction by itself: friction parts them with a step. */
function readAt(solved: readonly number[], forces: readonly number[], speeds: readonly number[]): number[] {
  const side = (sign: 1 | -1) => {
    const places = solved.flatMap((v, i) => (v * sign > 0 ? [i] : []));
    return places.length === 0
      ? undefined
      : pchip(
          places.map((i) => solved[i]),
          places.map((i) => forces[i]),
        );
  };
  const [rebound, compression] = [side(-1), side(1)];
  return speeds.map((v) => (v < 0 ? rebound : compression)?.(v) ?? Number.NaN);
}
