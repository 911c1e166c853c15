/**
 * The one adapter from the project document to solver records: millimetres and diameters become metres and radii,
 * gauge pressure becomes absolute, counts become single shims. It computes nothing else.
 */
import type {
  Bleed,
  Build,
  Fluid,
  Material,
  Project,
  ShimRow,
  StackFile,
  StackSprings,
  ValveBody,
  ValvePlace,
  Valving,
} from '../model/project.ts';
import { InputError } from '../units/fault.ts';
import {
  absoluteFromGauge,
  cubicMetresFromMillilitres,
  kelvinFromCelsius,
  metresFromMillimetres as metres,
  newtonsPerMetreFromNewtonsPerMillimetre as newtonsPerMetre,
  pascalsFromBars,
  pascalsFromGigapascals,
  pascalsFromMegapascals,
  radiansFromDegrees,
  squareMetresFromSquareMillimetres,
} from '../units/si.ts';
import { type ForceCurveOptions, forceCurve } from './damper/force-curve.ts';
import { monotubeAreas } from './damper/monotube.ts';
import type { BleedInput, FluidState, ForceCurve, MonotubeInput, PortsInput, ValveInput } from './damper/types.ts';
import { type GasCharge, gasAtStroke } from './fluid/gas.ts';
import { isoGradeMidpoint } from './fluid/iso-grades.ts';
import { oilAt } from './fluid/oil.ts';
import { viscosityAt100 } from './fluid/viscosity-index.ts';
import { type WaltherLaw, waltherLaw } from './fluid/walther.ts';
import { roundDiameter, roundHoles } from './restriction/round-holes.ts';
import type { ShimInput, SolveHooks, StackInput, Strength } from './types.ts';

/**
 * Spring steel strip where a document names no material: E = 206 GPa, nu = 0.3, the values of DIN 2093 / EN 16984
 * for disc springs (from memory) and common practice for carbon spring strip.
 */
export const SPRING_STEEL: Readonly<Material> = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };

/**
 * Stack file to solver record: diameters halved, counts expanded in order, piston side first.
 * @throws InputError `stack.shim.count` when a count is not a whole number of at least 1.
 */
export function stackFromFile(file: StackFile): StackInput {
  const { clampDiameter_mm, shims, pressureZone, seat, material } = file;
  return {
    clampRadius_m: radius(clampDiameter_mm),
    shims: expandShims(shims, material),
    pressureZone: ring(pressureZone),
    ...(seat && { seat: { ...ring(seat), height_m: metres(seat.height_mm) } }),
    ...springsFrom(file),
  };
}

export interface BuildCurveOptions extends ForceCurveOptions {
  readonly speeds_m_s: readonly number[];
}

/**
 * Force curve of one build of a project, at mid-stroke and at the oil temperature of the document.
 * @throws InputError as `damperFromProject` and `forceCurve` do; SolveStopped when the caller stops the run
 */
export function forceCurveForBuild(
  project: Project,
  buildId: string,
  { speeds_m_s, ...options }: BuildCurveOptions,
  hooks: SolveHooks = {},
): ForceCurve {
  return forceCurve(damperFromProject(project, buildId), speeds_m_s, options, hooks);
}

/**
 * Damper of one build. The gas is taken at mid-stroke, where a force curve over speed is measured (common practice).
 * @throws InputError `build.unknown`; of the oil laws when the fluid cannot be; `gas.volume.too-small` when the rod would
 *   need more than the gas volume at full stroke
 */
export function damperFromProject(project: Project, buildId: string): MonotubeInput {
  const { damper, fluid, gas } = project;
  const build = findBuild(project, buildId);
  const sizes = { boreDiameter_m: metres(damper.boreDiameter_mm), rodDiameter_m: metres(damper.rodDiameter_mm) };
  const travel_m = metres(damper.travel_mm);
  const charge: GasCharge = {
    absolutePressure_Pa: absoluteFromGauge(pascalsFromBars(gas.gaugePressure_bar)),
    volume_m3: cubicMetresFromMillilitres(gas.volume_mL),
    polytropicExponent: gas.polytropicExponent,
  };
  const { rod_m2 } = monotubeAreas(sizes);
  gasAtStroke(charge, rod_m2, travel_m);
  const valve = (place: ValvePlace) => valveFrom(damper.valves[place], build.valves[place]);
  const { pistonBand: band } = damper;
  return {
    layout: damper.layout,
    ...sizes,
    travel_m,
    sealFriction_N: damper.sealFriction_N,
    compression: valve('pistonCompression'),
    rebound: valve('pistonRebound'),
    bleed: bleedFrom(build.bleed),
    ...(band && {
      pistonBand: {
        clearance_m: metres(band.clearance_mm),
        length_m: metres(band.length_mm),
        eccentricity: band.eccentricity,
      },
    }),
    fluid: oilFromDocument(fluid),
    gas: gasAtStroke(charge, rod_m2, travel_m / 2),
  };
}

function findBuild({ builds }: Project, buildId: string): Build {
  const build = builds.find(({ id }) => id === buildId);
  if (build) return build;
  const wanted = `one of ${builds.map(({ id }) => id).join(', ')}`;
  throw new InputError({ code: 'build.unknown', path: 'builds', got: buildId, wanted });
}

function bleedFrom({ count, diameter_mm, length_mm, needle }: Bleed): BleedInput {
  return {
    count,
    diameter_m: metres(diameter_mm),
    length_m: metres(length_mm),
    ...(needle && {
      needle: {
        coneAngle_rad: radiansFromDegrees(needle.coneAngle_deg),
        travel_m: needle.clicks * metres(needle.travelPerClick_mm),
      },
    }),
  };
}

