/** Sizes of the valves out of a document, in metres, for the calculation by hand. */
import type { Bleed, Poppet, Ports, Project, ValvePlace } from '../../../src/model/project.ts';
import type { CoilSpring, ShimRow, Float as StackFloat } from '../../../src/model/stack.ts';
import type { HandCheck } from './check.ts';
import type { Hole } from './flow.ts';
import type { PoppetSizes } from './poppet.ts';
import type { Plate } from './roark.ts';
import type { HandStack } from './stack.ts';
import type { HandBleed, HandValve } from './valve.ts';

export const metres = (mm: number): number => mm / 1000;
export const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
const perMetre = (rate_N_mm: number): number => rate_N_mm * 1000;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export function stockBuild({ builds, baselineBuild }: Project) {
  const build = builds.find(({ id }) => id === baselineBuild);
  if (!build) throw new Error(`no build is called ${baselineBuild}`);
  return build;
}

function valveAt(project: Project, place: ValvePlace) {
  const build = stockBuild(project);
  const [valving, body] = [build.valves[place], project.damper.valves[place]];
  const bleed = place === 'baseCompression' ? build.baseBleed : build.bleed;
  if (!valving || !body || !bleed) throw new Error(`no valve ${place}`);
  return { valving, body, bleed };
}

export function handStack(project: Project, place: ValvePlace): HandStack {
  const { valving, body } = valveAt(project, place);
  const { pressureZone, seat } = body;
  const { coilSpring } = valving;
  if (valving.backingPlate) throw new Error('a backing plate is not worked out here');
  const [face, ...rest] = valving.shims.map((shim) => plateOf(shim, valving.clampDiameter_mm));
  return {
    face,
    rest,
    zoneFrom: metres(pressureZone.innerDiameter_mm) / 2,
    zoneTo: metres(seat.innerDiameter_mm + seat.outerDiameter_mm) / 4,
    r1: metres(seat.innerDiameter_mm) / 2,
    ...(coilSpring && {
      coil: {
        radius: metres(coilSpring.diameter_mm) / 2,
        rate: perMetre(coilSpring.rate_N_mm),
        preload: preloadLeft(coilSpring),
      },
    }),
  };
}

function plateOf(shim: ShimRow, clampDiameter_mm: number): Plate {
  const { outerDiameter_mm, thickness_mm, count = 1, innerDiameter_mm, dish_mm, notches } = shim;
  if (innerDiameter_mm || dish_mm || notches) throw new Error('rings, dishes and notches are not worked out here');
  return {
    name: `${outerDiameter_mm} × ${thickness_mm}${count > 1 ? ` × ${count}` : ''}`,
    a: metres(outerDiameter_mm) / 2,
    b: metres(clampDiameter_mm) / 2,
    t: metres(thickness_mm),
    count,
  };
}

export function handValve(project: Project, place: ValvePlace, kappa: number, pressed: number): HandValve {
  const { valving, body, bleed } = valveAt(project, place);
  const { zoneFrom, zoneTo, r1 } = handStack(project, place);
  const { float } = valving;
  return {
    bleed: handBleed(bleed),
    ...besidePiston(project, place),
    ports: portHoles(body.ports),
    phi: body.ports.coveredFraction ?? 1,
    land: { r1, r2: metres(Math.min(body.seat.outerDiameter_mm, valving.shims[0].outerDiameter_mm)) / 2 },
    kappa,
    seat: metres(valving.seatHeight_mm),
    pressed,
    ...(float && { float: { ...floatOf(float), area: Math.PI * (zoneTo ** 2 - zoneFrom ** 2) } }),
  };
}

/** The clearance of the piston, the poppet of the base. */
function besidePiston(project: Project, place: ValvePlace): Pick<HandValve, 'gap' | 'poppet'> {
  const { pistonBand: band, boreDiameter_mm } = project.damper;
  const { basePoppet } = stockBuild(project);
  if (place === 'baseCompression') return basePoppet ? { poppet: poppetOf(basePoppet) } : {};
  if (!band) return {};
  const { clearance_mm, length_mm, eccentricity } = band;
  const [bore, clearance, length] = [boreDiameter_mm, clearance_mm, length_mm].map(metres);
  return { gap: { bore, clearance, length, eccentricity } };
}

const poppetOf = (poppet: Poppet): PoppetSizes => ({
  seatDiameter: metres(poppet.seatDiameter_mm),
  halfAngle: radians(poppet.coneAngle_deg / 2),
  rate: perMetre(poppet.rate_N_mm),
  preload: preloadLeft(poppet),
  travel: metres(poppet.travel_mm),
});

/** What an adjuster, which counts from closed, leaves of the force of its spring at rest [N]. */
function preloadLeft({
  preload_N,
  rate_N_mm,
  adjuster,
}: Pick<CoilSpring, 'preload_N' | 'rate_N_mm' | 'adjuster'>): number {
  return adjuster ? Math.max(preload_N - adjuster.clicks * adjuster.travelPerClick_mm * rate_N_mm, 0) : preload_N;
}

const floatOf = ({ travel_mm, rate_N_mm, preload_N }: StackFloat) => ({
  travel: metres(travel_mm),
  rate: perMetre(rate_N_mm),
  preload: preload_N,
});

function handBleed({ count, diameter_mm, length_mm, needle }: Bleed): HandBleed {
  const diameter = metres(diameter_mm);
  const hole: Hole = { count, area: circle(diameter), diameter, length: metres(length_mm) };
  if (!needle) return { hole };
  const travel = metres(needle.clicks * needle.travelPerClick_mm);
  return { hole, needle: { holeDiameter: diameter, halfAngle: radians(needle.coneAngle_deg / 2), travel } };
}

function portHoles({ count, diameter_mm, area_mm2, length_mm }: Ports): Hole {
  const diameter = diameter_mm === undefined ? Math.sqrt((4 * (area_mm2 ?? 0)) / Math.PI) : diameter_mm;
  return { count, area: circle(metres(diameter)), diameter: metres(diameter), length: metres(length_mm) };
}

export function handCheck(project: Project): HandCheck {
  const check = project.damper.refillCheck;
  const { baseBleed } = stockBuild(project);
  if (!check || !baseBleed) throw new Error('no refill check beside a bleed');
  return {
    bleed: handBleed(baseBleed),
    ports: portHoles(check.ports),
    land: { r1: metres(check.seat.innerDiameter_mm) / 2, r2: metres(check.seat.outerDiameter_mm) / 2 },
    rate: perMetre(check.rate_N_mm),
    preload: check.preload_N,
    travel: metres(check.travel_mm),
  };
}
