import { describe, expect, it } from 'vitest';
import type { RufflingOutcome, WavinessOutcome } from '../../../../src/solver/stack/waviness/stack-waviness.ts';
import { findWavesOnset } from '../../../../src/solver/valve/waves-onset.ts';

/** A stack whose margin falls straight from 1 and passes 0 at a pressure known beforehand. */
function falling(onset: number, asked: number[] = []) {
  const look = (p: number): number => {
    asked.push(p);
    return 1 - p / onset;
  };
  return {
    rufflingAt: (p: number): RufflingOutcome => (look(p) < 0 ? { status: 'ruffled', waves: 4 } : { status: 'round' }),
    wavinessAt: (p: number): WavinessOutcome => ({ status: 'found', waviness: { margin: look(p), waves: 4 } }),
  };
}

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
    expect(asked.length).toBeLessThanOrEqual(8);
  });

  it('is unknown as soon as one look fails', () => {
    const failing = () => ({ status: 'singular' }) as const;
    const stack = falling(2.5e5);
    expect(findWavesOnset(pressures, { ...stack, rufflingAt: failing })).toEqual({ status: 'unknown' });
    expect(findWavesOnset(pressures, { ...stack, wavinessAt: failing })).toEqual({ status: 'unknown' });
  });

  it('is at the first point of all when that is wavy already', () => {
    const found = findWavesOnset([2e5, 3e5], falling(1e5));
    expect(found).toEqual({ status: 'found', pressure_Pa: 2e5, waves: 4 });
  });

  it('stays within its two points where a margin is not known to its last digit', () => {
    const stack = falling(2.5e5);
    const wavinessAt = (p: number): WavinessOutcome => ({
      status: 'found',
      waviness: { margin: p > 2e5 ? 1e-5 : 1e-4, waves: 4 },
    });
    expect(findWavesOnset(pressures, { ...stack, wavinessAt })).toMatchObject({ status: 'found', pressure_Pa: 3e5 });
  });

  it('is none for an empty table', () => {
    expect(findWavesOnset([], falling(1))).toEqual({ status: 'none' });
  });
});
