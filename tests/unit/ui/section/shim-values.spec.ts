import { describe, expect, it } from 'vitest';
import type { StackTable } from '../../../../src/ui/app/solved.ts';
import { shimValuesAt } from '../../../../src/ui/section/shim-values.ts';

const table = {
  theory: 'large-deflection',
  pressure_Pa: [0, 100],
  points: [
    { shimEdgeLift_m: [0, 0], shimStress_Pa: [10, 0] },
    { shimEdgeLift_m: [4, 2], shimStress_Pa: [50, 80] },
  ],
  failures: [],
  life: {
    shims: [
      [
        { fatigue: 0, yield: 0.2 },
        { fatigue: 1, yield: 0.6 },
      ],
      null,
    ],
  },
} as unknown as StackTable;

describe('shimValuesAt', () => {
  it('goes straight between two pressures, shim by shim; one of unknown strength has no use', () => {
    expect(shimValuesAt(table, 25)).toEqual([
      { lift_m: 1, stress_Pa: 20, use: { life: 0.25, yield: expect.closeTo(0.3, 12) } },
      { lift_m: 0.5, stress_Pa: 20 },
    ]);
  });

  it('of a stack that waves has crest and trough of each rim, straight between too', () => {
    const shapeOf = (mean: number, amplitude: number) => ({
      radius_m: Float64Array.of(0.006, 0.015),
      firstNode: [0, 0],
      lift_m: [Float64Array.of(0, mean), Float64Array.of(0, mean / 2)],
      harmonics_m: [[Float64Array.of(0, amplitude)], [Float64Array.of(0, amplitude / 4)]],
    });
    const wave = { waves: 4, minEdgeLift_m: 0, maxEdgeLift_m: 0 };
    const waved = {
      ...table,
      points: [
        { ...table.points[0], wave, shape: shapeOf(0, 0) },
        { ...table.points[1], wave, shape: shapeOf(4, 2) },
      ],
    } as unknown as StackTable;
    // Halfway: 2 ± 1 at the face shim, 1 ± 1/4 at the other.
    const values = shimValuesAt(waved, 50);
    expect(values?.map((each) => each.wave)).toEqual([
      { crest_m: 3, trough_m: 1 },
      { crest_m: 1.25, trough_m: 0.75 },
    ]);
    expect(values?.map(({ lift_m }) => lift_m)).toEqual([2, 1]);
    expect(shimValuesAt(table, 50)?.[0]).not.toHaveProperty('wave');
  });

  it('has nothing beyond its end, nor in an empty table', () => {
    expect(shimValuesAt(table, 101)).toBeUndefined();
    expect(shimValuesAt({ ...table, pressure_Pa: [], points: [] }, 0)).toBeUndefined();
  });
});
