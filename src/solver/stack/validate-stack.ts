/**
 * Refuses stacks that the model does not hold for, with the place and the numbers.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | b | mm | clamp radius as a diameter, the least size a shim may have |
 */
import { InputError } from '../../units/fault.ts';
import type { StackInput } from '../types.ts';

/** @throws InputError `stack.*` naming the first fault, sizes in mm as diameters */
export function validateStack(stack: StackInput): void {
  const { clampRadius_m, shims, pressureZone, seat, backingPlate } = stack;
  requirePositive(clampRadius_m, 'clampRadius_m', 'm');
  if (shims.length === 0) refuse('stack.empty', 'shims', 'no shim', 'at least one shim');
  shims.forEach((shim, i) => {
    const at = `shims[${i}]`;
    requirePositive(shim.outerRadius_m, `${at}.outerRadius_m`, 'm');
    requirePositive(shim.thickness_m, `${at}.thickness_m`, 'm');
    requirePositive(shim.youngsModulus_Pa, `${at}.youngsModulus_Pa`, 'Pa');
    if (!(shim.poissonsRatio > -1 && shim.poissonsRatio < 0.5)) {
      refuse('stack.shim.poisson', `${at}.poissonsRatio`, `${shim.poissonsRatio}`, 'between -1 and 0.5');
    }
    if (shim.outerRadius_m <= clampRadius_m) {
      refuse(
        'stack.shim.below-clamp',
        `${at}.outerRadius_m`,
        mm(shim.outerRadius_m),
        `over ${mm(clampRadius_m)}`,
        'mm',
      );
    }
  });
  const rim = Math.max(...shims.map((s) => s.outerRadius_m));
  requireRing(pressureZone, 'pressureZone', rim);
  if (seat) {
    requireRing(seat, 'seat', rim);
    if (!Number.isFinite(seat.height_m))
      refuse('stack.seat.height', 'seat.height_m', `${seat.height_m}`, 'a number', 'm');
    if (seat.innerRadius_m <= clampRadius_m) {
      refuse(
        'stack.seat.inside-clamp',
        'seat.innerRadius_m',
        mm(seat.innerRadius_m),
        `over ${mm(clampRadius_m)}`,
        'mm',
      );
    }
  }
  if (backingPlate && !(backingPlate.gap_m >= 0)) {
    refuse('stack.backing-plate.gap', 'backingPlate.gap_m', `${backingPlate.gap_m}`, '0 or more', 'm');
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

function mm(radius_m: number): string {
  return `${Number((radius_m * 1e3).toPrecision(6))}`;
}

function refuse(code: string, path: string, got: string, wanted: string, unit?: string): never {
  throw new InputError({ code, path, got, wanted, unit });
}
