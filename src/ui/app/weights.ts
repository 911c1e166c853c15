/** Over which viscosities oils of one weight number are sold: fetched when it is first looked at. */
import { signal } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { WeightSpread } from '../../../workers/protocol.ts';
import { sideSolver } from './side-solver.ts';

export const weightSpreads = signal<readonly WeightSpread[]>([]);
export const weightsFailure = signal<string | undefined>(undefined);

export async function fetchWeights(): Promise<void> {
  if (weightSpreads.value.length > 0) return;
  try {
    const { spreads } = await sideSolver().weightSpreads();
    weightSpreads.value = spreads;
    weightsFailure.value = undefined;
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'superseded') weightsFailure.value = error.message;
  }
}
