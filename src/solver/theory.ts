import type { TheoryChoice } from './types.ts';

/** Theory of a result for which nobody chose one. */
export const DEFAULT_THEORY: TheoryChoice = 'auto';
