/** How far forces are from an aim: the root of the mean square over its points, without gas, as the search judges it. */
import type { SpeedForces } from '../../../workers/protocol.ts';
import type { Aim } from '../../model/project.ts';

export interface Distance {
  readonly rms_N: number;
  /** Of the root mean square of the aim; not known where that is 0. */
  readonly share?: number;
}

const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

/** @returns undefined where a speed did not solve: part of a distance would look like all of it */
export function distanceOf({ points }: Pick<Aim, 'points'>, forces: SpeedForces): Distance | undefined {
  const off: number[] = [];
  for (const [i, { force_N }] of points.entries()) {
    const [force, gas] = [forces.force_N[i], forces.gasForce_N[i]];
    if (force === null || gas === null) return undefined;
    off.push(force - gas - force_N);
  }
  const size = rms(points.map(({ force_N }) => force_N));
  const rms_N = rms(off);
  return { rms_N, ...(size > 0 && { share: rms_N / size }) };
}
