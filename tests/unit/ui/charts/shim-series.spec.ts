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

  it('leaves out shims of unknown strength where a reserve is asked for', () => {
    expect(valuesOf('life')).toEqual([['shims 1–2', [1, null]]]);
    expect(valuesOf('yield')).toEqual([['shims 1–2', [0.5, null]]]);
  });

  it('is empty for a stack that the damper does not have', () => {
    expect(shimSeries('a', curve, { ...shown('lift'), stack: 'base' })).toEqual([]);
  });
});
