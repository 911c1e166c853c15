/** Sizes out of a document, in metres, for the calculation by hand. */
import type { Bleed, Ports, Project, ShimRow, ValvePlace } from '../../../src/model/project.ts';
import type { Hole, NeedleSizes, Oil } from './flow.ts';
import type { Plate } from './roark.ts';
import { newSheet, type Sheet } from './sheet.ts';
import type { HandStack } from './stack.ts';
import type { HandValve } from './valve.ts';

const metres = (mm: number): number => mm / 1000;
const circle = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

export function stockBuild({ builds, baselineBuild }: Project) {
  const build = builds.find(({ id }) => id === baselineBuild);
  if (!build) throw new Error(`no build is called ${baselineBuild}`);
  return build;
}

export function handStack(project: Project, place: ValvePlace): HandStack {
  const valving = stockBuild(project).valves[place];
  const body = project.damper.valves[place];
  if (!valving || !body) throw new Error(`no valve ${place}`);
  const { pressureZone, seat } = body;
  const plate = ({ outerDiameter_mm, thickness_mm, count = 1 }: ShimRow): Plate => ({
    name: `${outerDiameter_mm} × ${thickness_mm}${count > 1 ? ` × ${count}` : ''}`,
    a: metres(outerDiameter_mm) / 2,
    b: metres(valving.clampDiameter_mm) / 2,
    t: metres(thickness_mm),
    count,
  });
  const [face, ...rest] = valving.shims.map(plate);
  return {
    face,
    rest,
    zoneFrom: metres(pressureZone.innerDiameter_mm) / 2,
    zoneTo: metres(seat.innerDiameter_mm + seat.outerDiameter_mm) / 4,
    r1: metres(seat.innerDiameter_mm) / 2,
  };
}

export function handValve(project: Project, place: ValvePlace, kappa: number): HandValve {
  const build = stockBuild(project);
  const body = project.damper.valves[place];
  const valving = build.valves[place];
  const bleed = place === 'baseCompression' ? build.baseBleed : build.bleed;
  if (!body || !valving || !bleed) throw new Error(`no valve ${place}`);
  const { innerDiameter_mm, outerDiameter_mm } = body.seat;
  return {
    bleed: bleedHole(bleed),
    ...(bleed.needle && { needle: needleSizes(bleed) }),
    ports: portHoles(body.ports),
    land: {
      r1: metres(innerDiameter_mm) / 2,
      r2: metres(Math.min(outerDiameter_mm, valving.shims[0].outerDiameter_mm)) / 2,
    },
    kappa,
    seat: metres(valving.seatHeight_mm) - metres(valving.float?.travel_mm ?? 0),
  };
}

const bleedHole = ({ count, diameter_mm, length_mm }: Bleed): Hole => ({
  count,
  area: circle(metres(diameter_mm)),
  diameter: metres(diameter_mm),
  length: metres(length_mm),
});

function needleSizes({ diameter_mm, needle }: Bleed): NeedleSizes {
  if (!needle) throw new Error('no needle');
  return {
    holeDiameter: metres(diameter_mm),
    halfAngle: (needle.coneAngle_deg * Math.PI) / 360,
    travel: metres(needle.clicks * needle.travelPerClick_mm),
  };
}

export function portHoles({ count, diameter_mm, area_mm2, length_mm }: Ports): Hole {
  const diameter = diameter_mm === undefined ? Math.sqrt((4 * (area_mm2 ?? 0)) / Math.PI) : diameter_mm;
  return { count, area: circle(metres(diameter)), diameter: metres(diameter), length: metres(length_mm) };
}

export interface Areas {
  readonly A_p: number;
  readonly A_r: number;
  /** Of what leaves the gas. */
  readonly A_g: number;
}

