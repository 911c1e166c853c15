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

  it('has nothing beyond its end, nor in an empty table', () => {
    expect(shimValuesAt(table, 101)).toBeUndefined();
    expect(shimValuesAt({ ...table, pressure_Pa: [], points: [] }, 0)).toBeUndefined();
  });
});
