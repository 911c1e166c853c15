/** Reads the chassis with the curves that are there, anew whenever either changes. */

import { computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { ChassisReading, DampingCurve } from '../../../workers/protocol.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { outcomes } from '../app/solve.ts';
import type { ForceCurve } from '../app/solved.ts';
import { project, visibleBuilds } from '../app/store.ts';
import { isSolved } from '../section/shape-at.ts';

export const reading = signal<ChassisReading | undefined>(undefined);
export const readingFailure = signal<string | undefined>(undefined);

/** Where it swings; the laden sag while undefined [mm]. */
const wantedTravel_mm = signal<number | undefined>(undefined);
/** A travel that the chassis no longer has is not asked for. */
export const swingTravel_mm = computed(() => {
  const at = wantedTravel_mm.value;
  const { wheelTravel_mm } = project.value.chassis;
  return at !== undefined && wheelTravel_mm !== undefined && at <= wheelTravel_mm ? at : undefined;
});
export const swingAt = (travel_mm: number | undefined): void => {
  wantedTravel_mm.value = travel_mm;
};

/** Without the force of the gas: that is a spring. */
export const dampingOf = (curve: ForceCurve): DampingCurve => ({
  shaftSpeed_m_s: curve.points.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s),
  force_N: curve.points.map((point) => (isSolved(point) ? point.force_N - point.gasForce_N : null)),
});

const curves = computed<Readonly<Record<string, DampingCurve>>>(() =>
  Object.fromEntries(
    visibleBuilds.value.flatMap(({ id }) => {
      const curve = outcomes.value.get(id)?.curve;
      return curve ? [[id, dampingOf(curve)]] : [];
    }),
  ),
);

let asked = 0;

async function read(): Promise<void> {
  const mine = ++asked;
  const at = swingTravel_mm.value;
  const request = { project: project.value, curves: curves.value, ...(at !== undefined && { wheelTravel_mm: at }) };
  try {
    const answer = await sideSolver().chassis(request, { channel: 'chassis' });
    if (mine !== asked) return;
    reading.value = answer;
    readingFailure.value = undefined;
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (mine !== asked || error.code === 'superseded' || error.code === 'cancelled') return;
    reading.value = undefined;
    readingFailure.value = errorInWords(error);
  }
}

/** Starts following document and curves; ends with the page. */
export const startReading = (): (() => void) =>
  effect(() => {
    void [project.value.chassis, project.value.damper, project.value.gas, curves.value, swingTravel_mm.value];
    void untracked(read);
  });
