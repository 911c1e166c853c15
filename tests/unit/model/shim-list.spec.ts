import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatShimList } from '../../../src/model/format-shim-list.ts';
import { MAX_LIST_CHARACTERS, parseShimList } from '../../../src/model/shim-list.ts';

const row = (count: number, outerDiameter_mm: number, thickness_mm: number) => ({
  outerDiameter_mm,
  thickness_mm,
  count,
});

describe('parseShimList', () => {
  it.each<[string, number, number, number]>([
    ['3 x 30 x 0.15', 3, 30, 0.15],
    ['30 x 0.15 x 3', 3, 30, 0.15],
    ['30x.15 (3)', 3, 30, 0.15],
    ['30x.15 (x3)', 3, 30, 0.15],
    ['(3) x 30 x .15', 3, 30, 0.15],
    ['30.15 x3', 3, 30, 0.15],
    ['30.15 (3)', 3, 30, 0.15],
    ['30,15 x3', 3, 30, 0.15],
    ['3x30.15', 3, 30, 0.15],
    ['30.15', 1, 30, 0.15],
    ['8.2', 1, 8, 0.2],
    ['12 x 8.2', 12, 8, 0.2],
    ['30 x 0,15', 1, 30, 0.15],
    ['2- 24x.2', 2, 24, 0.2],
    ['2 – 24 x 0,2', 2, 24, 0.2],
    ['24×0.2 ×2', 2, 24, 0.2],
    ['24 X 0.2', 1, 24, 0.2],
    ['24*0.2*2', 2, 24, 0.2],
    ['ø24 x 0.2', 1, 24, 0.2],
    ['24 mm x 0.2 mm x 2', 2, 24, 0.2],
    ['24mm x .2', 1, 24, 0.2],
    ['24 0.2 2', 2, 24, 0.2],
    ['30\t0.15\t3', 3, 30, 0.15],
    ['\t3\t30\t0,15\t', 3, 30, 0.15],
    ['30,0.15,3', 3, 30, 0.15],
    ['3 pcs 30 x 0.15', 3, 30, 0.15],
    ['3 of 30 x 0.15', 3, 30, 0.15],
    ['30 x 0.15, # the face shim', 1, 30, 0.15],
    ['1.18 in x 0.006 in', 1, 29.972, 0.1524],
    ['1.18 x 0.006 in', 1, 29.972, 0.1524],
    ['1.2" x .006" (2)', 2, 30.48, 0.1524],
    ['30 mm x 6 thou', 1, 30, 0.1524],
    ['30.5 x 1', 1, 30, 0.5],
    ['30.5 x 1.0', 1, 30.5, 1],
    ['30 x 1', 1, 30, 1],
    ['20 x 2 x 1', 1, 20, 2],
  ])('reads %j', (text, count, diameter, thickness) => {
    expect(parseShimList(text)).toEqual({ rows: [row(count, diameter, thickness)], faults: [] });
  });

  it('reads several on a line and over lines, in order', () => {
    const text = '3 x 30 x 0.15; 16 x 0.1\r\n\n# second stage\n28x,15, 26x0,15\n24x.2,22x.2 # rest\n20.2;';
    expect(parseShimList(text)).toEqual({
      rows: [
        row(3, 30, 0.15),
        row(1, 16, 0.1),
        row(1, 28, 0.15),
        row(1, 26, 0.15),
        row(1, 24, 0.2),
        row(1, 22, 0.2),
        row(1, 20, 0.2),
      ],
      faults: [],
    });
  });

  it.each([
    ['abc', 'shims.list.not-a-shim'],
    ['diameter\tthickness\tcount', 'shims.list.not-a-shim'],
    ['30', 'shims.list.not-a-shim'],
    ['30 x', 'shims.list.not-a-shim'],
    ['x 30', 'shims.list.not-a-shim'],
    ['-30 x 0.15', 'shims.list.not-a-shim'],
    ['30 x -0.15', 'shims.list.not-a-shim'],
    ['NaN x 3', 'shims.list.not-a-shim'],
    ['1e3 x 2', 'shims.list.not-a-shim'],
    ['30.15.2', 'shims.list.not-a-shim'],
    ['30.15 mm', 'shims.list.not-a-shim'],
    ['30 x 0.15 x 3 x 2', 'shims.list.not-a-shim'],
    ['30 x 0.15 (3) (2)', 'shims.list.not-a-shim'],
    ['30 x 0.15 (3', 'shims.list.not-a-shim'],
    ['3 x 30 x 0.15 kg', 'shims.list.not-a-shim'],
    ['30 x 30', 'shims.list.sizes'],
    ['0 x 30 x 0.15', 'shims.list.sizes'],
    ['201 x 30 x 0.15', 'shims.list.sizes'],
    ['30 x 0.15 (1.5)', 'shims.list.sizes'],
    ['30 x 0', 'shims.list.sizes'],
    ['30.0', 'shims.list.sizes'],
    ['900 x 0.15', 'shims.list.sizes'],
    ['40 x 9 x 2', 'shims.list.ambiguous'],
    ['30 x 6 thou', 'shims.list.unit'],
    ['1200 thou x 6', 'shims.list.unit'],
  ])('refuses %j', (text, code) => {
    const { rows, faults } = parseShimList(text);
    expect(rows).toEqual([]);
    expect(faults).toMatchObject([{ code, path: 'line 1', got: JSON.stringify(text) }]);
  });

  it('names the line of each fault and reads the others', () => {
    const { rows, faults } = parseShimList('30x.15 (3)\nface\n24x.2; 24x');
    expect(rows).toEqual([row(3, 30, 0.15), row(1, 24, 0.2)]);
    expect(faults.map(({ path, got }) => [path, got])).toEqual([
      ['line 2', '"face"'],
      ['line 3', '"24x"'],
    ]);
  });

  it('refuses a text that is no list by its length', () => {
    expect(parseShimList('30.15\n'.repeat(MAX_LIST_CHARACTERS))).toMatchObject({
      rows: [],
      faults: [{ code: 'shims.list.too-long' }],
    });
  });

  it('never throws, and reads only shims that a document may hold (property)', () => {
    const word = fc.constantFrom(
      '30',
      '.15',
      '3',
      'x',
      ' ',
      '\t',
      ',',
      '.',
      '(',
      ')',
      '-',
      'mm',
      'in',
      'thou',
      '#',
      ';',
      '"',
    );
    const soup = fc.array(word, { maxLength: 14 }).map((words) => words.join(''));
    fc.assert(
      fc.property(fc.oneof(soup, fc.string({ unit: 'binary' })), (text) => {
        for (const { outerDiameter_mm, thickness_mm, count } of parseShimList(text).rows) {
          expect(outerDiameter_mm >= 0.001 && outerDiameter_mm <= 500).toBe(true);
          expect(thickness_mm >= 0.001 && thickness_mm <= 20).toBe(true);
          expect(Number.isInteger(count) && count >= 1 && count <= 200).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('formatShimList', () => {
  it('writes one row a line, in millimetres', () => {
    expect(formatShimList([row(3, 30, 0.15), { outerDiameter_mm: 16, thickness_mm: 0.1 }])).toBe(
      '3 x 30 x 0.15\n1 x 16 x 0.1',
    );
    expect(formatShimList([])).toBe('');
  });

  it('adds units only where the sizes alone would be misread', () => {
    expect(formatShimList([row(40, 9, 2)])).toBe('40 x 9 mm x 2 mm');
  });

  it('is read back exactly, whatever the sizes (property)', () => {
    const hundredths = (max: number) => fc.integer({ min: 1, max }).map((n) => n / 100);
    const any = (max: number) => fc.double({ min: 0.001, max, noNaN: true });
    const shim = fc.record({
      outerDiameter_mm: fc.oneof(hundredths(50_000), any(500)),
      thickness_mm: fc.oneof(hundredths(2000), any(20)),
      count: fc.integer({ min: 1, max: 200 }),
    });
    fc.assert(
      fc.property(fc.array(shim, { maxLength: 8 }), (rows) => {
        expect(parseShimList(formatShimList(rows))).toEqual({ rows, faults: [] });
      }),
      { numRuns: 500 },
    );
  });
});
