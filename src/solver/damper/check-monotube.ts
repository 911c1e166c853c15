/** Refuses dampers that the equations cannot describe. Stacks are checked where they are solved. */
import { InputError } from '../../units/fault.ts';
import type { BleedInput, MonotubeInput, NeedleInput, NotchesInput, PistonBandInput, ValveInput } from './types.ts';

/** @throws InputError `damper.not-positive`, `damper.negative`, `damper.rod.beyond-bore`, `bleed.count`, `bleed.needle.*`, `valve.shim.below-seat`, `valve.notches.*`,
 * `damper.piston-band.too-loose`, `damper.piston-band.eccentricity`, `damper.speed.not-finite`. */
export function checkMonotube(damper: MonotubeInput, speeds_m_s: readonly number[]): void {
  requirePositive('boreDiameter_m', damper.boreDiameter_m, 'm');
  requirePositive('rodDiameter_m', damper.rodDiameter_m, 'm');
  requirePositive('fluid.density_kg_m3', damper.fluid.density_kg_m3, 'kg/m3');
  requirePositive('fluid.dynamicViscosity_Pa_s', damper.fluid.dynamicViscosity_Pa_s, 'Pa s');
  requirePositive('gas.absolutePressure_Pa', damper.gas.absolutePressure_Pa, 'Pa');
  requireNotNegative('sealFriction_N', damper.sealFriction_N, 'N');
  if (!(damper.rodDiameter_m < damper.boreDiameter_m)) {
    const wanted = `less than the bore, ${damper.boreDiameter_m}`;
    throw fault('damper.rod.beyond-bore', 'rodDiameter_m', damper.rodDiameter_m, wanted, 'm');
  }
  checkValve('compression', damper.compression);
  checkValve('rebound', damper.rebound);
  checkBleed(damper.bleed);
  if (damper.pistonBand) checkPistonBand(damper.pistonBand, damper.boreDiameter_m);
  for (const [i, v] of speeds_m_s.entries()) {
    if (!Number.isFinite(v)) throw fault('damper.speed.not-finite', `speeds_m_s[${i}]`, v, 'a finite speed', 'm/s');
  }
}

function checkValve(place: string, { ports, notches, stack }: ValveInput): void {
  requirePositive(`${place}.ports.count`, ports.count, '');
  requirePositive(`${place}.ports.area_m2`, ports.area_m2, 'm2');
  requirePositive(`${place}.ports.hydraulicDiameter_m`, ports.hydraulicDiameter_m, 'm');
  requireNotNegative(`${place}.ports.length_m`, ports.length_m, 'm');
  const face = stack.shims.at(0)?.outerRadius_m;
  if (face !== undefined && !(face > stack.seat.innerRadius_m)) {
    const wanted = `more than the inner radius of the seat, ${stack.seat.innerRadius_m}`;
    throw fault('valve.shim.below-seat', `${place}.stack.shims[0].outerRadius_m`, face, wanted, 'm');
  }
  if (notches && face !== undefined) checkNotches(`${place}.notches`, notches, face);
}

/** Notches that take more of the rim would change how the shim bends, which the plates do not know. */
const NOTCHED_SHARE = 0.25;

function checkNotches(path: string, { count, width_m }: NotchesInput, rim_m: number): void {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw fault('valve.notches.count', `${path}.count`, count, 'a whole number of at least 1', '');
  }
  requirePositive(`${path}.width_m`, width_m, 'm');
  const widest = (NOTCHED_SHARE * 2 * Math.PI * rim_m) / count;
  if (width_m > widest * (1 + 1e-9)) {
    throw fault('valve.notches.too-wide', `${path}.width_m`, width_m, `a quarter of the rim in all, ${widest}`, 'm');
  }
}

function checkBleed({ count, diameter_m, length_m, needle }: BleedInput): void {
  if (!(Number.isInteger(count) && count >= 0)) {
    throw fault('bleed.count', 'bleed.count', count, 'a whole number of at least 0', '');
  }
  if (count === 0) return;
  requirePositive('bleed.diameter_m', diameter_m, 'm');
  requireNotNegative('bleed.length_m', length_m, 'm');
  if (needle) checkNeedle(needle, count);
}

function checkNeedle({ coneAngle_rad, travel_m }: NeedleInput, holes: number): void {
  if (holes !== 1) throw fault('bleed.needle.one-hole', 'bleed.count', holes, '1, since a needle closes one hole', '');
  requireNotNegative('bleed.needle.travel_m', travel_m, 'm');
  if (!(coneAngle_rad > 0 && coneAngle_rad < Math.PI)) {
    throw fault('bleed.needle.cone', 'bleed.needle.coneAngle_rad', coneAngle_rad, 'between 0 and pi', 'rad');
  }
}

/** The gap counts as narrow up to this share of the bore. */
const LOOSEST_SHARE = 0.05;

function checkPistonBand({ clearance_m, length_m, eccentricity }: PistonBandInput, bore_m: number): void {
  requirePositive('pistonBand.clearance_m', clearance_m, 'm');
  requirePositive('pistonBand.length_m', length_m, 'm');
  const widest = LOOSEST_SHARE * bore_m;
  if (clearance_m > widest * (1 + 1e-9)) {
    const wanted = `at most a twentieth of the bore, ${widest}`;
    throw fault('damper.piston-band.too-loose', 'pistonBand.clearance_m', clearance_m, wanted, 'm');
  }
  if (!(eccentricity >= 0 && eccentricity <= 1)) {
    throw fault('damper.piston-band.eccentricity', 'pistonBand.eccentricity', eccentricity, 'from 0 to 1', '');
  }
}

function requirePositive(path: string, value: number, unit: string): void {
  if (!(value > 0 && Number.isFinite(value))) throw fault('damper.not-positive', path, value, 'more than 0', unit);
}

function requireNotNegative(path: string, value: number, unit: string): void {
  if (!(value >= 0 && Number.isFinite(value))) throw fault('damper.negative', path, value, '0 or more', unit);
}

const fault = (code: string, path: string, got: number, wanted: string, unit: string) =>
  new InputError({ code, path, got: String(got), wanted, ...(unit && { unit }) });