function valveFrom({ ports, pressureZone, seat }: ValveBody, valving: Valving): ValveInput {
  const notches = valving.shims.at(0)?.notches;
  return {
    ports: portsFrom(ports),
    ...(notches && { notches: { count: notches.count, width_m: metres(notches.width_mm) } }),
    stack: {
      clampRadius_m: radius(valving.clampDiameter_mm),
      shims: expandShims(valving.shims, valving.material),
      pressureZone: ring(pressureZone),
      seat: { ...ring(seat), height_m: metres(valving.seatHeight_mm) },
      ...springsFrom(valving),
    },
  };
}

function springsFrom({ backingPlate: plate, coilSpring: coil, float }: StackSprings) {
  const edge_mm = plate?.outerDiameter_mm;
  const spring = (s: { rate_N_mm: number; preload_N: number }) => ({
    rate_N_m: newtonsPerMetre(s.rate_N_mm),
    preload_N: s.preload_N,
  });
  return {
    ...(plate && {
      backingPlate: { gap_m: metres(plate.gap_mm), ...(edge_mm !== undefined && { outerRadius_m: radius(edge_mm) }) },
    }),
    ...(coil && { coilSpring: { radius_m: radius(coil.diameter_mm), ...spring(coil) } }),
    ...(float && { float: { travel_m: metres(float.travel_mm), ...spring(float) } }),
  };
}

/** A port known by its area alone counts as round: its hydraulic diameter is then the largest that the area allows. */
function portsFrom({ count, diameter_mm, area_mm2, length_mm }: ValveBody['ports']): PortsInput {
  const length_m = metres(length_mm);
  if (diameter_mm !== undefined) return roundHoles({ count, diameter_m: metres(diameter_mm), length_m });
  if (area_mm2 !== undefined) {
    const area_m2 = squareMetresFromSquareMillimetres(area_mm2);
    return { count, area_m2, hydraulicDiameter_m: roundDiameter(area_m2), length_m };
  }
  throw new InputError({
    code: 'damper.port.size',
    path: 'damper.valves.ports',
    got: 'neither',
    wanted: 'either diameter_mm or area_mm2',
  });
}

/** Oil of a document at its temperature. @throws InputError of the oil laws when it cannot be */
export function oilFromDocument({ viscosity, densityAt15_kg_m3, temperature_degC }: Fluid): FluidState {
  return oilAt({ viscosity: lawFrom(viscosity), densityAt15_kg_m3 }, kelvinFromCelsius(temperature_degC));
}

function lawFrom(viscosity: Fluid['viscosity']): WaltherLaw {
  const at = (temperature_degC: number, kinematicViscosity_mm2_s: number) => ({
    temperature_K: kelvinFromCelsius(temperature_degC),
    kinematicViscosity_mm2_s,
  });
  if (viscosity.kind === 'two-point') {
    const [first, second] = viscosity.points.map((p) => at(p.temperature_degC, p.kinematicViscosity_cSt));
    return waltherLaw(first, second);
  }
  const U = viscosity.kind === 'iso-grade' ? isoGradeMidpoint(viscosity.isoGrade) : viscosity.kinematicViscosity40_cSt;
  return waltherLaw(at(40, U), at(100, viscosityAt100(U, viscosity.viscosityIndex)));
}

function expandShims(rows: readonly ShimRow[], ofStack: Material = SPRING_STEEL): ShimInput[] {
  return rows.flatMap((row, index) => {
    const shim = shimFrom(row, ofStack);
    return Array.from({ length: wholeCount(row, index) }, () => shim);
  });
}

function shimFrom({ outerDiameter_mm, thickness_mm, ...row }: ShimRow, ofStack: Material): ShimInput {
  const { youngsModulus_GPa, poissonsRatio, ...limits } = row.material ?? ofStack;
  const strength = strengthFrom(limits);
  return {
    outerRadius_m: radius(outerDiameter_mm),
    thickness_m: metres(thickness_mm),
    youngsModulus_Pa: pascalsFromGigapascals(youngsModulus_GPa),
    poissonsRatio,
    ...(row.innerDiameter_mm !== undefined && { innerRadius_m: radius(row.innerDiameter_mm) }),
    ...(row.dish_mm !== undefined && { dish_m: metres(row.dish_mm) }),
    ...(Object.keys(strength).length > 0 && { strength }),
  };
}

function strengthFrom(material: Partial<Material>): Partial<Strength> {
  const { yieldStrength_MPa: Sy, tensileStrength_MPa: Su, enduranceLimit_MPa: Se } = material;
  return {
    ...(Sy !== undefined && { yield_Pa: pascalsFromMegapascals(Sy) }),
    ...(Su !== undefined && { tensile_Pa: pascalsFromMegapascals(Su) }),
    ...(Se !== undefined && { endurance_Pa: pascalsFromMegapascals(Se) }),
  };
}

function wholeCount({ count = 1 }: ShimRow, index: number): number {
  if (Number.isInteger(count) && count >= 1) return count;
  throw new InputError({
    code: 'stack.shim.count',
    path: `shims[${index}].count`,
    got: String(count),
    wanted: 'a whole number of at least 1',
  });
}

const radius = (diameter_mm: number): number => metres(diameter_mm) / 2;

const ring = (zone: { innerDiameter_mm: number; outerDiameter_mm: number }) => ({
  innerRadius_m: radius(zone.innerDiameter_mm),
  outerRadius_m: radius(zone.outerDiameter_mm),
});
