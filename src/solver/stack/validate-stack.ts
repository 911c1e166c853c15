/**
 * Refuses stacks that the model does not hold for, with the place and the numbers.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | rim | m | largest radius of the shims on the clamp: what pressure zone and seat must lie within |
 */
import { InputError } from '../../units/fault.ts';
import { LEAST_WIDTH } from '../plate/radial-mesh.ts';
import type { ShimInput, StackInput } from '../types.ts';

/** Steepest cone for which shallow-shell strains hold: rise over run. */
const SHALLOW = 0.2;

/** @throws InputError `stack.*` naming the first fault, sizes in mm as diameters */
export function validateStack(stack: StackInput): void {
  const { clampRadius_m, shims, pressureZone, seat } = stack;
  requirePositive(clampRadius_m, 'clampRadius_m', 'm');
  if (shims.length === 0) refuse('stack.empty', 'shims', 'no shim', 'at least one shim');
  shims.forEach((shim, i) => {
    validateShim(shim, `shims[${i}]`, clampRadius_m);
  });
  const clamped = shims.filter(({ innerRadius_m = 0 }) => innerRadius_m <= clampRadius_m);
  if (clamped.length === 0) refuse('stack.nothing-clamped', 'shims', 'only rings', 'at least one shim on the clamp');
  const leastWidth_m = LEAST_WIDTH * (largestRim(shims) - clampRadius_m);
  shims.forEach((shim, i) => {
    requireWidth(shim, `shims[${i}]`, clampRadius_m, leastWidth_m);
  });
  const rim = largestRim(clamped);
  requireRing(pressureZone, 'pressureZone', rim);
  if (pressureZone.outerRadius_m <= clampRadius_m) {
    const got = mm(pressureZone.outerRadius_m);
    refuse('stack.zone.inside-clamp', 'pressureZone.outerRadius_m', got, `over ${mm(clampRadius_m)}`, 'mm');
  }
  if (seat) validateSeat(seat, rim, clampRadius_m + leastWidth_m);
  validateSprings(stack);
}

function largestRim(shims: readonly ShimInput[]): number {
  return Math.max(...shims.map((s) => s.outerRadius_m));
}

function validateSeat(seat: NonNullable<StackInput['seat']>, rim: number, leastRadius_m: number): void {
  requireRing(seat, 'seat', rim);
  if (!Number.isFinite(seat.height_m))
    refuse('stack.seat.height', 'seat.height_m', `${seat.height_m}`, 'a number', 'm');
  if (seat.innerRadius_m < leastRadius_m) {
    const got = mm(seat.innerRadius_m);
    refuse('stack.seat.inside-clamp', 'seat.innerRadius_m', got, `at least ${mm(leastRadius_m)}`, 'mm');
  }
}

function validateShim(shim: ShimInput, at: string, clampRadius_m: number): void {
  requirePositive(shim.outerRadius_m, `${at}.outerRadius_m`, 'm');
  requirePositive(shim.thickness_m, `${at}.thickness_m`, 'm');
  requirePositive(shim.youngsModulus_Pa, `${at}.youngsModulus_Pa`, 'Pa');
  if (!(shim.poissonsRatio > -1 && shim.poissonsRatio < 0.5)) {
    refuse('stack.shim.poisson', `${at}.poissonsRatio`, `${shim.poissonsRatio}`, 'between -1 and 0.5');
  }
  if (shim.outerRadius_m <= clampRadius_m) {
    refuse('stack.shim.below-clamp', `${at}.outerRadius_m`, mm(shim.outerRadius_m), `over ${mm(clampRadius_m)}`, 'mm');
  }
  const { innerRadius_m: bore = 0, outerRadius_m: rim, dish_m: dish = 0 } = shim;
  if (!(bore >= 0 && bore < rim)) {
    refuse('stack.shim.bore', `${at}.innerRadius_m`, mm(bore), `from 0 to under ${mm(rim)}`, 'mm');
  }
  const steepest = SHALLOW * (rim - Math.max(bore, clampRadius_m));
  if (!(Math.abs(dish) <= steepest)) {
    const wanted = `between -${millimetres(steepest)} and ${millimetres(steepest)}`;
    refuse('stack.shim.dish', `${at}.dish_m`, millimetres(dish), wanted, 'mm');
  }
}

