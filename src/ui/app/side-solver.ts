/** A second solver for what takes longer: it starts when first asked, and never keeps an edit waiting for its curve. */
import { createSolverClient, type SolverClient } from '../../../workers/client.ts';

let client: SolverClient | undefined;

export const sideSolver = (): SolverClient => {
  client ??= createSolverClient();
  return client;
};
