/**
 * One annulus clamped inside and free at its rim, by Roark's table 11.2, cases 1l (line load at r0) and 2l (pressure from r0
 * outwards), with every constant kept so that it can be printed. Lift and loads are positive away from the clamp's side.
 *   w(r) = [ M r^2 F2 - Q r^3 F3 + load term ] / D,   D = E t^3 / 12 (1 - nu^2)
 *   1l:  Q = r0/b                 M = (a/C8) (r0 C9/b - L9)                       load term r^3 L3
 *   2l:  Q = (a^2 - r0^2)/(2b)    M = (a^2/C8) (C9 (a^2 - r0^2)/(2ab) - L17)      load term r^4 L11
 *
 * symbol  unit  meaning
 * a, b    m     rim and clamp radius
 * r0, r   m     radius of the load, radius where the lift is read
 * M, Q    N, N/m  moment and force per length at the clamp, per unit of the load
 */

export interface Plate {
  readonly name: string;
  /** Rim and clamp radius, thickness of one shim [m]; equal shims on one another. */
  readonly a: number;
  readonly b: number;
  readonly t: number;
  readonly count: number;
}

/** A lift per unit of load [m per N/m, or m per Pa], with what it is made of. */
export interface Bending {
  readonly plate: Plate;
  readonly load: 'line' | 'pressure';
  readonly r0: number;
  readonly r: number;
  readonly C8: number;
  readonly C9: number;
  /** L9 under a line load, L17 under pressure. */
  readonly L: number;
  readonly M: number;
  readonly F2: number;
  readonly F3: number;
  /** L3 under a line load, L11 under pressure. */
  readonly G: number;
  readonly lift: number;
}

/** Writes a lift down and gives it back. */
export type Note = (bending: Bending) => number;

/** Spring steel. */
export const E_PA = 206e9;
export const NU = 0.3;

export const rigidity = ({ t, count }: Plate): number => (count * E_PA * t ** 3) / (12 * (1 - NU ** 2));

const C2 = (k: number): number => (1 - k * k * (1 + 2 * Math.log(1 / k))) / 4;
const C3 = (k: number): number => (k / 4) * ((k * k + 1) * Math.log(1 / k) + k * k - 1);
const C8 = (k: number): number => (1 + NU + (1 - NU) * k * k) / 2;
const C9 = (k: number): number => k * (((1 + NU) / 2) * Math.log(1 / k) + ((1 - NU) / 4) * (1 - k * k));
const L11 = (s: number): number => (1 + 4 * s ** 2 - 5 * s ** 4 - 4 * s ** 2 * (2 + s ** 2) * Math.log(1 / s)) / 64;
const L17 = (s: number): number => (1 - ((1 - NU) / 4) * (1 - s ** 4) - s ** 2 * (1 + (1 + NU) * Math.log(1 / s))) / 4;
/** A load that has not begun at a radius adds nothing there. */
const begun = (law: (s: number) => number, s: number): number => (s < 1 ? law(s) : 0);

/** Case 1l, per N/m of the circle r0. */
export function lineLoad(plate: Plate, r0: number, r: number): Bending {
  const { a, b } = plate;
  const L = begun(C9, r0 / a);
  const M = (a / C8(b / a)) * ((r0 * C9(b / a)) / b - L);
  const G = begun(C3, r0 / r);
  const lift = (M * r ** 2 * C2(b / r) - (r0 / b) * r ** 3 * C3(b / r) + r ** 3 * G) / rigidity(plate);
  return { plate, load: 'line', r0, r, L, M, G, lift, ...constants(plate, r) };
}

/** Case 2l, per Pa from r0 to the rim. */
export function pressureFrom(plate: Plate, r0: number, r: number): Bending {
  const { a, b } = plate;
  const Q = (a ** 2 - r0 ** 2) / (2 * b);
  const L = begun(L17, r0 / a);
  const M = (a ** 2 / C8(b / a)) * ((C9(b / a) * Q) / a - L);
  const G = begun(L11, r0 / r);
  const lift = (M * r ** 2 * C2(b / r) - Q * r ** 3 * C3(b / r) + r ** 4 * G) / rigidity(plate);
  return { plate, load: 'pressure', r0, r, L, M, G, lift, ...constants(plate, r) };
}

const constants = ({ a, b }: Plate, r: number) => ({ C8: C8(b / a), C9: C9(b / a), F2: C2(b / r), F3: C3(b / r) });
