import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatShimList } from '../../../src/model/format-shim-list.ts';
import { parseShimList } from '../../../src/model/shim-list.ts';

const row = (count: number, outerDiameter_mm: number, thickness_mm: number) => ({
  outerDiameter_mm,
  thickness_mm,
  count,
});

describe('parseShimList: what stands behind the sizes', () => {
  const plain = row(1, 30, 0.2);
  it.each<[string, object]>([
    ['24 x 0.3 ring 20', { ...row(1, 24, 0.3), innerDiameter_mm: 20 }],
    ['2 x 24 x 0.3 bore 20 mm', { ...row(2, 24, 0.3), innerDiameter_mm: 20 }],
    ['24,3 Ring 20,5', { ...row(1, 24, 0.3), innerDiameter_mm: 20.5 }],
    ['30 x 0.2 dish 0.05', { ...plain, dish_mm: 0.05 }],
    ['30 x 0,2 dish -0,05', { ...plain, dish_mm: -0.05 }],
    ['30 x 0.2 dish − .05', { ...plain, dish_mm: -0.05 }],
    ['30\t0.2\tdish\t0.05', { ...plain, dish_mm: 0.05 }],
    ['30 x 0.2 dish 2 thou', { ...plain, dish_mm: 0.0508 }],
    ['30 x 0.2 notches 4 × 2', { ...plain, notches: { count: 4, width_mm: 2 } }],
    ['30 x 0.2 notch 1 x .5', { ...plain, notches: { count: 1, width_mm: 0.5 } }],
    ['30 x 0.2 material 120 GPa 0.34', { ...plain, material: { youngsModulus_GPa: 120, poissonsRatio: 0.34 } }],
    ['30 x 0.2 material 120 0.34', { ...plain, material: { youngsModulus_GPa: 120, poissonsRatio: 0.34 } }],
    [
      '30 x 0.2 material 206 0.3 yield 1500 MPa endurance 600',
      {
        ...plain,
        material: { youngsModulus_GPa: 206, poissonsRatio: 0.3, yieldStrength_MPa: 1500, enduranceLimit_MPa: 600 },
      },
    ],
    ['30 x 0.2 dish 0.05 ring 20 # a coned ring', { ...plain, innerDiameter_mm: 20, dish_mm: 0.05 }],
    ['1.2 in x 6 thou ring 0.8 in', { ...row(1, 30.48, 0.1524), innerDiameter_mm: 20.32 }],
  ])('reads %j', (text, wanted) => {
    expect(parseShimList(text)).toEqual({ rows: [wanted], faults: [] });
  });

  it.each([
    ['30 x 0.2 ring', 'shims.list.feature'],
    ['30 x 0.2 ring -20', 'shims.list.feature'],
    ['30 x 0.2 ring 20 21', 'shims.list.feature'],
    ['30 x 0.2 ring 20 bore 20', 'shims.list.feature'],
    ['30 x 0.2 dish up', 'shims.list.feature'],
    ['30 x 0.2 notches 4', 'shims.list.feature'],
    ['30 x 0.2 notches 1.5 x 2', 'shims.list.feature'],
    ['30 x 0.2 notches 0 x 2', 'shims.list.feature'],
    ['30 x 0.2 material 120', 'shims.list.feature'],
    ['30 x 0.2 material 120 0.5', 'shims.list.feature'],
    ['30 x 0.2 material 206 0.3 endurance 600 yield 1500', 'shims.list.feature'],
    ['30 x 0.2 ring 900', 'shims.list.feature'],
    ['1.2 in x .006 in ring 0.8', 'shims.list.unit'],
    ['1.2 in x .006 in notches 4 x 2', 'shims.list.unit'],
    ['ring 20', 'shims.list.not-a-shim'],
  ])('refuses %j', (text, code) => {
    const { rows, faults } = parseShimList(text);
    expect(rows).toEqual([]);
    expect(faults).toMatchObject([{ code, path: 'line 1', got: JSON.stringify(text) }]);
  });
});

describe('formatShimList: what stands behind the sizes', () => {
  it('writes what a shim has beside its sizes behind them', () => {
    const material = { youngsModulus_GPa: 120, poissonsRatio: 0.34 };
    const rows = [
      { ...row(1, 24, 0.3), innerDiameter_mm: 20 },
      { ...row(2, 30, 0.2), dish_mm: -0.05, material },
      { ...row(1, 30, 0.1), notches: { count: 4, width_mm: 2 } },
    ];
    expect(formatShimList(rows)).toBe(
      '1 x 24 x 0.3 ring 20\n2 x 30 x 0.2 dish -0.05 material 120 GPa 0.34\n1 x 30 x 0.1 notches 4 x 2',
    );
  });

  it('loses nothing of a shim with features (property)', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const shim = fc.record(
      {
        outerDiameter_mm: within(0.001, 500),
        thickness_mm: within(0.001, 20),
        count: fc.integer({ min: 1, max: 200 }),
        innerDiameter_mm: within(0.001, 500),
        dish_mm: within(-20, 20).map((dish) => dish + 0),
        material: fc.record(
          {
            youngsModulus_GPa: within(0.01, 1000),
            poissonsRatio: within(1e-9, 0.499),
            yieldStrength_MPa: within(1e-9, 10_000),
            tensileStrength_MPa: within(1e-9, 10_000),
            enduranceLimit_MPa: within(1e-9, 10_000),
          },
          { requiredKeys: ['youngsModulus_GPa', 'poissonsRatio'] },
        ),
        notches: fc.record({ count: fc.integer({ min: 1, max: 100 }), width_mm: within(0.001, 500) }),
      },
      { requiredKeys: ['outerDiameter_mm', 'thickness_mm', 'count'] },
    );
    fc.assert(
      fc.property(fc.array(shim, { maxLength: 4 }), (rows) => {
        expect(parseShimList(formatShimList(rows))).toEqual({ rows, faults: [] });
      }),
      { numRuns: 300 },
    );
  });
});
