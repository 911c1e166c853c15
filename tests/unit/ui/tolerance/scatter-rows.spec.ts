import { describe, expect, it } from 'vitest';
import { placeBetween, valueAt } from '../../../../src/ui/tolerance/place-between.ts';
import { rowsOf, scatterOf } from '../../../../src/ui/tolerance/scatter-rows.ts';
import { toleranceAreas } from '../../../../src/ui/tolerance/tolerance-areas.ts';
import { READING, study } from './studies.ts';

describe('a place between speeds', () => {
  const speeds = [-2, -1, 1, 2];
  it.each([
    [1, 1.25, 0.25],
    [1, 1, 0],
    [1, 5, 0],
    [-1, 1.75, 0.75],
  ] as const)('in direction %s at %s m/s has the share %s of the faster', (way, speed, weight) => {
    expect(placeBetween(speeds, way, speed)?.weight).toBeCloseTo(weight, 12);
  });

  it('takes values straight between its two, and none where one is missing', () => {
    const at = placeBetween(speeds, -1, 1.75);
    if (!at) throw new Error('there are speeds that way');
    expect(valueAt(at, (i) => speeds[i])).toBeCloseTo(-1.75, 12);
    expect(valueAt(at, (i) => (i === at.low ? null : 1))).toBeUndefined();
    expect(placeBetween([1, 2], -1, 1)).toBeUndefined();
  });
});

describe('the rows of a study', () => {
  const order = (way: 1 | -1, speed: number, sort: 'cursor' | 'range') =>
    rowsOf(study(), way, speed, sort).map(({ name }) => name);

  it('have most of the scatter first, by the column they are sorted by, and what the build has not last', () => {
    expect(order(1, 0.5, 'cursor')).toEqual(['seat', 'thickness', 'bleed']);
    expect(order(1, 1, 'cursor')).toEqual(['thickness', 'seat', 'bleed']);
    expect(order(1, 0.5, 'range')).toEqual(['thickness', 'seat', 'bleed']);
    expect(rowsOf(study(), 1, 1, 'cursor').map(({ hasPart }) => hasPart)).toEqual([true, true, false]);
  });

  it('have shares straight between the speeds, and those of their direction over the range', () => {
    const [, thickness] = rowsOf(study(), 1, 0.6, 'cursor');
    expect(thickness.cursor?.total.value).toBeCloseTo(0.28, 12);
    expect(thickness.cursor?.first.low).toBeCloseTo(0.18, 12);
    expect(thickness.range.total.value).toBe(0.55);
    expect(rowsOf(study(), -1, 0.6, 'cursor')[0].range.total.value).toBe(0.5);
  });

  it('have no share at the cursor where no force is known, and are sorted by the range there', () => {
    const spreads = READING.spreads.map((spread, i) => (i === 3 ? null : spread));
    const gone = study({ read: { reading: { ...READING, spreads }, samples: 4 } });
    const rows = rowsOf(gone, 1, 0.9, 'cursor');
    expect(rows[0]).toMatchObject({ name: 'thickness' });
    expect(rows[0].cursor).toBeUndefined();
    expect(scatterOf(gone, 1, 0.9)).toBeUndefined();
  });

  it('tell the band and how many samples are left out beside the cursor', () => {
    expect(scatterOf(study(), 1, 0.75)).toEqual({
      speed_m_s: 0.75,
      p5_N: 60,
      p50_N: 75,
      p95_N: 100,
      drawn_N: 76,
      without: 3,
    });
  });

  it('are none before the first reading', () => {
    const { read: _read, ...unread } = study();
    expect(rowsOf(unread, 1, 0.5, 'cursor')).toEqual([]);
    expect(scatterOf(unread, 1, 0.5)).toBeUndefined();
    expect(toleranceAreas(unread, 1, 0)).toEqual([]);
  });
});

describe('the areas of a study', () => {
  it('go from p5 to p95 by rising speed, less what is taken off', () => {
    expect(toleranceAreas(study(), -1, 10)).toEqual([
      { speeds_m_s: [0.5, 1], low_N: [-70, -140], high_N: [-55, -100] },
    ]);
  });

  it('break where there is no band', () => {
    const spreads = READING.spreads.map((spread, i) => (i === 3 ? null : spread));
    expect(toleranceAreas(study({ read: { reading: { ...READING, spreads }, samples: 4 } }), 1, 0)).toEqual([]);
  });
});
