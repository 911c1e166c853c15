/**
 * Oil by hand: a straight line in log log (nu + 0.7) over log T through two points, and the fall of density with temperature.
 * Of an oil known by its viscosity index the point at 100 degrees is taken as the program gives it: what an index means is no matter for a
 * pocket calculator.
 */
import type { Project } from '../../../src/model/project.ts';
import type { Oil } from './flow.ts';
import { newSheet, type Sheet } from './sheet.ts';

interface Point {
  readonly celsius: number;
  /** [mm2/s] */
  readonly nu: number;
}

/** @param nu100  of an oil without a second point, at 100 degrees [mm2/s] */
export function oilByHand({ fluid }: Project, nu100: number): { oil: Oil; sheet: Sheet } {
  const sheet = newSheet();
  const { densityAt15_kg_m3, temperature_degC } = fluid;
  const [p, q] = twoPoints(fluid, nu100, sheet).map(({ celsius, nu }) => ({
    x: Math.log10(celsius + 273.15),
    y: Math.log10(Math.log10(nu + 0.7)),
  }));
  const line = '[loglog(ν₁ + 0.7) − loglog(ν₂ + 0.7)]/[log T₂ − log T₁], T in K';
  const B = sheet.put('B', line, (p.y - q.y) / (q.x - p.x), '');
  const x = Math.log10(temperature_degC + 273.15);
  const y = sheet.put('y', 'loglog(ν₁ + 0.7) − B (log T − log T₁)', p.y - B * (x - p.x), '');
  const nu = sheet.put('ν', '10^(10^y) − 0.7', (10 ** (10 ** y) - 0.7) * 1e-6, 'mm²/s');
  return { oil: { nu, density: densityByHand(densityAt15_kg_m3, temperature_degC, sheet, nu) }, sheet };
}

function twoPoints({ viscosity }: Project['fluid'], nu100: number, { put }: Sheet): readonly Point[] {
  if (viscosity.kind === 'two-point')
    return viscosity.points.map((point) => ({
      celsius: point.temperature_degC,
      nu: point.kinematicViscosity_cSt,
    }));
  const nu40 = viscosity.kind === 'iso-grade' ? viscosity.isoGrade : viscosity.kinematicViscosity40_cSt;
  put('ν₂', 'at 100 °C, as `shimwright fluid` gives it', nu100 * 1e-6, 'mm²/s');
  return [
    { celsius: 40, nu: nu40 },
    { celsius: 100, nu: nu100 },
  ];
}

function densityByHand(at15: number, temperature: number, { put }: Sheet, nu: number): number {
  const x = (0.6278 / at15) * (temperature - 15);
  const from = 'ρ₁₅ e^[−x(1 + 0.8x)], x = 0.6278 (θ − 15)/ρ₁₅';
  const density = put('ρ', from, at15 * Math.exp(-x * (1 + 0.8 * x)), 'kg/m³');
  put('μ', 'ρν', density * nu, 'mPa·s');
  return density;
}
