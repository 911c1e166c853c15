import { describe, expect, it } from 'vitest';
import { HermiteTable, pchipTable } from '../../../../src/solver/numeric/hermite-table.ts';
import { pchip } from '../../../../src/solver/numeric/pchip.ts';

describe('HermiteTable', () => {
  it('is exact for a cubic, in value and slope', () => {
    const x = [-1, 0.5, 2, 2.5];
    const table = new HermiteTable(
      x,
      x.map((v) => v ** 3),
      x.map((v) => 3 * v * v),
    );
    for (const at of [-1, -0.3, 0.5, 1.7, 2.4, 2.5]) {
      expect(table.at(at)).toBeCloseTo(at ** 3, 13);
      expect(table.slope(at)).toBeCloseTo(3 * at * at, 12);
    }
    expect([table.first, table.last]).toEqual([-1, 2.5]);
  });

  it('has no number outside its points, nor at none', () => {
    const table = new HermiteTable([0, 1], [0, 1], [1, 1]);
    for (const x of [-1e-9, 1.0001, Number.NaN]) {
      expect(table.at(x)).toBeNaN();
      expect(table.slope(x)).toBeNaN();
    }
  });
});

describe('pchipTable', () => {
  it('reads the curve of pchip', () => {
    const [x, y] = [
      [0, 1, 2.5, 4, 7],
      [0, 0.5, 3, 3.2, 10],
    ];
    const [table, curve] = [pchipTable(x, y), pchip(x, y)];
    for (let at = 0; at <= 7; at += 0.25) expect(table.at(at)).toBeCloseTo(curve(at), 13);
    // Source: scipy.interpolate.PchipInterpolator 1.17.1 on the same points.
    expect(table.at(3.1)).toBeCloseTo(3.0907265917602995, 12);
  });
});
