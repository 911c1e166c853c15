/** The reserves at the speed cursor in words: that of the shim with the least, and whether it will take a set. */
import type { ForcePoint } from '../app/solved.ts';
import { text } from '../text/en.ts';

/** Above this there is no doubt, and digits say nothing. */
const AMPLE = 10;

type Worst = NonNullable<ForcePoint['life']>['fatigue'];

const isAmple = (use: number): boolean => use * AMPLE <= 1;

/** A use is the reciprocal of a reserve; a shim that bears nothing has none to lose. */
export const bareReserve = (use: number): string =>
  isAmple(use) ? text.readout.ampleReserve(AMPLE) : (1 / use).toFixed(2);

const inWords = ({ use, shim }: Worst): string =>
  isAmple(use) ? bareReserve(use) : text.readout.reserveOfShim(bareReserve(use), shim + 1);

type WithLife = Pick<ForcePoint, 'life'>;

export const lifeReserve = ({ life }: WithLife): string => (life ? inWords(life.fatigue) : text.readout.none);

export function yieldReserve({ life }: WithLife): string {
  if (!life) return text.readout.none;
  const reserve = inWords(life.yield);
  return life.takesSet ? text.readout.takesSet(reserve) : reserve;
}