/** A narrower ring has bore and rim on one node of the mesh. */
function requireWidth(
  { innerRadius_m: bore = 0, outerRadius_m: rim }: ShimInput,
  at: string,
  clamp: number,
  w: number,
) {
  const inner = Math.max(bore, clamp);
  if (rim - inner >= w) return;
  refuse('stack.shim.too-narrow', `${at}.outerRadius_m`, mm(rim), `at least ${mm(inner + w)}`, 'mm');
}

function validateSprings({ backingPlate, coilSpring, float, shims, clampRadius_m }: StackInput): void {
  if (backingPlate) requireNoLess(backingPlate.gap_m, 'stack.backing-plate.gap', 'backingPlate.gap_m', 'm');
  const edge = backingPlate?.outerRadius_m;
  if (edge !== undefined && !(edge > clampRadius_m)) {
    refuse('stack.backing-plate.size', 'backingPlate.outerRadius_m', mm(edge), `over ${mm(clampRadius_m)}`, 'mm');
  }
  if (coilSpring) {
    const { radius_m, rate_N_m, preload_N } = coilSpring;
    const last = shims[shims.length - 1];
    const inner = Math.max(last.innerRadius_m ?? 0, clampRadius_m);
    if (!(radius_m > inner && radius_m <= last.outerRadius_m)) {
      const wanted = `over ${mm(inner)}, at most ${mm(last.outerRadius_m)} (the last shim)`;
      refuse('stack.coil-spring.radius', 'coilSpring.radius_m', mm(radius_m), wanted, 'mm');
    }
    requirePositive(rate_N_m, 'coilSpring.rate_N_m', 'N/m');
    requireNoLess(preload_N, 'stack.coil-spring.preload', 'coilSpring.preload_N', 'N');
    if (float) refuse('stack.float.with-coil-spring', 'float', 'both', 'a float or a coil spring, not both');
  }
  if (float) {
    requirePositive(float.travel_m, 'float.travel_m', 'm');
    requireNoLess(float.rate_N_m, 'stack.float.rate', 'float.rate_N_m', 'N/m');
    requireNoLess(float.preload_N, 'stack.float.preload', 'float.preload_N', 'N');
  }
}

function requireRing(ring: { innerRadius_m: number; outerRadius_m: number }, path: string, rim: number): void {
  requirePositive(ring.outerRadius_m, `${path}.outerRadius_m`, 'm');
  if (!(ring.innerRadius_m >= 0 && ring.innerRadius_m < ring.outerRadius_m)) {
    const wanted = `from 0 to under ${mm(ring.outerRadius_m)}`;
    refuse('stack.ring.order', `${path}.innerRadius_m`, mm(ring.innerRadius_m), wanted, 'mm');
  }
  if (ring.outerRadius_m > rim * (1 + 1e-9)) {
    refuse('stack.ring.beyond-rim', `${path}.outerRadius_m`, mm(ring.outerRadius_m), `at most ${mm(rim)}`, 'mm');
  }
}

function requirePositive(value: number, path: string, unit: string): void {
  if (!(value > 0 && Number.isFinite(value)))
    refuse('stack.not-positive', path, `${value}`, 'a finite number over 0', unit);
}

function requireNoLess(value: number, code: string, path: string, unit: string): void {
  if (!(value >= 0 && Number.isFinite(value))) refuse(code, path, `${value}`, 'a finite number, 0 or more', unit);
}

/** A radius as a person measures it: a diameter in mm, named as such where it is printed. */
function mm(radius_m: number): string {
  return `diameter ${millimetres(2 * radius_m)}`;
}

function millimetres(length_m: number): string {
  return `${Number((length_m * 1e3).toPrecision(6))}`;
}

function refuse(code: string, path: string, got: string, wanted: string, unit?: string): never {
  throw new InputError({ code, path, got, wanted, unit });
}
