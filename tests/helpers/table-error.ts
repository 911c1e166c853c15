/** How far an opening table is off, as the pressure that drives a flow: a jet goes with h √p. */
import type { ConvergedLift } from '../../src/solver/types.ts';
import type { OpeningTable } from '../../src/solver/valve/opening-table.ts';

/**
 * @param exact  solved states of one stack, rising in pressure, close enough to read a slope off
 * @returns at each but the first and the last, the share of the pressure by which a flow is off [-]
 */
export function pressureErrors(opening: OpeningTable['opening'], exact: readonly ConvergedLift[]): number[] {
  const largest_m = exact[exact.length - 1].seatOpening_m;
  return exact.slice(1, -1).map(({ pressure_Pa: p, seatOpening_m: h }, i) => {
    const [before, after] = [exact[i], exact[i + 2]];
    const slope = (after.seatOpening_m - before.seatOpening_m) / (after.pressure_Pa - before.pressure_Pa);
    // What passes an opening a fiftieth of the largest is next to nothing beside any bleed.
    return Math.abs(opening(p) - h) / (h + 0.02 * largest_m) / (0.5 + (slope * p) / h);
  });
}
