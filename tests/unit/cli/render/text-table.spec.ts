import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Heading, textTable } from '../../../../src/cli/render/text-table.ts';

const HEADER: readonly Heading[] = [
  ['speed', 'm/s'],
  'valve',
  ['force', 'N'],
  ['gas needed', 'bar gauge'],
  'air release',
  'theory',
];
const ROWS = [
  [-0.5, 'piston', -1234.56, 0.123, false, 'large-deflection'],
  [1, 'base', 45.25, null, true, '-'],
] as const;

const lines = (...each: string[]): string => `${each.join('\n')}\n`;

describe('textTable', () => {
  it('has one line a row, numbers to the right and words to the left, units behind the names', () => {
    expect(textTable(HEADER, ROWS)).toBe(
      lines(
        'speed m/s  valve   force N  gas needed bar gauge  air release  theory',
        '     -0.5  piston  -1234.6                  0.12           no  large-deflection',
        '        1  base       45.3                     -          yes  -',
      ),
    );
  });

  it('leaves a table as it is that just fits', () => {
    expect(textTable(HEADER, ROWS, { width: 79, names: 2 })).toBe(textTable(HEADER, ROWS));
    expect(textTable(HEADER, ROWS, { width: 78, names: 2 })).not.toBe(textTable(HEADER, ROWS));
  });

  it('stacks the headings of one that is too wide for the screen', () => {
    expect(textTable(HEADER, ROWS, { width: 61, names: 2 })).toBe(
      lines(
        '                              gas',
        'speed            force     needed      air',
        '  m/s  valve         N  bar gauge  release  theory',
        ' -0.5  piston  -1234.6       0.12       no  large-deflection',
        '    1  base       45.3          -      yes  -',
      ),
    );
  });

  it('breaks one that is still too wide into blocks, each behind the columns that name the row', () => {
    expect(textTable(HEADER, ROWS, { width: 42, names: 2 })).toBe(
      lines(
        '                              gas',
        'speed            force     needed      air',
        '  m/s  valve         N  bar gauge  release',
        ' -0.5  piston  -1234.6       0.12       no',
        '    1  base       45.3          -      yes',
        '',
        'speed',
        '  m/s  valve   theory',
        ' -0.5  piston  large-deflection',
        '    1  base    -',
      ),
    );
  });

  it('gives a column that is wider than the screen a block of its own, whole', () => {
    const blocks = textTable(HEADER, ROWS, { width: 1, names: 2 }).split('\n\n');
    expect(blocks).toHaveLength(4);
    expect(blocks[3]).toContain(' -0.5  piston  large-deflection');
  });

  it('writes out the numbers that name the row, and counts whole numbers as such', () => {
    const header: Heading[] = [['speed', 'm/s'], 'waves', ['friction', 'N'], ['force', 'N']];
    expect(
      textTable(header, [
        [0.000125, 3, -25, 0],
        [12.3456789, 12, 25, 100],
        [1, 0, 25, 0.04],
      ]),
    ).toBe(
      lines(
        ' speed m/s  waves  friction N  force N',
        '  0.000125      3         -25        0',
        '12.3456789     12          25    100.0',
        '         1      0          25      0.0',
      ),
    );
  });

  it('keeps every line within the screen and loses no cell, whatever the widths', () => {
    const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c'), minLength: 1, maxLength: 9 });
    const table = fc.integer({ min: 2, max: 8 }).chain((count) =>
      fc.record({
        header: fc.array(fc.tuple(word, word), { minLength: count, maxLength: count }),
        rows: fc.array(fc.array(word, { minLength: count, maxLength: count }), { minLength: 1, maxLength: 3 }),
      }),
    );
    fc.assert(
      // A name and one column, each of at most 9 characters, with the gap between.
      fc.property(table, fc.integer({ min: 20, max: 60 }), ({ header, rows }, width) => {
        const printed = textTable(header, rows, { width });
        expect(Math.max(...printed.split('\n').map((line) => line.length))).toBeLessThanOrEqual(width);
        const blocks = printed.split('\n\n').map((block) => block.trimEnd().split('\n').slice(-rows.length));
        const cells = rows.map((_, i) => blocks.flatMap((block) => block[i].split(/\s+/).slice(1)));
        expect(cells).toEqual(rows.map((row) => row.slice(1)));
        for (const block of blocks)
          expect(block.map((line) => line.split(/\s+/)[0])).toEqual(rows.map(([name]) => name));
      }),
    );
  });
});
