/**
 * Pressure across the shims at which a stack that was followed through rising pressures begins to ruffle.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | μ | - | margin against waves: 1 at rest, 0 at the onset |
 *
 * The margin falls with the pressure, so a bisection over the solved points finds the two between which it passes 0;
 * between them it is taken as straight.
 */
import type { WavesOnset } from '../damper/types.ts';
import type { WavinessOutcome } from '../stack/waviness/stack-waviness.ts';

/** @param pressures_Pa solved pressures, rising @param wavinessAt margin of the state at one of them */
export function findWavesOnset(
  pressures_Pa: readonly number[],
  wavinessAt: (p: number) => WavinessOutcome,
): WavesOnset {
  let low = -1;
  let high = pressures_Pa.length;
  const margins = new Map<number, { margin: number; waves: number }>();
  while (high - low > 1) {
    // The first look is at the last point: most curves that are asked for stay stable.
    const i = margins.size === 0 ? high - 1 : Math.floor((low + high) / 2);
    const outcome = wavinessAt(pressures_Pa[i]);
    if (outcome.status !== 'found') return { status: 'unknown' };
    margins.set(i, outcome.waviness);
    if (outcome.waviness.margin > 0) low = i;
    else high = i;
  }
  const above = margins.get(high);
  if (!above) return { status: 'none' };
  const below = margins.get(low);
  if (!below) return { status: 'found', pressure_Pa: pressures_Pa[high], waves: above.waves };
  const share = below.margin / (below.margin - above.margin);
  const pressure_Pa = pressures_Pa[low] + share * (pressures_Pa[high] - pressures_Pa[low]);
  return { status: 'found', pressure_Pa, waves: above.waves };
}
