/** The steps from each past version of a document to the next. Both formats are at version 1, so there is none yet. */
import type { Step } from './chain.ts';

export const PROJECT_STEPS: readonly Step[] = [];
export const STACK_STEPS: readonly Step[] = [];
