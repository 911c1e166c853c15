/** The reserves at the speed cursor in words: that of the shim with the least, and whether it will take a set. */
import type { ForcePoint } from '../app/solved.ts';
import { text } from '../text/en.ts';

/** Above this there is no doubt, and digits say nothing. */
const AMPLE = 10;

/** Writes a number with so many decimals, in the reader's sign. */
type WriteNumber = (value: number, digits: number) => string;

type Worst = NonNullable<ForcePoint['life']>['fatigue'];

const isAmple = (use: number): boolean => use * AMPLE <= 1;

/** A use is the reciprocal of a reserve; a shim that bears nothing has none to lose. */
export const bareReserve = (use: number, write: WriteNumber): string =>
  isAmple(use) ? text.readout.ampleReserve(AMPLE) : write(1 / use, 2);

const inWords = ({ use, shim }: Worst, write: WriteNumber): string =>
  isAmple(use) ? bareReserve(use, write) : text.readout.reserveOfShim(bareReserve(use, write), shim + 1);

type WithLife = Pick<ForcePoint, 'life'>;

export const lifeReserve = ({ life }: WithLife, write: WriteNumber): string =>
  life ? inWords(life.fatigue, write) : text.readout.none;

export const yieldReserve = ({ life }: WithLife, write: WriteNumber): string =>
  life ? inWords(life.yield, write) : text.readout.none;

export const setNote = ({ life }: WithLife): string | undefined => (life?.takesSet ? text.readout.takesSet : undefined);
