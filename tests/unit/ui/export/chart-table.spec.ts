import { describe, expect, it } from 'vitest';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import { type ChartShown, chartRows } from '../../../../src/ui/export/chart-table.ts';
import { columns, curve, failed, point } from './points.ts';

const N_PER_LBF = 4.4482216152605;

const shown = (part: Partial<ChartShown> = {}): ChartShown => ({
  direction: 1,
  stack: 'compression',
  valve: 'piston',
  withoutGas: false,
  shimQuantity: 'lift',
  withBands: false,
  baselineName: 'Stock',
  ...part,
});
const band: ForcePoint['band'] = { status: 'converged', low_N: 900, high_N: 1100 };
const stock = {
  id: 'a',
  name: 'Stock',
  curve: curve(point(-1), point(-0.5), point(0.5), point(1, { band }), failed(2)),
};
const custom = { id: 'b', name: 'Custom', curve: curve(point(-2), point(2)) };

describe('the data of a chart', () => {
  it('force: a row for each speed of any build, a column for each build and direction, unit in the head', () => {
    const rows = chartRows('force', [stock, custom], shown(), { family: 'metric' });
    expect(rows[0]).toEqual([
      'Shaft speed, m/s',
      'Stock: Force, compression, N',
      'Stock: Force, rebound, N',
      'Custom: Force, compression, N',
      'Custom: Force, rebound, N',
    ]);
    expect(rows.slice(1)).toEqual([
      [0.5, 500, -500, undefined, undefined],
      [1, 1000, -1000, undefined, undefined],
      [2, undefined, undefined, 2000, -2000],
    ]);
  });

  it('force less gas says so and takes it off', () => {
    const table = columns(chartRows('force', [custom], shown({ withoutGas: true }), { family: 'metric' }));
    expect(table['Custom: Force without that of the gas, compression, N']).toEqual([1950]);
    expect(table['Custom: Force without that of the gas, rebound, N']).toEqual([-2050]);
  });

  it('imperial: in/s and lbf', () => {
    const table = columns(chartRows('force', [custom], shown(), { family: 'imperial' }));
    expect(table['Shaft speed, in/s'][0]).toBeCloseTo(2 / 0.0254, 9);
    expect(table['Custom: Force, compression, lbf'][0]).toBeCloseTo(2000 / N_PER_LBF, 9);
  });

  it('the band of the tolerances of the one build that shows it has its edges', () => {
    const area = { speeds_m_s: [0.5, 1], low_N: [480, 950], high_N: [520, 1060] };
    const scatter = { buildId: 'b', areas: { compression: [area], rebound: [] } };
    const two = { ...stock, id: 'b', curve: curve(point(-1), point(0.5), point(1)) };
    const table = columns(chartRows('force', [two], shown({ scatter }), { family: 'metric' }));
    expect(table['Stock: Force, compression, tolerance p5, N']).toEqual([480, 950]);
    expect(table['Stock: Force, compression, tolerance p95, N']).toEqual([520, 1060]);
    const other = chartRows('force', [stock], shown({ scatter }), { family: 'metric' });
    expect(other[0].filter((head) => String(head).includes('tolerance'))).toEqual([]);
    const comparing = shown({ scatter, comparison: { as: 'difference', baseline: two.curve } });
    expect(chartRows('force', [two], comparing, { family: 'metric' })[0].join()).not.toContain('tolerance');
  });

  it('bands on show have their two edges; hidden ones none', () => {
    const two = { ...stock, curve: curve(point(0.5, { band }), point(1, { band })) };
    const table = columns(chartRows('force', [two], shown({ withBands: true }), { family: 'metric' }));
    expect(table['Stock: Force, compression, band from, N']).toEqual([900, 900]);
    expect(table['Stock: Force, compression, band to, N']).toEqual([1100, 1100]);
    expect(chartRows('force', [two], shown(), { family: 'metric' })[0]).toHaveLength(3);
  });

  it('differences name the baseline and what the sign means, in force or per cent, and have no bands', () => {
    const firmer = {
      ...custom,
      curve: curve(point(-1, { force_N: -1500, band }), point(-0.5, { force_N: -400, band }), failed(0.5), point(1)),
    };
    const beside = { withBands: true, comparison: { as: 'difference', baseline: stock.curve } } as const;
    const rows = chartRows('force', [stock, firmer], shown(beside), { family: 'metric' });
    expect(rows[0]).toHaveLength(5);
    const table = columns(rows);
    expect(table['Shaft speed, m/s']).toEqual([0.5, 1, 2]);
    expect(table['Stock: Firmer than Stock by (softer below 0), compression, N']).toEqual([0, 0, undefined]);
    expect(table['Custom: Firmer than Stock by (softer below 0), rebound, N']).toEqual([-100, 500, undefined]);
    expect(table['Custom: Firmer than Stock by (softer below 0), compression, N']).toEqual([undefined, 0, undefined]);
    const imperial = columns(chartRows('force', [firmer], shown(beside), { family: 'imperial' }));
    const lbf = imperial['Custom: Firmer than Stock by (softer below 0), rebound, lbf'];
    expect(lbf[1]).toBeCloseTo(500 / N_PER_LBF, 9);
    const share = shown({ ...beside, comparison: { ...beside.comparison, as: 'share' }, withoutGas: true });
    const shares = columns(chartRows('force', [firmer], share, { family: 'metric' }));
    // Less 50 N of gas, 1550 N stand against 1050 N.
    const head = 'Custom: Firmer than Stock without gas by (softer below 0), rebound, %';
    expect(shares[head][1]).toBeCloseTo((500 / 1050) * 100, 9);
  });

  it('paths in per cent, chambers above atmosphere, openings by the stack on show', () => {
    const paths = columns(chartRows('paths', [custom], shown(), { family: 'metric' }));
    expect(paths['Custom: Piston, share shims, compression, %']).toEqual([75]);
    const chambers = columns(chartRows('pressures', [custom], shown({ direction: -1 }), { family: 'metric' }));
    const head = 'Custom: Pressure in compression chamber, rebound, bar above atmosphere';
    expect(chambers[head][0]).toBeCloseTo(30, 9);
    const opening = columns(
      chartRows('opening', [custom], shown({ direction: -1, stack: 'rebound' }), { family: 'metric' }),
    );
    expect(opening['Custom: Piston: opening at the seat, rebound, mm'][0]).toBeCloseTo(0.1, 9);
  });

  it('nothing solved is no table', () => expect(chartRows('force', [], shown(), { family: 'metric' })).toEqual([]));
});
