/** Refuses ports, shims, bleeds and spring-loaded valves that the equations cannot describe. */
import { damperFault, requireNotNegative, requirePositive } from './damper-fault.ts';
import type {
  BleedInput,
  CheckInput,
  NeedleInput,
  NotchesInput,
  PoppetInput,
  PortsInput,
  ValveInput,
} from './types.ts';

/** @throws InputError `damper.not-positive`, `damper.negative`, `valve.shim.below-seat`, `valve.notches.*`, `valve.ports.covered-fraction` */
export function checkValve(place: string, { ports, notches, stack }: ValveInput): void {
  checkPorts(place, ports);
  const face = stack.shims.at(0)?.outerRadius_m;
  if (face !== undefined && !(face > stack.seat.innerRadius_m)) {
    const wanted = `more than the inner radius of the seat, ${stack.seat.innerRadius_m}`;
    throw damperFault('valve.shim.below-seat', `${place}.stack.shims[0].outerRadius_m`, face, wanted, 'm');
  }
  if (notches && face !== undefined) checkNotches(`${place}.notches`, notches, face);
}

/** Notches that take more of the rim would change how the shim bends, which the plates do not know. */
const NOTCHED_SHARE = 0.25;

function checkNotches(path: string, { count, width_m }: NotchesInput, rim_m: number): void {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw damperFault('valve.notches.count', `${path}.count`, count, 'a whole number of at least 1', '');
  }
  requirePositive(`${path}.width_m`, width_m, 'm');
  const widest = (NOTCHED_SHARE * 2 * Math.PI * rim_m) / count;
  if (width_m > widest * (1 + 1e-9)) {
    throw damperFault(
      'valve.notches.too-wide',
      `${path}.width_m`,
      width_m,
      `a quarter of the rim in all, ${widest}`,
      'm',
    );
  }
}

export function checkBleed(path: string, { count, diameter_m, length_m, needle }: BleedInput): void {
  if (!(Number.isInteger(count) && count >= 0)) {
    throw damperFault('bleed.count', `${path}.count`, count, 'a whole number of at least 0', '');
  }
  if (count === 0) return;
  requirePositive(`${path}.diameter_m`, diameter_m, 'm');
  requireNotNegative(`${path}.length_m`, length_m, 'm');
  if (needle) checkNeedle(path, needle, count);
}

function checkNeedle(path: string, { coneAngle_rad, travel_m }: NeedleInput, holes: number): void {
  if (holes !== 1)
    throw damperFault('bleed.needle.one-hole', `${path}.count`, holes, '1, since a needle closes one hole', '');
  requireNotNegative(`${path}.needle.travel_m`, travel_m, 'm');
  if (!(coneAngle_rad > 0 && coneAngle_rad < Math.PI)) {
    throw damperFault('bleed.needle.cone', `${path}.needle.coneAngle_rad`, coneAngle_rad, 'between 0 and pi', 'rad');
  }
}

function checkPorts(place: string, ports: PortsInput): void {
  requirePositive(`${place}.ports.count`, ports.count, '');
  requirePositive(`${place}.ports.area_m2`, ports.area_m2, 'm2');
  requirePositive(`${place}.ports.hydraulicDiameter_m`, ports.hydraulicDiameter_m, 'm');
  requireNotNegative(`${place}.ports.length_m`, ports.length_m, 'm');
  const { coveredFraction: share = 1 } = ports;
  if (!(share > 0 && share <= 1)) {
    const path = `${place}.ports.coveredFraction`;
    throw damperFault('valve.ports.covered-fraction', path, share, 'more than 0, at most 1', '');
  }
}

/** @throws InputError `damper.not-positive`, `damper.negative`, `valve.poppet.cone` */
export function checkPoppet(path: string, { seatDiameter_m, coneAngle_rad, ...spring }: PoppetInput): void {
  requirePositive(`${path}.seatDiameter_m`, seatDiameter_m, 'm');
  checkSpring(path, spring);
  if (!(coneAngle_rad > 0 && coneAngle_rad < Math.PI)) {
    throw damperFault('valve.poppet.cone', `${path}.coneAngle_rad`, coneAngle_rad, 'between 0 and pi', 'rad');
  }
}

/** @throws InputError `damper.not-positive`, `damper.negative`, `valve.check.seat` */
export function checkRefill(path: string, { ports, seat, ...spring }: CheckInput): void {
  checkPorts(path, ports);
  checkSpring(path, spring);
  requirePositive(`${path}.seat.innerRadius_m`, seat.innerRadius_m, 'm');
  if (!(seat.outerRadius_m > seat.innerRadius_m)) {
    const wanted = `more than the inner radius, ${seat.innerRadius_m}`;
    throw damperFault('valve.check.seat', `${path}.seat.outerRadius_m`, seat.outerRadius_m, wanted, 'm');
  }
}

function checkSpring(path: string, spring: Pick<PoppetInput, 'rate_N_m' | 'preload_N' | 'travel_m'>): void {
  requireNotNegative(`${path}.rate_N_m`, spring.rate_N_m, 'N/m');
  requireNotNegative(`${path}.preload_N`, spring.preload_N, 'N');
  requirePositive(`${path}.travel_m`, spring.travel_m, 'm');
}
