/**
 * When the gap of a crossover closes at the outer rim of the second stage: until then the stages touch along the rim of the crossover alone.
 *   P = t / [ w_q(g) - R w_c(g) - R_2 w_2(g) ],   R_2 = R W / W_2
 *
 * symbol   unit     meaning
 * t, g     m        thickness of the crossover, rim of the second stage
 * R, R_2   N/m/Pa   ring force per pressure on all behind the face, on the first shim of the second stage
 * W, W_2   m/(N/m)  lift at the crossover's rim per line load there, of all behind the face, of that shim
 */
import { lineLoad, type Note, type Plate } from './roark.ts';
import type { Sheet } from './sheet.ts';

export interface Crossed {
  readonly face: Plate;
  /** Crossover, then the second stage. */
  readonly rest: readonly Plate[];
  /** Lift of the face under 1 Pa at a radius [m]. */
  readonly pressed: (r: number) => number;
  readonly c: number;
  readonly R: number;
  readonly W: number;
}

/** @returns the pressure [Pa] */
export function gapSteps({ face, rest, pressed, c, R, W }: Crossed, { put }: Sheet, note: Note): number {
  const [crossover, second] = rest;
  const g = second.a;
  const w_q = put('w_q(g)', `face under 1 MPa, at the rim g of the ${second.name}`, pressed(g), 'mm per MPa');
  const w_c = put('w_c(g)', 'face under 1 N/mm at c, at g', note(lineLoad(face, c, g)), 'mm per N/mm');
  const w_2 = put('w₂(g)', `the ${second.name} under 1 N/mm at c, at g`, note(lineLoad(second, c, g)), 'mm per N/mm');
  const R_2 = put('R₂', `R W / W ${second.name}`, (R * W) / lineLoad(second, c, c).lift, 'N/mm per MPa');
  const closing = w_q - R * w_c - R_2 * w_2;
  return put('P gap', 't/[w_q(g) − R w_c(g) − R₂ w₂(g)]', (crossover.count * crossover.t) / closing, 'MPa');
}
