/** The lift of one shim as a field round the circle: on rings at the nodes of its shape, at equal angles. */
import { millimetresFromMetres } from '../../units/si.ts';
import { liftAt, type WaveShape } from '../section/wave-shape.ts';

/** Values ring by ring, `angles` of them on each, at angles 2π j / angles; the last neighbours the first. */
export interface RingGrid {
  /** Rising [mm]. */
  readonly radii: readonly number[];
  readonly angles: number;
  readonly values: Float64Array;
}

/** Angles over one wave, and round a circle without any. */
const A_WAVE = 48;
const A_CIRCLE = 96;

/** Lift [m] of a shim over its own rings; θ = 0 at a port or crest. */
export function liftGrid(shape: WaveShape, shim: number): RingGrid {
  const first = shape.firstNode[shim];
  const radii = Array.from(shape.lift_m[shim], (_, i) => millimetresFromMetres(shape.radius_m[first + i]));
  const angles = shape.waves > 0 ? A_WAVE * shape.waves : A_CIRCLE;
  const values = new Float64Array(radii.length * angles);
  for (let j = 0; j < angles; j++) {
    const along = liftAt(shape, shim, (2 * Math.PI * j * shape.waves) / angles);
    for (const [i, lift] of along.entries()) values[i * angles + j] = lift;
  }
  return { radii, angles, values };
}

/** Least and greatest value on the grid. */
export function rangeOnGrid({ values }: RingGrid): { least: number; most: number } {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return { least, most };
}
