/**
 * The valves of a damper: the tables of its stacks, which know no coefficient, and the valves that stand on them with one set of
 * coefficients.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */
import { InputError } from '../../units/fault.ts';
import { annularGap } from '../restriction/annular-gap.ts';
import { checkPlate } from '../restriction/check-plate.ts';
import { closedPath } from '../restriction/closed.ts';
import type { Coefficients } from '../restriction/coefficients.ts';
import { drilledHole } from '../restriction/drilled-hole.ts';
import { needleGap } from '../restriction/needle.ts';
import { poppet } from '../restriction/poppet.ts';
import { roundHoles } from '../restriction/round-holes.ts';
import { series } from '../restriction/series.ts';
import type { Restriction } from '../restriction/types.ts';
import { chosenTable, type TableChoice } from '../valve/chosen-table.ts';
import { type FailedValve, type Valve, type ValvePoint, type ValveSetting, valveOn } from '../valve/explicit-valve.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { parallelPaths } from '../valve/parallel-paths.ts';
import type { StackSolver } from '../valve/stack-samples.ts';
import type { DamperValves } from './layouts.ts';
import { pistonAreas } from './piston-areas.ts';
import type {
  BaseInput,
  BleedInput,
  DamperInput,
  FluidState,
  PistonBandInput,
  StackPlace,
  StackTheories,
  ValveInput,
} from './types.ts';

/** One of something for each stack; of the base in a layout with a base valve. */
export type ByStack<Item> = Readonly<Record<'compression' | 'rebound', Item>> & { readonly base?: Item };

export type OpeningTables = ByStack<OpeningTable>;

export interface TableRequest extends TableChoice {
  readonly stacks: StackSolver;
  readonly damper: DamperInput;
  /** Replaces it stack by stack, where it was chosen before. */
  readonly theories?: StackTheories;
  readonly speeds_m_s: readonly number[];
  /** The table reaches every speed with each of them. */
  readonly sets: readonly Coefficients[];
  /** Whether the rebound chamber may open a void, so that the base valve must pass all that the piston presses out. */
  readonly voids: boolean;
}

/** The stacks that a damper has. */
export const stackPlaces = ({ base }: DamperInput): readonly StackPlace[] =>
  base ? ['compression', 'rebound', 'base'] : ['compression', 'rebound'];

/** Made in the order of `stackPlaces`. */
export const eachStack = <Item>(damper: DamperInput, make: (place: StackPlace) => Item): ByStack<Item> =>
  Object.fromEntries(stackPlaces(damper).map((place) => [place, make(place)])) as unknown as ByStack<Item>;

/** @throws Error for the base of a damper without one */
export function valveAt({ compression, rebound, base }: DamperInput, place: StackPlace): ValveInput {
  const valve = { compression, rebound, base: base?.compression }[place];
  if (!valve) throw new Error('a damper without a base valve was asked for it');
  return valve;
}

/** Table of one stack, as far as the fastest speed of its direction. */
export function tableOf(
  place: StackPlace,
  { stacks, damper, theory, marked, theories, speeds_m_s, sets, voids }: TableRequest,
): OpeningTable {
  const sign = place === 'rebound' ? -1 : 1;
  const fastest = Math.max(0, ...speeds_m_s.map((v) => v * sign));
  const { piston_m2, rod_m2, annulus_m2 } = pistonAreas(damper);
  const displaced_m2 = place === 'base' ? (voids ? piston_m2 : rod_m2) : annulus_m2;
  const settings = sets.map((coefficients) => settingOf(place, damper, coefficients));
  const choice = { theory: theories?.[place] ?? theory, marked };
  return inPlace(place, () => chosenTable(stacks, settings, choice, displaced_m2 * fastest));
}

/** The valves with one set of coefficients. */
export function valvesOn(tables: OpeningTables, damper: DamperInput, coefficients: Coefficients): DamperValves {
  const valve = (place: StackPlace, table: OpeningTable) =>
    namedValve(`${place} valve`, valveOn(table, settingOf(place, damper, coefficients)));
  const { base } = damper;
  return {
    compression: valve('compression', tables.compression),
    rebound: valve('rebound', tables.rebound),
    ...(base &&
      tables.base && {
        base: {
          compression: valve('base', tables.base),
          refill: namedValve('refill check', refillValve(base, damper.fluid, coefficients)),
        },
      }),
  };
}

/** A damper has several valves, so a failed one says which it is. */
function namedValve(name: string, { atFlow, atDrop }: Valve): Valve {
  const told = (point: ValvePoint | FailedValve): ValvePoint | FailedValve =>
    point.status === 'converged' ? point : { ...point, reason: `${name}: ${point.reason}` };
  return { atFlow: (Q) => told(atFlow(Q)), atDrop: (dp) => told(atDrop(dp)) };
}

function settingOf(place: StackPlace, damper: DamperInput, coefficients: Coefficients): ValveSetting {
  const { fluid, bleed, pistonBand, boreDiameter_m, base } = damper;
  const common = { valve: valveAt(damper, place), fluid, coefficients };
  if (place === 'base' && base) {
    return {
      ...common,
      bleed: base.bleed ? bleedPath(base.bleed, fluid, coefficients) : closedPath,
      leakage: closedPath,
      ...(base.poppet && { poppet: poppet(base.poppet, fluid, coefficients) }),
    };
  }
  return {
    ...common,
    bleed: bleedPath(bleed, fluid, coefficients),
    leakage: leakagePath(pistonBand, boreDiameter_m, fluid),
  };
}

function refillValve({ refill, bleed }: BaseInput, fluid: FluidState, coefficients: Coefficients) {
  return parallelPaths({
    check: checkPlate(refill, fluid, coefficients),
    ...(bleed && { bleed: bleedPath(bleed, fluid, coefficients) }),
  });
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
function inPlace<Result>(place: StackPlace, run: () => Result): Result {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError({ ...error.fault, path: `${place}.stack.${error.fault.path}` });
  }
}
