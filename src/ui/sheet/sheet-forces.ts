/** Forces for the sheet, at its own speeds, so that page and command line print the same. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildForces } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { SHEET_SPEEDS_M_S, type SheetCurve } from '../../sheet/input.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow } from '../app/solve.ts';
import { baseline, project, selectedBuild, theory } from '../app/store.ts';

/** Curves kept for undo and for switching back [builds]. */
const KEPT = 12;

const curves = signal<ReadonlyMap<string, SheetCurve>>(new Map());

/** As the document is now. */
export const sheetCurve = (build: Build): SheetCurve => curves.value.get(keyNow(build)) ?? { status: 'solving' };

const curveFrom = (answer: BuildForces): SheetCurve =>
  answer.status === 'solved'
    ? { status: 'solved', ...answer.forces }
    : { status: 'failed', reason: errorInWords(answer.error) };

function keep(key: string, curve: SheetCurve): void {
  curves.value = new Map([...curves.value, [key, curve] as const].slice(-KEPT));
}

let running: AbortController | undefined;

async function solve(wanted: ReadonlyMap<string, Build>): Promise<void> {
  const stop = new AbortController();
  running = stop;
  const request = {
    project: project.peek(),
    buildIds: [...new Set([...wanted.values()].map(({ id }) => id))],
    speeds_m_s: SHEET_SPEEDS_M_S,
    theory: theory.peek(),
  };
  try {
    const { builds } = await sideSolver().forces(request, { signal: stop.signal, channel: 'sheet' });
    for (const [key, { id }] of wanted) keep(key, curveFrom(builds[id]));
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code === 'cancelled' || error.code === 'superseded') return;
    for (const key of wanted.keys()) keep(key, { status: 'failed', reason: errorInWords(error) });
  }
}

/** Solves the build on show and the baseline, now and after every edit that changes them; ends with the page. */
export function startSheetForces(): () => void {
  const dispose = effect(() => {
    const wanted = new Map([selectedBuild.value, baseline.value].map((build) => [keyNow(build), build]));
    const missing = new Map([...wanted].filter(([key]) => !curves.peek().has(key)));
    running?.abort();
    if (missing.size > 0) void untracked(() => solve(missing));
  });
  return () => {
    dispose();
    running?.abort();
  };
}
