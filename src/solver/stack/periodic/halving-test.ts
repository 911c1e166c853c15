/**
 * Whether a state with one wave a port is stable against falling to half as many: its energy's second variation among
 * states that repeat themselves over two ports.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | K | N/m … | tangents of the plates with two ports a period, at a state that repeats itself over one |
 * | S | m/N | B K⁻¹ Bᵀ of the pairs that press |
 *
 * The state is one of those with two ports a period, whose odd harmonics are nothing; K then counts the negative
 * directions of both kinds, and contact holds as many of them as S has (docs/theory-waviness.md). The state was found
 * at a minimum among its own kind, so that what is left belongs to the other.
 */
import { countHeldModes } from '../../contact/complementarity.ts';
import type { PeriodicPlate } from '../../plate/periodic/periodic-plate.ts';
import { factorExact } from '../factor-bodies.ts';
import type { PeriodicSystem } from './periodic-system.ts';

/** @param one in balance, a port a period @param two the same stack with two ports a period; its state is overwritten */
export function fallsToHalf(one: PeriodicSystem, two: PeriodicSystem): boolean {
  for (const [k, plate] of two.plates.entries()) spreadOverTwo(one.plates[k], plate);
  const { pairs } = one;
  for (let c = 0; c < pairs.size; c += 2) {
    // Places 0, π/2 and π of the long period are crest, trough and crest of the short one.
    const at = (c / 2) * 3;
    const [crest, trough] = [one.contact.force[c], one.contact.force[c + 1]];
    two.contact.force.set([crest / 2, trough, crest / 2], at);
    two.contact.closed.set(
      [crest, trough, crest].map((force) => (force > 0 ? 1 : 0)),
      at,
    );
  }
  two.hubRise_m = one.hubRise_m;
  for (const body of two.bodies) body.assembleInternal();
  const negative = factorExact(two);
  const held = countHeldModes(two.contact);
  return negative !== undefined && held !== undefined && negative > held;
}

function spreadOverTwo(one: PeriodicPlate, two: PeriodicPlate): void {
  const { outs, turns, lifts } = one.basis;
  const copies: [number, number][] = [
    [0, 0],
    [1, 1],
    [0, 2],
  ];
  for (let m = 0; m < outs; m++) copies.push([lifts + m, two.basis.lifts + 2 * m]);
  const [turnOne, turnTwo] = [lifts + outs, two.basis.lifts + two.basis.outs];
  for (let m = 1; m <= turns; m++) copies.push([turnOne + m - 1, turnTwo + 2 * m - 1]);
  two.x.fill(0);
  for (let n = 0; n < one.nodes; n++) {
    for (const [from, to] of copies) {
      for (const i of [0, 1]) {
        two.x[n * two.layout.perNode + two.layout.slots[2 * to + i]] =
          one.x[n * one.layout.perNode + one.layout.slots[2 * from + i]];
      }
    }
  }
}
