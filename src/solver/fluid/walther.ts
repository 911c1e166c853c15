/**
 * Kinematic viscosity against temperature by the double-logarithmic law of ASTM D341 (Walther):
 *   log10 log10 Z = A - B log10 T,   Z = nu + 0.7 + exp(-1.47 - 1.84 nu - 0.51 nu^2)
 * and back: nu = (Z - 0.7) - exp[-0.7487 - 3.295 (Z-0.7) + 0.6119 (Z-0.7)^2 - 0.3193 (Z-0.7)^3].
 * The exponentials matter below 2 mm2/s only; they are kept at every viscosity so that the law has no step there.
 * Source: ASTM D341, excerpt. Kelvin offset 273.15. Holds for liquid petroleum and similar oils above the cloud point,
 * 0.21 to 2e7 mm2/s (range from memory). Left out: viscosity rises with pressure, +3 to +9 % at 2 to 5 MPa.
 *
 * symbol  unit    meaning
 * nu      mm2/s   kinematic viscosity (1 mm2/s = 1 cSt)
 * T       K       absolute temperature
 * Z       -       nu + 0.7 and a correction for thin oils
 * A, B    -       the two constants of one oil
 */
import { InputError } from '../../units/fault.ts';
import { celsiusFromKelvin } from '../../units/si.ts';

export interface ViscosityAt {
  readonly temperature_K: number;
  readonly kinematicViscosity_mm2_s: number;
}

export interface WaltherLaw {
  readonly A: number;
  readonly B: number;
}

/** Thinnest oil for which the low branch is defined [mm2/s]. */
const THINNEST_MM2_S = 0.21;
/** Thickest oil of the standard; long before, it no longer flows [mm2/s]. */
const THICKEST_MM2_S = 2e7;

/**
 * The law through two measured points.
 * @throws InputError `fluid.viscosity.thin`, `fluid.temperature.not-positive`, `fluid.temperature.equal`,
 *   `fluid.viscosity.not-falling` (a warmer oil is never thicker).
 */
export function waltherLaw(first: ViscosityAt, second: ViscosityAt): WaltherLaw {
  const [cold, warm] = first.temperature_K <= second.temperature_K ? [first, second] : [second, first];
  for (const point of [cold, warm]) requirePoint(point);
  requireOrder(cold, warm);
  const [wCold, wWarm] = [logLogZ(cold.kinematicViscosity_mm2_s), logLogZ(warm.kinematicViscosity_mm2_s)];
  const [tCold, tWarm] = [Math.log10(cold.temperature_K), Math.log10(warm.temperature_K)];
  const B = (wCold - wWarm) / (tWarm - tCold);
  return { A: wCold + B * tCold, B };
}

/**
 * Kinematic viscosity [mm2/s] at a temperature [K].
 * @throws InputError `fluid.temperature.out-of-range` where the law gives less than 0.21 or more than 2e7 mm2/s.
 */
export function kinematicViscosity({ A, B }: WaltherLaw, T: number): number {
  const nu = viscosityOf(10 ** (10 ** (A - B * Math.log10(T))));
  if (nu >= THINNEST_MM2_S && nu <= THICKEST_MM2_S) return nu;
  // In great cold the double power runs out of numbers.
  const limit = nu < THINNEST_MM2_S ? `at least ${THINNEST_MM2_S}` : `at most ${THICKEST_MM2_S}`;
  throw new InputError({
    code: 'fluid.temperature.out-of-range',
    path: 'fluid.temperature_degC',
    got: `${Number(celsiusFromKelvin(T).toPrecision(6))} °C`,
    wanted: `a temperature at which the oil, by its law, has ${limit} mm2/s`,
  });
}

function logLogZ(nu: number): number {
  const Z = nu + 0.7 + Math.exp(-1.47 - 1.84 * nu - 0.51 * nu ** 2);
  return Math.log10(Math.log10(Z));
}

function viscosityOf(Z: number): number {
  const y = Z - 0.7;
  return y - Math.exp(-0.7487 - 3.295 * y + 0.6119 * y ** 2 - 0.3193 * y ** 3);
}

function requirePoint({ temperature_K, kinematicViscosity_mm2_s: nu }: ViscosityAt): void {
  if (!(temperature_K > 0 && Number.isFinite(temperature_K))) {
    throw fault('fluid.temperature.not-positive', `${temperature_K}`, 'an absolute temperature above 0', 'K');
  }
  if (!(nu >= THINNEST_MM2_S && Number.isFinite(nu))) {
    throw fault('fluid.viscosity.thin', `${nu}`, `at least ${THINNEST_MM2_S}`, 'mm2/s');
  }
}

function requireOrder(cold: ViscosityAt, warm: ViscosityAt): void {
  if (cold.temperature_K === warm.temperature_K) {
    throw fault('fluid.temperature.equal', `${warm.temperature_K} twice`, 'two different temperatures', 'K');
  }
  if (warm.kinematicViscosity_mm2_s >= cold.kinematicViscosity_mm2_s) {
    const [nuCold, nuWarm] = [cold.kinematicViscosity_mm2_s, warm.kinematicViscosity_mm2_s];
    throw fault('fluid.viscosity.not-falling', `${nuWarm} warm`, `less than the ${nuCold} of the cold oil`, 'mm2/s');
  }
}

const fault = (code: string, got: string, wanted: string, unit: string) =>
  new InputError({ code, path: 'fluid.viscosity.points', got, wanted, unit });
