import { describe, expect, it } from 'vitest';
import type { WavinessOutcome } from '../../../../src/solver/stack/waviness/stack-waviness.ts';
import { findWavesOnset } from '../../../../src/solver/valve/waves-onset.ts';

/** A margin that falls straight from 1 and passes 0 at a pressure known beforehand. */
const falling =
  (onset: number, asked: number[] = []) =>
  (p: number): WavinessOutcome => {
    asked.push(p);
    return { status: 'found', waviness: { margin: 1 - p / onset, waves: 4 } };
  };

describe('where a stack begins to ruffle', () => {
  const pressures = Array.from({ length: 16 }, (_, i) => i * 1e5);

  it('is exact for a margin that falls straight, wherever it passes nothing', () => {
    for (const onset of [1e4, 2.5e5, 7.3e5, 1.49e6]) {
      const found = findWavesOnset(pressures, falling(onset));
      expect(found).toMatchObject({ status: 'found', waves: 4 });
      expect(found.status === 'found' && found.pressure_Pa).toBeCloseTo(onset, 3);
    }
  });

  it('is none when the last point is stable, and looks there only', () => {
    const asked: number[] = [];
    expect(findWavesOnset(pressures, falling(2e6, asked))).toEqual({ status: 'none' });
    expect(asked).toEqual([1.5e6]);
  });

  it('needs a handful of looks, not one a point', () => {
    const asked: number[] = [];
    findWavesOnset(pressures, falling(2.5e5, asked));
    expect(asked.length).toBeLessThanOrEqual(6);
  });

  it('is unknown as soon as one look fails', () => {
    expect(findWavesOnset(pressures, () => ({ status: 'singular' }))).toEqual({ status: 'unknown' });
  });

  it('is none for an empty table', () => {
    expect(findWavesOnset([], falling(1))).toEqual({ status: 'none' });
  });
});
