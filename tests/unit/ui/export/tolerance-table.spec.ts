import { describe, expect, it } from 'vitest';
import { sharesFigure } from '../../../../src/ui/export/tolerance-picture.ts';
import { toleranceTable } from '../../../../src/ui/export/tolerance-table.ts';
import { rowsOf } from '../../../../src/ui/tolerance/scatter-rows.ts';
import { study } from '../tolerance/studies.ts';

describe('a study of scatter as a table', () => {
  it('has a row a speed with the band and the shares of what the build has, each with its interval', () => {
    const [heads, ...rows] = toleranceTable(study(), { family: 'metric' });
    expect(rows).toHaveLength(4);
    expect(heads.slice(0, 6)).toEqual([
      'Shaft speed, m/s',
      'As drawn, N',
      'p5, N',
      'p50, N',
      'p95, N',
      'Standard deviation, N',
    ]);
    const of = (row: number, head: string) => rows[row][heads.indexOf(head)];
    expect(rows[0].slice(0, 5)).toEqual([-1, -101, -130, -100, -90]);
    expect(of(2, 'Height of the seat: share with others, %')).toBeCloseTo(70, 9);
    expect(of(2, 'Height of the seat: share with others, from, %')).toBeCloseTo(60, 9);
    expect(of(2, 'Height of the seat: share by itself, to, %')).toBeCloseTo(80, 9);
    expect(of(3, 'Samples without a force')).toBe(3);
    expect(of(0, 'Samples')).toBe(4);
    expect(heads.join()).not.toContain('bleed');
  });

  it('is in the units of a family, and empty while nothing is solved', () => {
    const [, , , row] = toleranceTable(study(), { family: 'imperial' });
    // A pound-force is 4.4482216152605 N by definition.
    expect(row[2]).toBeCloseTo(40 / 4.4482216152605, 9);
    expect(toleranceTable(undefined, { family: 'metric' })).toEqual([]);
  });
});

describe('the shares as a picture', () => {
  const figure = sharesFigure({
    title: 'What scatters <Stock>',
    rows: rowsOf(study(), 1, 1, 'cursor').filter(({ hasPart }) => hasPart),
    sort: 'cursor',
    colour: '#0a5c9c',
    notes: ['One note.'],
    inks: { ink: '#000', soft: '#444', grid: '#ccc', sheet: '#fff' },
    font: 'sans-serif',
    separators: ', ',
  });

  it('has a bar a tolerance, most first, outlined with its interval and filled with what it makes by itself', () => {
    const [total, first, interval] = figure.data;
    expect(total.y).toEqual(['Thickness of the shims', 'Height of the seat']);
    expect(total.x).toEqual([60, 30]);
    expect(interval).toMatchObject({ x: total.x, y: total.y, showlegend: false });
    expect(interval.error_x).toMatchObject({ array: [expect.closeTo(10, 9), expect.closeTo(10, 9)] });
    expect(first.x).toEqual([60, 30]);
    expect(figure.layout.yaxis).toMatchObject({ autorange: 'reversed' });
  });

  it('reads no tags out of a name', () => {
    expect(JSON.stringify(figure.layout.annotations)).toContain('&lt;Stock&gt;');
  });
});
