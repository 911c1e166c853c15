/**
 * The path of a valve that leads under its shims: ports, then the curtain under the face shim and the notches in its rim. It is
 * explicit in the mean pressure on the pressure zone, P, the one that bends the stack and gives the opening h:
 *   P = phi p + c Q^2,   c = phi m rho / (2 A_p^2),   m = min(2 k A_p / (phi A_z), 1),   Q = Q_c + Q_n
 *   p = a Q_c + b Q_c^2,   a, b of the curtain at h (curtain.ts)
 * so that without notches Q is the root of (phi b + c) Q^2 + phi a Q = P. With notches p is one root below P/phi, since both flows rise
 * with p.
 *
 * Ports that open a share phi of the circumference press on that share and let oil out through that share of the curtain. Their
 * jets push on the shims as well: balance of momentum between the port exits and the shim, whose outflow is radial and carries none
 * along the axis, gives the force rho Q^2 / A_p, in the mean over the zone rho Q^2 / (A_p A_z). Of it counts the share k: a jet
 * spreads, slants, and turns before it is stopped. Ports as wide as their share of the zone leave the jet no room, and
 * then not more than its dynamic head can act on any place of the shim: m is at most 1. Source: momentum theorem (own, as for spool and
 * poppet in Merritt 1967, from memory); k is known to a range only. The notches are taken to stand over ports.
 *
 * P, p and Q rise with each other, and so does p + drop of the ports while 1/Cd^2 of the ports exceeds m.
 *
 * symbol    unit    meaning
 * P, p      Pa      mean pressure on the zone, pressure across the shims
 * phi       -       share of the circumference that the ports open
 * Q         m3/s    flow through the ports; Q_c under the shim, Q_n through its notches
 * A_p, A_z  m2      area of all ports, area of the pressure zone
 * k         -       share of the momentum of the port jets that lifts the shim
 */
import type { FluidState, ValveInput } from '../damper/types.ts';
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { secantRoot } from '../numeric/secant-root.ts';
import { valueOrNaN } from '../numeric/solved.ts';
import type { Coefficients } from '../restriction/coefficients.ts';
import { curtain, curtainResistances } from '../restriction/curtain.ts';
import { drilledHole } from '../restriction/drilled-hole.ts';
import { notchPath } from '../restriction/notches.ts';
import { quadraticFlow } from '../restriction/quadratic-loss.ts';
import type { Restriction } from '../restriction/types.ts';
import { type Throat, throatOf } from './throats.ts';

/** Left over of the mean pressure beside notches, relative to it. */
const TOLERANCE = 1e-14;

export interface StackFlow {
  /** Across the shims [Pa]. */
  readonly shimDrop_Pa: number;
  readonly portDrop_Pa: number;
  /** Under the face shim, and through its notches [m3/s]. */
  readonly curtain_m3_s: number;
  readonly notches_m3_s: number;
}

export interface StackPath {
  /** At a mean pressure on the zone and the opening that it gives; NaN where a part does not solve. */
  readonly at: (meanPressure_Pa: number, opening_m: number) => StackFlow;
  /** Of ports, curtain and notches, where they carry oil. */
  readonly throats: (flow: StackFlow, opening_m: number) => readonly Throat[];
}

/** Mean pressure on the zone from the jets of the ports over the square of their flow [Pa s2/m6]. */
export function momentumResistance(
  { ports, stack: { pressureZone } }: ValveInput,
  density_kg_m3: number,
  portMomentum: number,
): number {
  const { innerRadius_m, outerRadius_m } = pressureZone;
  const { coveredFraction: phi = 1 } = ports;
  const A_p = ports.count * ports.area_m2;
  const A_z = Math.PI * (outerRadius_m ** 2 - innerRadius_m ** 2);
  const m = Math.min((2 * portMomentum * A_p) / (phi * A_z), 1);
  return (phi * m * density_kg_m3) / (2 * A_p ** 2);
}

export function stackPath(valve: ValveInput, fluid: FluidState, coefficients: Coefficients): StackPath {
  const { seat, shims } = valve.stack;
  const { coveredFraction: phi = 1 } = valve.ports;
  const innerRadius_m = seat.innerRadius_m;
  const outerRadius_m = Math.min(seat.outerRadius_m, shims[0].outerRadius_m);
  const ports = drilledHole(valve.ports, fluid, coefficients);
  const notches = notchPath(valve.notches, shims[0].thickness_m, { innerRadius_m, outerRadius_m }, fluid, coefficients);
  const c = momentumResistance(valve, fluid.density_kg_m3, coefficients.portMomentum);
  const openingOf = (h: number) => ({ innerRadius_m, outerRadius_m, gap_m: h, coveredFraction: phi });
  const at = (P: number, h: number): StackFlow => {
    const open = h <= 0 ? closed : curtainResistances(openingOf(h), fluid, coefficients.jetDischarge);
    const shims = valve.notches ? besideNotches(P, phi, c, open, notches) : alone(P, phi, c, open);
    const { shimDrop_Pa, curtain_m3_s, notches_m3_s } = shims;
    const portDrop_Pa = valueOrNaN(ports.drop(curtain_m3_s + notches_m3_s));
    return { shimDrop_Pa, portDrop_Pa, curtain_m3_s, notches_m3_s };
  };
  const throats = ({ portDrop_Pa, curtain_m3_s, notches_m3_s }: StackFlow, h: number): readonly Throat[] => {
    const behindPorts = [
      ...throatOf('shims', curtain(openingOf(h), fluid, coefficients.jetDischarge), curtain_m3_s),
      ...throatOf('notches', notches, notches_m3_s),
    ];
    const before = throatOf('ports', ports, curtain_m3_s + notches_m3_s);
    return [...before, ...behindPorts.map((throat) => ({ ...throat, dropBefore_Pa: portDrop_Pa }))];
  };
  return { at, throats };
}

type ShimFlow = Omit<StackFlow, 'portDrop_Pa'>;

interface Resistances {
  readonly a: number;
  readonly b: number;
}

const closed: Resistances = { a: Number.POSITIVE_INFINITY, b: 0 };

function alone(P: number, phi: number, c: number, { a, b }: Resistances): ShimFlow {
  const Q = quadraticFlow(phi * a, phi * b + c, P);
  return { shimDrop_Pa: (P - c * Q * Q) / phi, curtain_m3_s: Q, notches_m3_s: 0 };
}

function besideNotches(P: number, phi: number, c: number, { a, b }: Resistances, notches: Restriction): ShimFlow {
  const curtainFlow = (p: number) => quadraticFlow(a, b, p);
  const notchFlow = (p: number) => valueOrNaN(notches.flow(p));
  const excess = (p: number) => phi * p + c * (curtainFlow(p) + notchFlow(p)) ** 2 - P;
  const most = P / phi;
  const p =
    c === 0
      ? most
      : valueOrNaN(
          secantRoot(excess, { x: most, slope: 1 / phi }, { low: 0, high: most }, TOLERANCE * P, () =>
            bracketedRoot(excess, 0, most),
          ),
        );
  return { shimDrop_Pa: p, curtain_m3_s: curtainFlow(p), notches_m3_s: notchFlow(p) };
}
