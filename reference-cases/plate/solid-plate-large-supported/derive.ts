import { deriveLargeDeflection } from '../shooting.ts';

/** The quantities of this case by shooting, see shooting.ts. */
export const derive = deriveLargeDeflection;
