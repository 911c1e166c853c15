/**
 * Quick verdict on a stack in its damper: the curve at the aim's speeds from openings at few pressures, its distance from the
 * aim, and by how much it breaks a limit.
 *
 * symbol  unit  meaning
 * P       Pa    mean pressure on the pressure zone
 * h       m     opening at the seat
 */

import { damperPoints } from '../damper/damper-point.ts';
import { type OpeningTables, valvesOn } from '../damper/damper-valves.ts';
import type { DamperInput, FailedForce, ForcePoint, StackPlace } from '../damper/types.ts';
import { pchip } from '../numeric/pchip.ts';
import { DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import type { Theory } from '../types.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { CLOSED_BELOW_M } from '../valve/stack-samples.ts';
import type { OpeningSamples } from './sample-openings.ts';
import type { AimPoint, SearchLimits } from './types.ts';

/** A point that a stack does not reach counts as this many times the largest force of the aim. */
const UNREACHED = 5;

/** The table of a stack that is known at the pressures of the grid alone. */
export function coarseTable(
  pressure_Pa: readonly number[],
  opening_m: readonly number[],
  theory: Theory,
): OpeningTable {
  const firstOpen = opening_m.findIndex((h) => h >= CLOSED_BELOW_M);
  const lastClosed = firstOpen < 0 ? pressure_Pa.length - 1 : Math.max(0, firstOpen - 1);
  return {
    table: { theory, pressure_Pa, points: [], failures: [] },
    opening: pchip(pressure_Pa, opening_m),
    crackingPressure_Pa: pressure_Pa[lastClosed],
    kinks_Pa: [],
    end: { status: 'reached', reason: 'the grid ends here' },
  };
}

export function trialPoints(
  damper: DamperInput,
  tables: OpeningTables,
  aim: readonly AimPoint[],
): (ForcePoint | FailedForce)[] {
  const valves = valvesOn(tables, damper, DEFAULT_COEFFICIENTS);
  const speeds_m_s = aim.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s);
  return damperPoints(damper, valves, DEFAULT_COEFFICIENTS.airReleasePressure_Pa, speeds_m_s);
}

/** Root mean square of the aim [N]. */
export const scaleOf = (aim: readonly AimPoint[]): number =>
  Math.sqrt(aim.reduce((sum, { force_N }) => sum + force_N ** 2, 0) / aim.length);

/** Root mean square of force less gas less aim [N]. */
export function distanceOf(points: readonly (ForcePoint | FailedForce)[], aim: readonly AimPoint[]): number {
  const unreached = UNREACHED * Math.max(...aim.map(({ force_N }) => Math.abs(force_N)));
  const squares = points.map((point, i) =>
    point.status === 'converged' ? (point.force_N - point.gasForce_N - aim[i].force_N) ** 2 : unreached ** 2,
  );
  return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
}

/** How far the limits are broken: 0 where they hold, else shares of the limit summed [-]. */
export function brokenBy(
  points: readonly (ForcePoint | FailedForce)[],
  samples: ReadonlyMap<StackPlace, OpeningSamples>,
  grids: ReadonlyMap<StackPlace, readonly number[]>,
  limits: SearchLimits,
): number {
  const { minFatigueReserve = 0, minYieldReserve = 0, minGasMargin_Pa } = limits;
  let broken = 0;
  for (const [place, { use }] of samples) {
    const grid = grids.get(place);
    if (!use || !grid) continue;
    const reached = highestPressure(points, place);
    const at = (of: 'fatigue' | 'yield') =>
      pchip(
        grid,
        use.map((each) => each[of]),
      )(reached);
    broken += Math.max(0, at('fatigue') * minFatigueReserve - 1) + Math.max(0, at('yield') * minYieldReserve - 1);
  }
  if (minGasMargin_Pa !== undefined) {
    const margin = gasMargin(points);
    if (margin < minGasMargin_Pa) broken += (minGasMargin_Pa - margin) / Math.max(minGasMargin_Pa, 1e5);
  }
  return broken;
}

function highestPressure(points: readonly (ForcePoint | FailedForce)[], place: StackPlace): number {
  const pressures = points.map((point) => {
    if (point.status !== 'converged') return 0;
    if (place === 'base') return point.base?.shimPressure_Pa ?? 0;
    return point.shaftSpeed_m_s < 0 === (place === 'rebound') ? point.shimPressure_Pa : 0;
  });
  return Math.max(0, ...pressures);
}

/** Gas pressure less the one needed, least over the points that solved [Pa]. */
export function gasMargin(points: readonly (ForcePoint | FailedForce)[]): number {
  return Math.min(
    ...points.flatMap((point) =>
      point.status === 'converged' ? [point.gasPressure_Pa - point.gasPressureNeeded_Pa] : [],
    ),
  );
}
