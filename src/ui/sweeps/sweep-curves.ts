/** The force of each build at the speed cursor along a sweep: looked up in what was solved for all speeds. */
import type { Build } from '../../model/project.ts';
import type { Direction } from '../app/places.ts';
import { gasForce } from '../app/preferences.ts';
import { outcomes } from '../app/solve.ts';
import { cursorSpeed } from '../app/store.ts';
import { type SweepPoint, sweepAnswer } from '../app/sweep-solve.ts';
import { pointOf } from '../app/views.ts';
import { awaitsWaves } from '../app/wave-solve.ts';
import { shownForce } from '../charts/shown-force.ts';
import { isSolved } from '../section/shape-at.ts';

import { forceAt } from './force-at.ts';

export interface SweepCurve {
  readonly build: Build;
  readonly way: Direction;
  /** Rising, in the unit of the sweep. */
  readonly at: readonly number[];
  /** null where a point did not solve. */
  readonly force_N: readonly (number | null)[];
  /** As the build is set, off its force curve. */
  readonly set?: { readonly at: number; readonly force_N: number };
  /** The build has nothing to turn. */
  readonly isLevel?: boolean;
  /** Some of it is of before an edit. */
  readonly stale: boolean;
}

export const WAYS: readonly Direction[] = [1, -1];

const isWithoutGas = (): boolean => gasForce.value === 'subtracted';

/** Of a build as it is set now; nothing while its curve is not solved there. */
export function forceAsSet(build: Build, way: Direction): { force_N: number; stale: boolean } | undefined {
  const outcome = outcomes.value.get(build.id);
  const point = pointOf(outcome, way);
  if (!outcome || !point || !isSolved(point)) return undefined;
  return { force_N: shownForce(point, isWithoutGas()), stale: outcome.stale || awaitsWaves(outcome) };
}

interface Value {
  readonly at: number;
  readonly force_N: number | null;
}

/** @param points of one build @param setAt where the build stands along the sweep */
export function sweepCurve(build: Build, points: readonly SweepPoint[], way: Direction, setAt?: number): SweepCurve {
  const speed = cursorSpeed.value;
  const known = points.flatMap((point) => {
    const answer = sweepAnswer(point);
    return answer ? [{ point, answer }] : [];
  });
  const values = known.map(
    ({ point: { at }, answer: { forces } }): Value => ({
      at,
      force_N: forces ? forceAt(forces, way, speed, isWithoutGas()) : null,
    }),
  );
  const asSet = setAt === undefined ? undefined : forceAsSet(build, way);
  const set = asSet && setAt !== undefined ? { at: setAt, force_N: asSet.force_N } : undefined;
  const all = [...values.filter(({ at }) => at !== set?.at), ...(set ? [set] : [])].sort((a, b) => a.at - b.at);
  return {
    build,
    way,
    at: all.map(({ at }) => at),
    force_N: all.map(({ force_N }) => force_N),
    ...(set && { set }),
    stale: (asSet?.stale ?? false) || known.some(({ answer }) => answer.stale),
  };
}
