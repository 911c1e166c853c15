/** How far the builds are from the aim: solved at the speeds of its points, as the search judges it. */
import { computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { SpeedForces } from '../../../workers/protocol.ts';
import type { AimPoint } from '../../model/project.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow, requestFor } from '../app/solve.ts';
import { visibleBuilds } from '../app/store.ts';
import { chosenAim } from './aim-store.ts';
import { type Distance, distanceOf } from './distance.ts';

const answers = signal<ReadonlyMap<string, SpeedForces | 'failed'>>(new Map());
const KEPT = 48;

interface Wanted {
  readonly buildId: string;
  readonly key: string;
}

const speedsOf = (points: readonly AimPoint[]): number[] => points.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s);

const wanted = computed<Wanted[]>(() => {
  const aim = chosenAim.value;
  if (!aim) return [];
  const speeds = JSON.stringify(speedsOf(aim.points));
  return visibleBuilds.value.map((build) => ({ buildId: build.id, key: `${keyNow(build)} ${speeds}` }));
});

export type DistanceAnswer = Distance | 'unsolved' | undefined;

/** By build id; undefined while it is being solved. */
export const distances = computed<ReadonlyMap<string, DistanceAnswer>>(() => {
  const aim = chosenAim.value;
  const of = ({ key }: Wanted): DistanceAnswer => {
    const answer = answers.value.get(key);
    if (!answer || !aim) return undefined;
    return (answer !== 'failed' && distanceOf(aim, answer)) || 'unsolved';
  };
  return new Map(wanted.value.map((each) => [each.buildId, of(each)]));
});

async function solve(missing: readonly Wanted[], points: readonly AimPoint[], stop: AbortController): Promise<void> {
  const builds = visibleBuilds.value.filter(({ id }) => missing.some(({ buildId }) => buildId === id));
  const request = { ...requestFor(builds), speeds_m_s: speedsOf(points) };
  try {
    const answer = await sideSolver().forces(request, { signal: stop.signal, channel: 'aim' });
    const solved = missing.map(({ buildId, key }) => {
      const forces = answer.builds[buildId];
      return [key, forces?.status === 'solved' ? forces.forces : 'failed'] as const;
    });
    answers.value = new Map([...answers.value, ...solved].slice(-KEPT));
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code === 'cancelled' || error.code === 'superseded') return;
    const failed = missing.map(({ key }) => [key, 'failed'] as const);
    answers.value = new Map([...answers.value, ...failed].slice(-KEPT));
  }
}

/** While a point is dragged along, the speeds of a moment ago are not worth their solve [ms]. */
const PATIENCE_MS = 150;

/** Starts following aim and builds; ends with the page. */
export function startDistances(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stop: AbortController | undefined;
  const dispose = effect(() => {
    const missing = wanted.value.filter(({ key }) => !answers.peek().has(key));
    const points = chosenAim.peek()?.points ?? [];
    clearTimeout(timer);
    stop?.abort();
    if (missing.length === 0) return;
    const mine = new AbortController();
    stop = mine;
    timer = setTimeout(() => void untracked(() => solve(missing, points, mine)), PATIENCE_MS);
  });
  return () => {
    dispose();
    clearTimeout(timer);
    stop?.abort();
  };
}
