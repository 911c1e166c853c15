import type { Theory } from './types.ts';

/** Theory of a curve for which nobody chose one: the one that still holds where shims lift by their own thickness. */
export const DEFAULT_THEORY: Theory = 'large-deflection';
