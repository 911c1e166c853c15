/** The reserves at the speed cursor in words: that of the shim with the least, and whether it will take a set. */
import type { ForcePoint } from '../app/solved.ts';
import { text } from '../text/en.ts';

/** Above this there is no doubt, and digits say nothing. */
const AMPLE = 10;

type Worst = NonNullable<ForcePoint['life']>['fatigue'];

/** A use is the reciprocal of a reserve; a stack that bears nothing has none to lose. */
function inWords({ use, shim }: Worst): string {
  if (use * AMPLE <= 1) return text.readout.ampleReserve(AMPLE);
  return text.readout.reserveOfShim((1 / use).toFixed(2), shim + 1);
}

type WithLife = Pick<ForcePoint, 'life'>;

export const lifeReserve = ({ life }: WithLife): string => (life ? inWords(life.fatigue) : text.readout.none);

export function yieldReserve({ life }: WithLife): string {
  if (!life) return text.readout.none;
  const reserve = inWords(life.yield);
  return life.takesSet ? text.readout.takesSet(reserve) : reserve;
}
