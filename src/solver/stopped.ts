import type { SolveHooks } from './types.ts';

/** The caller asked to stop; there is no result. */
export class SolveStopped extends Error {
  override readonly name = 'SolveStopped';

  constructor() {
    super('the run was stopped');
  }
}

/** @throws SolveStopped when the caller has asked to stop. */
export function stopIfAsked(hooks: SolveHooks): void {
  if (hooks.shouldStop?.()) throw new SolveStopped();
}
