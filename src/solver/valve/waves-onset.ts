/**
 * Pressure across the shims at which a stack that was followed through rising pressures begins to ruffle.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | μ | - | margin against waves: 1 at rest, 0 at the onset |
 *
 * The margin falls with the pressure, so a bisection over the solved points finds the two between which it passes 0;
 * between them it is taken as straight. The bisection asks for the sign alone, which is cheaper than the margin.
 */
import type { WavesOnset } from '../damper/types.ts';
import type { LoadedStack } from '../stack/loaded-stack.ts';

/** @param pressures_Pa solved pressures, rising @param stack that was solved there */
export function findWavesOnset(
  pressures_Pa: readonly number[],
  { rufflingAt, wavinessAt }: Pick<LoadedStack, 'rufflingAt' | 'wavinessAt'>,
): WavesOnset {
  const last = pressures_Pa.length - 1;
  let [low, high] = [-1, last + 1];
  while (high - low > 1) {
    // The first look is at the last point: most curves that are asked for stay stable.
    const i = high > last ? last : Math.floor((low + high) / 2);
    const { status } = rufflingAt(pressures_Pa[i]);
    if (status === 'singular') return { status: 'unknown' };
    if (status === 'round') low = i;
    else high = i;
  }
  if (high > last) return { status: 'none' };
  const above = wavinessAt(pressures_Pa[high]);
  if (above.status !== 'found') return { status: 'unknown' };
  const { margin, waves } = above.waviness;
  if (low < 0) return { status: 'found', pressure_Pa: pressures_Pa[high], waves };
  const below = wavinessAt(pressures_Pa[low]);
  if (below.status !== 'found') return { status: 'unknown' };
  // A margin is known to its tolerance only, and one that a count puts below 0 may be found a little above.
  const share = margin < 0 ? below.waviness.margin / (below.waviness.margin - margin) : 1;
  const pressure_Pa = pressures_Pa[low] + share * (pressures_Pa[high] - pressures_Pa[low]);
  return { status: 'found', pressure_Pa, waves };
}
