/** Refuses dampers that the equations cannot describe. Stacks are checked where they are solved. */
import { checkBleed, checkPoppet, checkRefill, checkValve } from './check-valves.ts';
import { damperFault, requireNotNegative, requirePositive } from './damper-fault.ts';
import type { DamperInput, FrictionInput, GasInput, HydraulicStopInput, PistonBandInput } from './types.ts';

/** @throws InputError `damper.not-positive`, `damper.negative`, `damper.rod.beyond-bore`, `damper.base.*`, `damper.stroke`,
 * `damper.hydraulic-stop.*`, `damper.piston-band.*`, `damper.speed.not-finite`, and those of `check-valves.ts`. */
export function checkDamper(damper: DamperInput, speeds_m_s: readonly number[]): void {
  checkSizes(damper);
  requirePositive('fluid.density_kg_m3', damper.fluid.density_kg_m3, 'kg/m3');
  requirePositive('fluid.dynamicViscosity_Pa_s', damper.fluid.dynamicViscosity_Pa_s, 'Pa s');
  checkGas(damper.gas);
  checkFriction(damper.friction);
  checkValve('compression', damper.compression);
  checkValve('rebound', damper.rebound);
  checkBleed('bleed', damper.bleed);
  if (damper.pistonBand) checkPistonBand(damper.pistonBand, damper.boreDiameter_m);
  checkBase(damper);
  if (damper.hydraulicStop) checkStop(damper.hydraulicStop, damper);
  for (const [i, v] of speeds_m_s.entries()) {
    if (!Number.isFinite(v))
      throw damperFault('damper.speed.not-finite', `speeds_m_s[${i}]`, v, 'a finite speed', 'm/s');
  }
}

function checkSizes(damper: DamperInput): void {
  const { boreDiameter_m, rodDiameter_m, legDiameter_m, travel_m, stroke_m, endClearance_m } = damper;
  requirePositive('boreDiameter_m', boreDiameter_m, 'm');
  requirePositive('rodDiameter_m', rodDiameter_m, 'm');
  requirePositive('travel_m', travel_m, 'm');
  requirePositive('endClearance_m', endClearance_m, 'm');
  if (legDiameter_m !== undefined) requirePositive('legDiameter_m', legDiameter_m, 'm');
  if (!(rodDiameter_m < boreDiameter_m)) {
    throw damperFault(
      'damper.rod.beyond-bore',
      'rodDiameter_m',
      rodDiameter_m,
      `less than the bore, ${boreDiameter_m}`,
      'm',
    );
  }
  if (!(stroke_m >= 0 && stroke_m <= travel_m)) {
    throw damperFault('damper.stroke', 'stroke_m', stroke_m, `from 0 to the travel, ${travel_m}`, 'm');
  }
}

function checkGas({ absolutePressure_Pa, volume_m3, separatorFriction_Pa }: GasInput): void {
  requirePositive('gas.absolutePressure_Pa', absolutePressure_Pa, 'Pa');
  requirePositive('gas.volume_m3', volume_m3, 'm3');
  requireNotNegative('gas.separatorFriction_Pa', separatorFriction_Pa, 'Pa');
}

function checkFriction({ sliding_N, breakaway_N, stribeckSpeed_m_s, viscous_N_s_m }: FrictionInput): void {
  requireNotNegative('friction.sliding_N', sliding_N, 'N');
  requireNotNegative('friction.breakaway_N', breakaway_N, 'N');
  requirePositive('friction.stribeckSpeed_m_s', stribeckSpeed_m_s, 'm/s');
  requireNotNegative('friction.viscous_N_s_m', viscous_N_s_m, 'N s/m');
}

/** The oil that the rod displaces needs a way to the gas: none but the monotube has the gas in its tube. */
function checkBase({ layout, base }: DamperInput): void {
  if (layout === 'monotube' && base)
    throw damperFault('damper.base.of-monotube', 'base', 'a base valve', 'none, since the gas is in the tube', '');
  if (layout !== 'monotube' && !base)
    throw damperFault('damper.base.none', 'base', 'none', `the base valve of a ${layout}`, '');
  if (!base) return;
  checkValve('base.compression', base.compression);
  if (base.bleed) checkBleed('base.bleed', base.bleed);
  if (base.poppet) checkPoppet('base.poppet', base.poppet);
  checkRefill('base.refill', base.refill);
}

function checkStop({ end, length_m, plungerDiameter_m, clearance_m }: HydraulicStopInput, damper: DamperInput): void {
  requirePositive('hydraulicStop.length_m', length_m, 'm');
  requirePositive('hydraulicStop.plungerDiameter_m', plungerDiameter_m, 'm');
  requirePositive('hydraulicStop.clearance_m', clearance_m, 'm');
  if (!(length_m <= damper.travel_m)) {
    const wanted = `at most the travel, ${damper.travel_m}`;
    throw damperFault('damper.hydraulic-stop.beyond-travel', 'hydraulicStop.length_m', length_m, wanted, 'm');
  }
  if (end === 'rebound' && !(plungerDiameter_m > damper.rodDiameter_m)) {
    const wanted = `more than the rod that passes through it, ${damper.rodDiameter_m}`;
    throw damperFault(
      'damper.hydraulic-stop.within-rod',
      'hydraulicStop.plungerDiameter_m',
      plungerDiameter_m,
      wanted,
      'm',
    );
  }
  if (!(plungerDiameter_m < damper.boreDiameter_m)) {
    const wanted = `less than the bore, ${damper.boreDiameter_m}`;
    throw damperFault(
      'damper.hydraulic-stop.beyond-bore',
      'hydraulicStop.plungerDiameter_m',
      plungerDiameter_m,
      wanted,
      'm',
    );
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
    throw damperFault('damper.piston-band.too-loose', 'pistonBand.clearance_m', clearance_m, wanted, 'm');
  }
  if (!(eccentricity >= 0 && eccentricity <= 1)) {
    throw damperFault('damper.piston-band.eccentricity', 'pistonBand.eccentricity', eccentricity, 'from 0 to 1', '');
  }
}
