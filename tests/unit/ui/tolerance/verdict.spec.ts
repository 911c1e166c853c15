import { describe, expect, it } from 'vitest';
import { rowsOf, scatterOf } from '../../../../src/ui/tolerance/scatter-rows.ts';
import { verdictOf } from '../../../../src/ui/tolerance/verdict.ts';
import { READING, share, study } from './studies.ts';

const verdictAt = (speed: number, of = study()) =>
  verdictOf(rowsOf(of, 1, speed, 'cursor'), 'cursor', scatterOf(of, 1, speed));

describe('the verdict', () => {
  it('names what makes most, what comes next, and how the band would shrink: the width goes with the root of the variance', () => {
    const verdict = verdictAt(1);
    expect(verdict?.most.name).toBe('thickness');
    expect(verdict?.next?.name).toBe('seat');
    expect(verdict?.isTied).toBe(false);
    // p5 80 and p95 140 N; 0.6 of the variance gone leaves the root of 0.4.
    expect(verdict?.half_N).toBe(30);
    expect(verdict?.without_N).toBeCloseTo(30 * Math.sqrt(0.4), 9);
  });

  it('does not tell two apart whose intervals meet', () => {
    const shares = READING.shares.map(() => [share(0.5), share(0.35), share(0)]);
    const close = study({ read: { reading: { ...READING, shares }, samples: 4 } });
    expect(verdictAt(1, close)?.isTied).toBe(true);
  });

  it('over the range has no band, since every speed has another', () => {
    const verdict = verdictOf(rowsOf(study(), 1, 1, 'range'), 'range', scatterOf(study(), 1, 1));
    expect(verdict?.share.total.value).toBe(0.55);
    expect(verdict?.half_N).toBeUndefined();
  });

  it('is none where nothing scatters, and has no next that makes next to nothing', () => {
    const only = (first: number) => {
      const shares = READING.shares.map(() => [share(first, first, 0), share(0, 0, 0), share(0, 0, 0)]);
      return study({ read: { reading: { ...READING, shares }, samples: 4 } });
    };
    expect(verdictAt(1, only(0))).toBeUndefined();
    const verdict = verdictAt(1, only(1));
    expect(verdict?.next).toBeUndefined();
    expect(verdict?.without_N).toBe(0);
  });
});