export function areasOf({ damper }: Project, { put }: Sheet): Areas {
  const A_p = put('A_p', 'bore', circle(metres(damper.boreDiameter_mm)), 'mm²');
  const A_r = put('A_r', 'rod', circle(metres(damper.rodDiameter_mm)), 'mm²');
  const leg_mm = damper.layout === 'cartridge' ? damper.legDiameter_mm : undefined;
  const A_g = leg_mm === undefined ? A_r : put('A_g', 'leg at its seal', circle(metres(leg_mm)), 'mm²');
  put('A_p − A_r', '', A_p - A_r, 'mm²');
  return { A_p, A_r, A_g };
}

const ATMOSPHERE_PA = 101325;

/** Gas at mid-stroke: p V^n with absolute p. */
export function gasForce(project: Project, { A_g }: Areas, { put }: Sheet): number {
  const { gas, damper } = project;
  const half = metres(damper.travel_mm) / 2;
  const p0 = gas.gaugePressure_bar * 1e5 + ATMOSPHERE_PA;
  const V0 = gas.airGap ? airGap(project, A_g) : (gas.volume_mL ?? 0) * 1e-6;
  put('V₀', gas.airGap ? '(π/4) D² · level − what comes in + A_g · travel' : 'gas at full extension', V0, 'mL');
  const V = put('V', 'V₀ − A_g · half the travel', V0 - A_g * half, 'mL');
  const p = put('p_gas', 'p₀ (V₀/V)ⁿ, absolute', p0 * (V0 / V) ** gas.polytropicExponent, 'MPa');
  return put('F_gas', '(p_gas − 0.101325 MPa) A_g', (p - ATMOSPHERE_PA) * A_g, 'N');
}

function airGap({ gas, damper }: Project, A_g: number): number {
  const { level_mm = 0, tubeDiameter_mm = 0, insertedVolume_mL = 0 } = gas.airGap ?? {};
  const compressed = circle(metres(tubeDiameter_mm)) * metres(level_mm) - insertedVolume_mL * 1e-6;
  return compressed + A_g * metres(damper.travel_mm);
}

export function frictionAt({ damper }: Project, speed: number): number {
  const { sealFriction_N: slow, frictionLaw: law } = damper;
  if (!law) return slow;
  const { breakaway_N, stribeckSpeed_m_s, viscous_N_s_m } = law;
  return slow + (breakaway_N - slow) * Math.exp(-((speed / stribeckSpeed_m_s) ** 2)) + viscous_N_s_m * speed;
}

/** Oil of a two-point data sheet: a straight line in log log (nu + 0.7) over log T, and the fall of density with temperature. */
export function oilByHand({ fluid }: Project): { oil: Oil; sheet: Sheet } {
  const sheet = newSheet();
  const { viscosity, densityAt15_kg_m3, temperature_degC } = fluid;
  if (viscosity.kind !== 'two-point') throw new Error('an oil of two points is wanted');
  const [p, q] = viscosity.points.map((point) => ({
    x: Math.log10(point.temperature_degC + 273.15),
    y: Math.log10(Math.log10(point.kinematicViscosity_cSt + 0.7)),
  }));
  const B = sheet.put(
    'B',
    '[loglog(ν₁ + 0.7) − loglog(ν₂ + 0.7)]/[log T₂ − log T₁], T in K',
    (p.y - q.y) / (q.x - p.x),
    '',
  );
  const x = Math.log10(temperature_degC + 273.15);
  const y = sheet.put('y', 'loglog(ν₁ + 0.7) − B (log T − log T₁)', p.y - B * (x - p.x), '');
  const nu = sheet.put('ν', '10^(10^y) − 0.7', (10 ** (10 ** y) - 0.7) * 1e-6, 'mm²/s');
  return { oil: { nu, density: densityByHand(densityAt15_kg_m3, temperature_degC, sheet, nu) }, sheet };
}

function densityByHand(at15: number, temperature: number, { put }: Sheet, nu: number): number {
  const x = (0.6278 / at15) * (temperature - 15);
  const density = put(
    'ρ',
    'ρ₁₅ e^[−x(1 + 0.8x)], x = 0.6278 (θ − 15)/ρ₁₅',
    at15 * Math.exp(-x * (1 + 0.8 * x)),
    'kg/m³',
  );
  put('μ', 'ρν', density * nu, 'mPa·s');
  return density;
}
