/** Tables of the stacks that a search leaves as they are, as far as the speeds of the aim. */
import { stackPlaces, tableOf } from '../damper/damper-valves.ts';
import type { StackPlace } from '../damper/types.ts';
import { DEFAULT_COEFFICIENTS } from '../restriction/coefficients.ts';
import { followStacks, followUnstressed } from '../valve/followed-stack.ts';
import type { OpeningTable } from '../valve/opening-table.ts';
import { rememberedLift } from '../valve/remembered-lift.ts';
import type { SearchProblem } from './types.ts';

/** @throws InputError of the stacks */
export function stayingTables({ damper, places, aim, theory }: SearchProblem): ReadonlyMap<StackPlace, OpeningTable> {
  const searched = new Set(places.map(({ place }) => place));
  const solver = followStacks({}, followUnstressed);
  const speeds_m_s = aim.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s);
  // A void would leave the base valve all that the piston displaces: its table is built that far at once.
  const request = {
    stacks: { ...solver, lift: rememberedLift(solver.lift) },
    damper,
    theory,
    speeds_m_s,
    sets: [DEFAULT_COEFFICIENTS],
    voids: true,
  };
  return new Map(
    stackPlaces(damper)
      .filter((place) => !searched.has(place))
      .map((place) => [place, tableOf(place, request)]),
  );
}
