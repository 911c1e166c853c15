/**
 * Viscosity index from the viscosities at 40 and 100 °C, and the viscosity at 100 °C from the other two.
 *   index <= 100:  VI = 100 (L - U) / (L - H)
 *   index >  100:  VI = 100 + (10^N - 1) / 0.00715,   N = log10(H / U) / log10 Y
 * Source: ASTM D2270 / ISO 2909, procedures A and B. Not defined for Y below 2 mm2/s.
 * The quadratics for L and H do not meet exactly (steps up to 0.13 %), so an index is good to about one unit.
 *
 * symbol  unit    meaning
 * U       mm2/s   viscosity at 40 °C
 * Y       mm2/s   viscosity at 100 °C
 * L, H    mm2/s   viscosity at 40 °C of the oils of index 0 and 100 that share Y
 * N       -       exponent of procedure B
 */
import { InputError } from '../../units/fault.ts';
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { REFERENCE_ROWS } from './viscosity-index-table.ts';

/** Thinnest oil at 100 °C for which the index is defined [mm2/s]. */
const THINNEST_AT_100 = REFERENCE_ROWS[0].from;

/**
 * Viscosity index [-], not rounded, of an oil with U at 40 °C and Y at 100 °C [mm2/s].
 * @throws InputError `fluid.viscosity-index.thin` for Y < 2 mm2/s, `fluid.viscosity-index.not-falling` for U <= Y.
 */
export function viscosityIndex(U: number, Y: number): number {
  if (!(Y >= THINNEST_AT_100)) throw tooThin(`${Y} mm2/s at 100 °C`);
  if (!(U > Y)) {
    const wanted = `more than ${Y} mm2/s, its value at 100 °C`;
    throw fault('fluid.viscosity-index.not-falling', `${U} mm2/s at 40 °C`, wanted);
  }
  const { L, H } = referenceOils(Y);
  if (U >= H) return (100 * (L - U)) / (L - H);
  const N = Math.log10(H / U) / Math.log10(Y);
  return 100 + (10 ** N - 1) / 0.00715;
}

/**
 * Viscosity at 100 °C [mm2/s] of an oil with U at 40 °C [mm2/s] and a viscosity index: one printed point and the index
 * then serve as two points. Solved for Y between 2 mm2/s and U.
 * @throws InputError `fluid.viscosity-index.range`, `fluid.viscosity-index.thin` when Y would lie below 2 mm2/s.
 */
export function viscosityAt100(U: number, index: number): number {
  if (!Number.isFinite(index)) throw fault('fluid.viscosity-index.range', `an index of ${index}`, 'a finite index');
  const excess = (Y: number) => viscosityAt40(Y, index) - U;
  if (!(excess(THINNEST_AT_100) <= 0)) throw tooThin(`${U} mm2/s at 40 °C with an index of ${index}`);
  const root = bracketedRoot(excess, THINNEST_AT_100, U);
  if (root.status === 'converged') return root.value;
  throw fault('fluid.viscosity-index.range', `${U} mm2/s at 40 °C with an index of ${index}`, 'an oil that can exist');
}

/** U of the oil of a given index that has Y at 100 °C: both procedures solved for U. */
function viscosityAt40(Y: number, index: number): number {
  const { L, H } = referenceOils(Y);
  if (index <= 100) return L - (index / 100) * (L - H);
  const N = Math.log10(1 + 0.00715 * (index - 100));
  return H / Y ** N;
}

function referenceOils(Y: number): { L: number; H: number } {
  const row = REFERENCE_ROWS.filter(({ from }) => Y >= from).at(-1) ?? REFERENCE_ROWS[0];
  const at = ([a, b, c]: readonly [number, number, number]) => (a * Y + b) * Y + c;
  return { L: at(row.L), H: at(row.H) };
}

const tooThin = (got: string) =>
  fault(
    'fluid.viscosity-index.thin',
    got,
    `an oil of at least ${THINNEST_AT_100} mm2/s at 100 °C; give two points instead`,
  );

const fault = (code: string, got: string, wanted: string) =>
  new InputError({ code, path: 'fluid.viscosity', got, wanted });
