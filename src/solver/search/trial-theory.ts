/** Theory of the thousands of stacks that a search tries: `auto` is left to the few that it hands on. */
import type { Theory, TheoryChoice } from '../types.ts';

export const trialTheory = (theory: TheoryChoice): Theory => (theory === 'auto' ? 'large-deflection' : theory);
