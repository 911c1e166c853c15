import { describe, expect, it } from 'vitest';
import type { ForceCurve } from '../../../../src/ui/app/solved.ts';
import type { Shown } from '../../../../src/ui/charts/chart-data.ts';
import { shimSeries } from '../../../../src/ui/charts/shim-series.ts';

const uses = [0, 2].map((use) => ({ fatigue: use, yield: use / 2 }));
const curve = {
  theory: 'large-deflection',
  points: [
    { status: 'converged', shaftSpeed_m_s: 1, shimPressure_Pa: 50 },
    { status: 'singular', shaftSpeed_m_s: 2, reason: 'made by a test' },
    { status: 'converged', shaftSpeed_m_s: -1, shimPressure_Pa: 100 },
  ],
  stacks: {
    compression: {
      pressure_Pa: [0, 100],
      points: [
        { shimEdgeLift_m: [0, 0, 0], shimStress_Pa: [0, 0, 0] },
        { shimEdgeLift_m: [4, 4, 1], shimStress_Pa: [20, 20, 60] },
      ],
      life: { shims: [uses, uses, null] },
    },
  },
} as unknown as ForceCurve;

const shown = (shimQuantity: Shown['shimQuantity']): Shown => ({
  direction: 1,
  stack: 'compression',
  valve: 'piston',
  withoutGas: false,
  shimQuantity,
});
const valuesOf = (quantity: Shown['shimQuantity']) =>
  shimSeries('a', curve, shown(quantity)).map(({ part, values }) => [part, values]);

describe('shimSeries', () => {
  it('has one line for neighbours that do the same, with a gap where a speed did not solve', () => {
    expect(valuesOf('lift')).toEqual([
      ['shims 1–2', [2, null]],
      ['shims 3', [0.5, null]],
    ]);
    expect(valuesOf('stress')[1]).toEqual(['shims 3', [30, null]]);
  });

  it('has the range from trough to crest round a lift that waves, and of the lift alone', () => {
    const shape = {
      radius_m: [0.006, 0.015],
      firstNode: [0, 0, 0],
      lift_m: [4, 4, 1].map((rim) => Float64Array.of(0, rim)),
      harmonics_m: [2, 2, 0.5].map((rim) => [Float64Array.of(0, rim)]),
    };
    const { compression } = curve.stacks;
    const points = compression.points.map((point) => ({ ...point, wave: { waves: 3 }, shape }));
    const waved = { ...curve, stacks: { compression: { ...compression, points } } } as unknown as ForceCurve;
    const series = shimSeries('a', waved, shown('lift'));
    expect(series.map(({ range }) => range)).toEqual([
      [{ low_m: 2, high_m: 6 }, null],
      [{ low_m: 0.5, high_m: 1.5 }, null],
    ]);
    expect(shimSeries('a', waved, shown('stress')).every(({ range }) => range === undefined)).toBe(true);
    expect(shimSeries('a', curve, shown('lift')).every(({ range }) => range === undefined)).toBe(true);
  });

  it('leaves out shims of unknown strength where a reserve is asked for', () => {
    expect(valuesOf('life')).toEqual([['shims 1–2', [1, null]]]);
    expect(valuesOf('yield')).toEqual([['shims 1–2', [0.5, null]]]);
  });

  it('is empty for a stack that the damper does not have', () => {
    expect(shimSeries('a', curve, { ...shown('lift'), stack: 'base' })).toEqual([]);
  });
});
