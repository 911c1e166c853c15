/**
 * Lift of a stack per pressure, as a careful person can get it by hand: the face shims bend under the oil, and all that lies on
 * them pushes back along one circle, the rim of the shim next to them.
 *   R = [ w_q(c) P + U ] / [ w_c(c) + W ],   lift at the seat = kappa P - h_0
 *   kappa = w_q(r1) - w_c(r1) w_q(c) / [ w_c(c) + W ],   h_0 = U w_c(r1) / [ w_c(c) + W ]
 * w_q of case 2l (a ring is one pressure less another), w_c of case 1l at c, W the lift of the rest per line load at c, U how far a
 * spring under preload presses the rest down there. In the rest every shim that reaches beyond c is a ring spring at c; the last that
 * does is backed by the shorter ones behind it, again at their rims, and by a coil spring on its circle; springs side by side add up.
 *
 * symbol    unit       meaning
 * c, r1     m          contact circle, inner edge of the seat land
 * R         N/m/Pa     ring force between face and rest, per pressure
 * W, U      m/(N/m), m lift of the rest at c per line load there, less what its preload takes from it
 * kappa     m/Pa       lift at the seat per pressure
 */
import { gapSteps } from './crossover.ts';
import { type Bending, lineLoad, type Note, type Plate, pressureFrom } from './roark.ts';
import { newSheet, type Sheet } from './sheet.ts';

export interface HandStack {
  readonly face: Plate;
  readonly rest: readonly Plate[];
  /** Pressure acts from here to the middle of the land [m]. */
  readonly zoneFrom: number;
  readonly zoneTo: number;
  /** Inner edge of the land [m]. */
  readonly r1: number;
  /** On the last shim: radius of its circle [m], rate [N/m], preload [N]. */
  readonly coil?: Coil;
}

export interface Coil {
  readonly radius: number;
  readonly rate: number;
  readonly preload: number;
}

export interface StackByHand {
  readonly bendings: readonly Bending[];
  readonly sheet: Sheet;
  readonly kappa: number;
  /** What the preload of a coil spring takes from the lift at the seat [m]. */
  readonly pressed: number;
  /** Where the second stage comes down on the face [Pa]; absent without a crossover. */
  readonly gapCloses?: number;
}

export function stackByHand({ face, rest, zoneFrom, zoneTo, r1, coil }: HandStack): StackByHand {
  const bendings: Bending[] = [];
  const sheet = newSheet();
  const { put } = sheet;
  const note = (bending: Bending): number => {
    bendings.push(bending);
    return bending.lift;
  };
  const c = rest[0].a;
  const pressed = (r: number) => note(pressureFrom(face, zoneFrom, r)) - note(pressureFrom(face, zoneTo, r));
  const w_q = put('w_q(c)', 'face under 1 MPa, at the contact circle', pressed(c), 'mm per MPa');
  const w_q1 = put('w_q(r₁)', 'the same at the seat', pressed(r1), 'mm per MPa');
  const w_c = put('w_c(c)', 'face under 1 N/mm at c, there', note(lineLoad(face, c, c)), 'mm per N/mm');
  const w_c1 = put('w_c(r₁)', 'the same at the seat', note(lineLoad(face, c, r1)), 'mm per N/mm');
  const { W, U } = restAt(c, rest, coil, sheet, note);
  const R = put('R', 'w_q(c) / [w_c(c) + W]', w_q / (w_c + W), 'N/mm per MPa');
  const kappa = put('κ', 'w_q(r₁) − R w_c(r₁)', w_q1 - R * w_c1, 'mm per MPa');
  const h_0 = U && put('h₀', 'U w_c(r₁) / [w_c(c) + W]', (U * w_c1) / (w_c + W), 'mm');
  const crossed = rest.length > 1 && rest[1].a > c;
  if (!crossed) return { bendings, sheet, kappa, pressed: h_0 };
  const gapCloses = gapSteps({ face, rest, pressed, c, R, W }, sheet, note);
  return { bendings, sheet, kappa, pressed: h_0, gapCloses };
}

/** Lift at a circle = W times the line load there, less U. */
interface Backing {
  readonly W: number;
  readonly U: number;
}

function restAt(c: number, rest: readonly Plate[], coil: Coil | undefined, sheet: Sheet, note: Note): Backing {
  const last = rest.findLastIndex(({ a }) => a >= c);
  const springs = rest.slice(0, last).map((plate) => {
    const W = note(lineLoad(plate, c, c));
    return sheet.put(`W ${plate.name}`, 'under 1 N/mm at c, there', W, 'mm per N/mm');
  });
  const { W, U } = chain(c, rest.slice(last), coil, sheet.put, note);
  if (springs.length === 0) return { W: sheet.put('W', 'the same', W, 'mm per N/mm'), U };
  if (U !== 0) throw new Error('a coil spring behind a crossover is not worked out here');
  const stiffness = [...springs, W].reduce((sum, one) => sum + 1 / one, 0);
  return { W: sheet.put('W', 'springs side by side: 1/W is the sum of 1/W', 1 / stiffness, 'mm per N/mm'), U };
}

/** The first shim loaded at c, the others behind it at their rims, the coil spring behind the last. */
function chain(
  c: number,
  [first, ...behind]: readonly Plate[],
  coil: Coil | undefined,
  put: Sheet['put'],
  note: Note,
): Backing {
  const alone = note(lineLoad(first, c, c));
  if (behind.length === 0 && !coil)
    return { W: put(`W ${first.name}`, 'under 1 N/mm at c, there', alone, 'mm per N/mm'), U: 0 };
  const next = behind.length > 0 ? behind[0].name : 'spring';
  const d = behind.length > 0 ? behind[0].a : (coil?.radius ?? 0);
  const { W, U } = behind.length > 0 ? chain(d, behind, coil, put, note) : spring(coil as Coil, put);
  const yielding = note(lineLoad(first, d, d)) + W;
  const share = note(lineLoad(first, c, d)) / yielding;
  const back = note(lineLoad(first, d, c));
  const from = `w_c(c) − w_c(d)·w_d(c)/[w_d(d) + W ${next}], d its circle`;
  const own = put(`W ${first.name}`, from, alone - share * back, 'mm per N/mm');
  if (U === 0) return { W: own, U };
  return { W: own, U: put(`U ${first.name}`, `U ${next} · w_d(c)/[w_d(d) + W ${next}]`, (U * back) / yielding, 'mm') };
}

function spring({ radius, rate, preload }: Coil, put: Sheet['put']): Backing {
  return {
    W: put('W spring', '2πr_s / rate', (2 * Math.PI * radius) / rate, 'mm per N/mm'),
    U: put('U spring', 'preload / rate', preload / rate, 'mm'),
  };
}
