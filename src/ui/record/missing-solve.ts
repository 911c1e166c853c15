/** Solves what each unknown does to the force of the baseline build, one after the other, beside the solver of the bench. */

import { signal } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { SpeedForces } from '../../../workers/protocol.ts';
import type { Project } from '../../model/project.ts';
import { validateProject } from '../../model/validate.ts';
import { inReaderUnits } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { theory } from '../app/store.ts';
import { recordWords } from '../text/record.ts';
import type { Unknown } from './unknown-draft.ts';
import { unknownsOf } from './unknowns.ts';

/** Shaft speeds at which effects are told [m/s]: where the bleed rules, and a hard hit. */
export const SLOW_M_S = 0.1;
export const FAST_M_S = 1;
const SPEEDS = [-FAST_M_S, -SLOW_M_S, SLOW_M_S, FAST_M_S];
const SLOW = [1, 2];
const FAST = [0, 3];

/** Largest change of the force as a share of the damping force. */
export interface Effect {
  readonly slow: number;
  readonly fast: number;
}
export type Answer = Effect | { readonly failure: string };

export interface MissingRow extends Omit<Unknown, 'ends'> {
  readonly answer?: Answer;
}

export interface MissingState {
  readonly rows: readonly MissingRow[];
  readonly done: number;
  readonly failure?: string;
}

export const missing = signal<MissingState>({ rows: [], done: 0 });

export const largest = (answer: Answer | undefined): number =>
  answer && 'slow' in answer ? Math.max(answer.slow, answer.fast) : -1;

class NotSolved extends Error {}

async function forcesOf(project: Project, signalToStop: AbortSignal): Promise<SpeedForces> {
  const request = {
    project,
    buildIds: [project.baselineBuild],
    speeds_m_s: SPEEDS,
    theory: theory.peek(),
  };
  const { builds } = await sideSolver().forces(request, { signal: signalToStop, channel: 'missing' });
  const answer = builds[project.baselineBuild];
  if (answer.status === 'failed') throw new NotSolved(errorInWords(answer.error));
  if (answer.forces.force_N.includes(null)) throw new NotSolved(answer.forces.reasons.map(inReaderUnits).join('; '));
  return answer.forces;
}

/** @param at places of the speeds */
function shareAt(at: readonly number[], drawn: SpeedForces, ends: readonly Pick<SpeedForces, 'force_N'>[]): number {
  const shares = at.flatMap((i) => {
    const force_N = drawn.force_N[i] ?? 0;
    const damping_N = Math.abs(force_N - (drawn.gasForce_N[i] ?? 0));
    return ends.map((end) => Math.abs((end.force_N[i] ?? 0) - force_N) / damping_N);
  });
  return Math.max(...shares);
}

async function answerFor({ ends }: Unknown, drawn: SpeedForces, stop: AbortSignal): Promise<Answer> {
  const possible = ends.filter((end) => validateProject(end).ok);
  const solved: SpeedForces[] = [];
  try {
    for (const end of possible) solved.push(await forcesOf(end, stop));
  } catch (error) {
    if (error instanceof NotSolved) return { failure: error.message };
    throw error;
  }
  if (solved.length === 0) return { failure: recordWords.missing.noEnd };
  return { slow: shareAt(SLOW, drawn, solved), fast: shareAt(FAST, drawn, solved) };
}

/** What the ranges of all flow coefficients leave open, as the bands of the chart have it. */
async function coefficientRow(project: Project, drawn: SpeedForces, stop: AbortSignal): Promise<Answer> {
  const request = { project, buildIds: [project.baselineBuild], speeds_m_s: SPEEDS, theory: theory.peek() };
  const { builds } = await sideSolver().forceBands(request, { signal: stop, channel: 'missing' });
  const answer = builds[project.baselineBuild];
  if (answer.status === 'failed') return { failure: errorInWords(answer.error) };
  const bands = answer.bands.flatMap((band) => (band?.status === 'converged' ? [band] : []));
  // A band that is not there is no band of no width.
  if (bands.length < answer.bands.length) return { failure: recordWords.missing.noBand };
  const ends = [{ force_N: bands.map(({ low_N }) => low_N) }, { force_N: bands.map(({ high_N }) => high_N) }];
  return { slow: shareAt(SLOW, drawn, ends), fast: shareAt(FAST, drawn, ends) };
}

const COEFFICIENTS: MissingRow = {
  id: 'coefficients',
  step: 'wear',
  label: recordWords.missing.items.coefficients,
  range: '',
  reason: 'coefficient',
};

function put(id: string, answer: Answer): void {
  const { rows, done } = missing.peek();
  const next = rows.map((row) => (row.id === id ? { ...row, answer } : row));
  missing.value = { rows: next.sort((a, b) => largest(b.answer) - largest(a.answer)), done: done + 1 };
}

/** Solves them all; ends when `stop` says so. */
export async function solveMissing(project: Project, stop: AbortSignal): Promise<void> {
  const unknowns = unknownsOf(project);
  missing.value = { rows: [...unknowns.map(({ ends: _ends, ...row }) => row), COEFFICIENTS], done: 0 };
  try {
    const drawn = await forcesOf(project, stop);
    for (const unknown of unknowns) put(unknown.id, await answerFor(unknown, drawn, stop));
    put(COEFFICIENTS.id, await coefficientRow(project, drawn, stop));
  } catch (error) {
    if (stop.aborted) return;
    if (!(error instanceof NotSolved || error instanceof SolverError)) throw error;
    missing.value = { ...missing.peek(), failure: error.message };
  }
}
