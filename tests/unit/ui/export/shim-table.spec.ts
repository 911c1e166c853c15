import { expect, it } from 'vitest';
import type { ShimRow } from '../../../../src/ui/charts/shim-rows.ts';
import { shimTable } from '../../../../src/ui/export/shim-table.ts';

const shim = (n: number, values: Partial<ShimRow['values']>): ShimRow => ({
  n,
  row: 0,
  outerDiameter_mm: 25.4,
  thickness_mm: 0.254,
  values: { lift_m: 0.000254, stress_Pa: 5e8, ...values },
});

it('has a row a shim in the units of a family, reserves as reciprocals of the uses', () => {
  const shims = [shim(1, { use: { life: 0.5, yield: 2 } }), shim(2, {}), shim(3, { use: { life: 0, yield: 0 } })];
  const [heads, ...rows] = shimTable(shims, { family: 'imperial' });
  expect(heads.slice(1, 4)).toEqual(['Diameter, in', 'Thickness, in', 'Rim lift, in']);
  // One inch is 25.4 mm by definition.
  expect(rows[0].slice(0, 4)).toEqual([1, 1, 0.01, 0.01].map((value) => expect.closeTo(value, 9)));
  expect(rows.map((row) => row.slice(5))).toEqual([
    [2, 0.5],
    [undefined, undefined],
    [undefined, undefined],
  ]);
});

it('is empty while nothing is solved', () => {
  expect(shimTable([], { family: 'metric' })).toEqual([]);
});
