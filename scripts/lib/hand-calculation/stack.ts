/**
 * Lift of a stack per pressure, as a careful person can get it by hand: the face shims bend under the oil, and all that lies on
 * them pushes back along one circle, the rim of the shim next to them.
 *   R = w_q(c) / [ w_c(c) + W ],   kappa = w_q(r1) - R w_c(r1)
 * w_q of case 2l (a ring is one pressure less another), w_c of case 1l at c, W the lift of the rest per line load at c. In the rest
 * every shim that reaches beyond c is a ring spring at c; the last that ends there is backed by the shorter ones behind it,
 * again at their rims; springs side by side add up.
 *
 * symbol  unit       meaning
 * c, r1   m          contact circle, inner edge of the seat land
 * R       N/m/Pa     ring force between face and rest, per pressure
 * W       m/(N/m)    lift of the rest at c per line load there
 * kappa   m/Pa       lift at the seat per pressure
 */
import { type Bending, lineLoad, type Plate, pressureFrom } from './roark.ts';
import { newSheet, type Sheet } from './sheet.ts';

export interface HandStack {
  readonly face: Plate;
  readonly rest: readonly Plate[];
  /** Pressure acts from here to the middle of the land [m]. */
  readonly zoneFrom: number;
  readonly zoneTo: number;
  /** Inner edge of the land [m]. */
  readonly r1: number;
}

export interface StackByHand {
  readonly bendings: readonly Bending[];
  readonly sheet: Sheet;
  readonly kappa: number;
  /** Ring force per pressure at c. */
  readonly R: number;
  readonly c: number;
}

export function stackByHand({ face, rest, zoneFrom, zoneTo, r1 }: HandStack): StackByHand {
  const bendings: Bending[] = [];
  const sheet = newSheet();
  const note = (bending: Bending): number => {
    bendings.push(bending);
    return bending.lift;
  };
  const c = rest[0].a;
  const pressed = (r: number) => note(pressureFrom(face, zoneFrom, r)) - note(pressureFrom(face, zoneTo, r));
  const w_q = sheet.put('w_q(c)', 'face under 1 MPa, at the contact circle', pressed(c), 'mm per MPa');
  const w_q1 = sheet.put('w_q(r₁)', 'the same at the seat', pressed(r1), 'mm per MPa');
  const w_c = sheet.put('w_c(c)', 'face under 1 N/mm at c, there', note(lineLoad(face, c, c)), 'mm per N/mm');
  const w_c1 = sheet.put('w_c(r₁)', 'the same at the seat', note(lineLoad(face, c, r1)), 'mm per N/mm');
  const W = restAt(c, rest, sheet, note);
  const R = sheet.put('R', 'w_q(c) / [w_c(c) + W]', w_q / (w_c + W), 'N/mm per MPa');
  const kappa = sheet.put('κ', 'w_q(r₁) − R w_c(r₁)', w_q1 - R * w_c1, 'mm per MPa');
  return { bendings, sheet, kappa, R, c };
}

type Note = (bending: Bending) => number;

function restAt(c: number, rest: readonly Plate[], { put }: Sheet, note: Note): number {
  const last = rest.findLastIndex(({ a }) => a >= c);
  const springs = rest.slice(0, last).map((plate) => {
    const W = note(lineLoad(plate, c, c));
    return put(`W ${plate.name}`, 'under 1 N/mm at c, there', W, 'mm per N/mm');
  });
  const chained = chain(c, rest.slice(last), put, note);
  if (springs.length === 0) return put('W', 'the same', chained, 'mm per N/mm');
  const stiffness = [...springs, chained].reduce((sum, W) => sum + 1 / W, 0);
  return put('W', 'springs side by side: 1/W is the sum of 1/W', 1 / stiffness, 'mm per N/mm');
}

/** The first shim loaded at its rim, the others behind it at theirs. */
function chain(c: number, [first, ...behind]: readonly Plate[], put: Sheet['put'], note: Note): number {
  if (first.a !== c) throw new Error(`${first.name} ends beyond the circle and has shorter shims behind it`);
  const alone = note(lineLoad(first, c, c));
  if (behind.length === 0) return put(`W ${first.name}`, 'under 1 N/mm at its rim, there', alone, 'mm per N/mm');
  const d = behind[0].a;
  const W = chain(d, behind, put, note);
  const share = note(lineLoad(first, c, d)) / (note(lineLoad(first, d, d)) + W);
  const from = `w_c(c) − w_c(d)·w_d(c)/[w_d(d) + W ${behind[0].name}], d the rim of that one`;
  return put(`W ${first.name}`, from, alone - share * note(lineLoad(first, d, c)), 'mm per N/mm');
}
