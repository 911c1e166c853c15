/** A path that lets nothing through: an absent bleed, a stack on its seat. */
import { exact, type Solved } from '../numeric/solved.ts';
import type { Restriction } from './types.ts';

const noFlow: Solved = exact(0);
const noDrop: Solved = {
  status: 'not-converged',
  iterations: 0,
  residual: Number.POSITIVE_INFINITY,
  reason: 'no pressure drives flow through a closed path',
};

export const closedPath: Restriction = {
  flow: () => noFlow,
  drop: (Q) => (Q === 0 ? exact(0) : noDrop),
};
