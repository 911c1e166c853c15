/**
 * The two piston valves of a monotube: the tables of their stacks, which know no coefficient, and the points of a force
 * curve read off them with one set of coefficients.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */
import { InputError } from '../../units/fault.ts';
import { annularGap } from '../restriction/annular-gap.ts';
import { closedPath } from '../restriction/closed.ts';
import type { Coefficients } from '../restriction/coefficients.ts';
import { drilledHole } from '../restriction/drilled-hole.ts';
import { needleGap } from '../restriction/needle.ts';
import { roundHoles } from '../restriction/round-holes.ts';
import { series } from '../restriction/series.ts';
import type { Restriction } from '../restriction/types.ts';
import type { Theory } from '../types.ts';
import { tableReaching, type ValveSetting, valveOn } from '../valve/explicit-valve.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import type { LiftSolver } from '../valve/stack-samples.ts';
import { monotubeAreas, monotubePoint } from './monotube.ts';
import type { BleedInput, FailedForce, FluidState, ForcePoint, MonotubeInput, PistonBandInput } from './types.ts';

export type Direction = 'compression' | 'rebound';
export type OpeningTables = Readonly<Record<Direction, OpeningTable>>;

const SIGN: Readonly<Record<Direction, number>> = { compression: 1, rebound: -1 };

/** Table of one stack that reaches the fastest speed of its direction with each of the coefficient sets. */
export function tableOf(
  direction: Direction,
  { lift, damper, theory }: { lift: LiftSolver; damper: MonotubeInput; theory: Theory },
  speeds_m_s: readonly number[],
  sets: readonly Coefficients[],
): OpeningTable {
  const fastest = Math.max(0, ...speeds_m_s.map((v) => v * SIGN[direction]));
  const largestFlow_m3_s = monotubeAreas(damper).annulus_m2 * fastest;
  const settings = sets.map((coefficients) => settingOf(direction, damper, coefficients));
  return inPlace(direction, () => tableReaching(lift, settings, theory, largestFlow_m3_s));
}

/** One point a speed, with one set of coefficients. */
export function pointsOn(
  tables: OpeningTables,
  damper: MonotubeInput,
  coefficients: Coefficients,
  speeds_m_s: readonly number[],
): (ForcePoint | FailedForce)[] {
  const valve = (direction: Direction) => valveOn(tables[direction], settingOf(direction, damper, coefficients));
  const valves = { compression: valve('compression'), rebound: valve('rebound') };
  return speeds_m_s.map((v) => monotubePoint(damper, valves, coefficients.airReleasePressure_Pa, v));
}

function settingOf(direction: Direction, damper: MonotubeInput, coefficients: Coefficients): ValveSetting {
  const { fluid, bleed, pistonBand, boreDiameter_m } = damper;
  return {
    valve: damper[direction],
    bleed: bleedPath(bleed, fluid, coefficients),
    leakage: leakagePath(pistonBand, boreDiameter_m, fluid),
    fluid,
    coefficients,
  };
}

function bleedPath(bleed: BleedInput, fluid: FluidState, coefficients: Coefficients): Restriction {
  const { count, diameter_m, needle } = bleed;
  if (count === 0 || needle?.travel_m === 0) return closedPath;
  const hole = drilledHole(roundHoles(bleed), fluid, coefficients);
  const gap = needle && needleGap({ holeDiameter_m: diameter_m, ...needle }, fluid, coefficients.sharpEdgeDischarge);
  return gap ? series(hole, gap) : hole;
}

function leakagePath(band: PistonBandInput | undefined, boreDiameter_m: number, fluid: FluidState): Restriction {
  return band ? annularGap({ outerDiameter_m: boreDiameter_m, ...band }, fluid) : closedPath;
}

/** A refusal of the stack solver names its place in the stack; here it also names the valve. */
function inPlace<Result>(place: string, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError({ ...error.fault, path: `${place}.stack.${error.fault.path}` });
  }
}
