/**
 * The one adapter from the project document to solver records: millimetres and diameters become metres and radii,
 * gauge pressure becomes absolute, counts become single shims, clicks become travel and preload. It computes nothing else.
 */
import type { Build, Project, StackFile } from '../model/project.ts';
import { InputError } from '../units/fault.ts';
import { metresFromMillimetres as metres } from '../units/si.ts';
import { type ForceCurveOptions, forceCurve, forcePoints, type PointsByTheory } from './damper/force-curve.ts';
import type { DamperInput, ForceCurve, FrictionInput, HydraulicStopInput, PistonBandInput } from './damper/types.ts';
import { coefficientsWith, damperWith } from './fit/fit-coefficients.ts';
import { fitValuesOf } from './from-model/fit-values.ts';
import { oilFromDocument } from './from-model/fluid.ts';
import { gasFrom } from './from-model/gas.ts';
import { expandShims, radius, ring, springsFrom } from './from-model/stacks.ts';
import { baseFrom, bleedFrom, valveFrom } from './from-model/valves.ts';
import type { SolveHooks, StackInput } from './types.ts';

export { oilFromDocument } from './from-model/fluid.ts';
export { SPRING_STEEL } from './from-model/stacks.ts';

/**
 * Stack file to solver record.
 * @throws InputError `stack.shim.count` when a count is not a whole number of at least 1.
 */
export function stackFromFile(file: StackFile): StackInput {
  const { clampDiameter_mm, shims, pressureZone, seat, material, ports } = file;
  return {
    clampRadius_m: radius(clampDiameter_mm),
    shims: expandShims(shims, material),
    pressureZone: ring(pressureZone),
    ...(seat && { seat: { ...ring(seat), height_m: metres(seat.height_mm) } }),
    ...(ports && { ports: { count: ports.count, coveredFraction: ports.coveredFraction } }),
    ...springsFrom(file),
  };
}

export interface BuildCurveOptions extends ForceCurveOptions {
  readonly speeds_m_s: readonly number[];
  /** Where the piston stands, from full extension [m]; when absent, mid-stroke. */
  readonly stroke_m?: number;
  /** Counts with the fitted values that are kept with the build, in place of the physical ones. */
  readonly fitted?: boolean;
}

/**
 * Force curve of one build of a project, at the oil temperature of the document.
 * @throws InputError as `damperFromProject` and `forceCurve` do; SolveStopped when the caller stops the run
 */
export function forceCurveForBuild(
  project: Project,
  buildId: string,
  { speeds_m_s, stroke_m, fitted, ...options }: BuildCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  const damper = damperFromProject(project, buildId, stroke_m);
  if (!fitted) return forceCurve(damper, speeds_m_s, options, hooks);
  const values = fitValuesOf(findBuild(project, buildId));
  const coefficients = { ...coefficientsWith(values), ...options.coefficients };
  return forceCurve(damperWith(damper, values), speeds_m_s, { ...options, coefficients }, hooks);
}

/** Its points alone with the theories of its stacks, for sweeps. @throws as `forceCurveForBuild` */
export function forcePointsForBuild(
  project: Project,
  buildId: string,
  { speeds_m_s, stroke_m, ...options }: BuildCurveOptions,
  hooks: SolveHooks = {},
): PointsByTheory {
  return forcePoints(damperFromProject(project, buildId, stroke_m), speeds_m_s, options, hooks);
}

/**
 * Damper of one build, at a stroke position; mid-stroke is where a force curve over speed is measured (common practice).
 * @throws InputError `build.unknown`; `damper.base.none`; of the oil laws when the fluid cannot be; those of `gasFrom`
 */
export function damperFromProject(project: Project, buildId: string, stroke_m?: number): DamperInput {
  const { damper } = project;
  const build = findBuild(project, buildId);
  const travel_m = metres(damper.travel_mm);
  const at_m = stroke_m ?? travel_m / 2;
  const { pistonBand, hydraulicStop } = damper;
  const base = baseFrom(damper, build);
  const leg_mm = damper.layout === 'cartridge' ? damper.legDiameter_mm : undefined;
  const sizes = {
    boreDiameter_m: metres(damper.boreDiameter_mm),
    rodDiameter_m: metres(damper.rodDiameter_mm),
    ...(leg_mm !== undefined && { legDiameter_m: metres(leg_mm) }),
    travel_m,
  };
  return {
    layout: damper.layout,
    ...sizes,
    stroke_m: at_m,
    endClearance_m: metres(damper.endClearance_mm ?? END_CLEARANCE_MM),
    friction: frictionFrom(damper),
    compression: valveFrom(damper.valves.pistonCompression, build.valves.pistonCompression),
    rebound: valveFrom(damper.valves.pistonRebound, build.valves.pistonRebound),
    bleed: bleedFrom(build.bleed),
    ...(pistonBand && { pistonBand: bandFrom(pistonBand) }),
    ...(base && { base }),
    ...(hydraulicStop && { hydraulicStop: stopFrom(hydraulicStop) }),
    fluid: oilFromDocument(project.fluid),
    gas: gasFrom(project.gas, sizes, at_m),
  };
}

/** Length of oil left at the ends of the stroke where the document does not say. */
const END_CLEARANCE_MM = 10;

/** @throws InputError `build.unknown` */
export function findBuild({ builds }: Project, buildId: string): Build {
  const build = builds.find(({ id }) => id === buildId);
  if (build) return build;
  const wanted = `one of ${builds.map(({ id }) => id).join(', ')}`;
  throw new InputError({ code: 'build.unknown', path: 'builds', got: buildId, wanted });
}

/** Without a law the seal friction is the same at every speed. */
function frictionFrom({ sealFriction_N, frictionLaw }: Project['damper']): FrictionInput {
  return {
    sliding_N: sealFriction_N,
    breakaway_N: frictionLaw?.breakaway_N ?? sealFriction_N,
    stribeckSpeed_m_s: frictionLaw?.stribeckSpeed_m_s ?? 1,
    viscous_N_s_m: frictionLaw?.viscous_N_s_m ?? 0,
  };
}

function bandFrom(band: NonNullable<Project['damper']['pistonBand']>): PistonBandInput {
  const { clearance_mm, length_mm, eccentricity } = band;
  return { clearance_m: metres(clearance_mm), length_m: metres(length_mm), eccentricity };
}

function stopFrom(stop: NonNullable<Project['damper']['hydraulicStop']>): HydraulicStopInput {
  const { end, length_mm, plungerDiameter_mm, clearance_mm } = stop;
  return {
    end,
    length_m: metres(length_mm),
    plungerDiameter_m: metres(plungerDiameter_mm),
    clearance_m: metres(clearance_mm),
  };
}
