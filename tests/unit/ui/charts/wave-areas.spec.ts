import { describe, expect, it } from 'vitest';
import { waveAreas } from '../../../../src/ui/charts/wave-areas.ts';

const range = (low_m: number, high_m: number) => ({ low_m, high_m });

describe('the area from trough to crest', () => {
  it('ends where a speed did not solve and begins anew behind it; one speed alone has none', () => {
    const speeds_m_s = [1, 2, 3, 4, 5, 6, 7];
    const areas = waveAreas({
      speeds_m_s,
      range: [range(1, 1), range(1, 3), null, range(2, 5), null, range(3, 6), range(3, 8)],
    });
    expect(areas).toEqual([
      { speeds_m_s: [1, 2], low_m: [1, 1], high_m: [1, 3] },
      { speeds_m_s: [6, 7], low_m: [3, 3], high_m: [6, 8] },
    ]);
  });

  it('there is none round a line without a range', () => expect(waveAreas({ speeds_m_s: [1, 2] })).toEqual([]));
});
