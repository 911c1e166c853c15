import { describe, expect, it } from 'vitest';
import type { ForceCurve, ForcePoint } from '../../../../src/ui/app/solved.ts';
import { bandAreas } from '../../../../src/ui/charts/force-bands.ts';

const banded = (shaftSpeed_m_s: number, low_N: number, high_N: number): ForcePoint =>
  ({
    status: 'converged',
    shaftSpeed_m_s,
    gasForce_N: 100,
    band: { status: 'converged', low_N, high_N },
  }) as unknown as ForcePoint;
const bare = (shaftSpeed_m_s: number): ForcePoint =>
  ({ status: 'converged', shaftSpeed_m_s, gasForce_N: 100 }) as unknown as ForcePoint;
const curve = (...points: ForcePoint[]): ForceCurve => ({ points }) as unknown as ForceCurve;

describe('the areas of a band', () => {
  it('lie between low and high, in one direction', () => {
    const areas = bandAreas(curve(banded(-1, -9, -7), banded(1, 300, 400), banded(2, 500, 700)), 1, false);
    expect(areas).toEqual([{ speeds_m_s: [1, 2], low_N: [300, 500], high_N: [400, 700] }]);
  });

  it('go down with the force of the gas where that is taken off', () => {
    const [area] = bandAreas(curve(banded(1, 300, 400), banded(2, 500, 700)), 1, true);
    expect(area).toMatchObject({ low_N: [200, 400], high_N: [300, 600] });
  });

  it('end where a speed has no band, and are none before it is solved', () => {
    const gap = curve(banded(1, 1, 2), banded(2, 1, 2), bare(3), banded(4, 1, 2), banded(5, 1, 2));
    expect(bandAreas(gap, 1, false).map(({ speeds_m_s }) => speeds_m_s)).toEqual([
      [1, 2],
      [4, 5],
    ]);
    expect(bandAreas(curve(bare(1), bare(2)), 1, false)).toEqual([]);
  });
});
