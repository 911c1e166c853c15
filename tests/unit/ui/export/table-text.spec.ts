import { describe, expect, it } from 'vitest';
import { csvOf, tsvOf } from '../../../../src/ui/export/table-text.ts';

describe('comma-separated text', () => {
  it('ends each row with CR LF and quotes what RFC 4180 says must be quoted', () => {
    const text = csvOf([
      ['speed, m/s', 'He said "stiff"', 'two\nlines', 'plain'],
      [0.5, undefined, Number.NaN, 'plain'],
    ]);
    expect(text).toBe('"speed, m/s","He said ""stiff""","two\nlines",plain\r\n0.5,,,plain\r\n');
  });

  it('writes numbers with a decimal point and no noise of conversions', () => {
    expect(csvOf([[0.1 + 0.2, -1234.5678901, 1e-9, 0]])).toBe('0.3,-1234.568,1e-9,0\r\n');
  });

  it.each(['=HYPERLINK("x")', '+cmd', '@SUM(A1)', '-2+3', '\t=1'])('%j is told as words, never run', (name) => {
    expect(csvOf([[name]])).toMatch(/^"?'/);
  });

  it.each(['-12', '+4 %', '-0.5'])('%j stays a number', (number) => {
    expect(csvOf([[number]])).toBe(`${number}\r\n`);
  });
});

describe('tab-separated text', () => {
  it('has one line a row; tabs and lines inside a cell become spaces', () => {
    expect(
      tsvOf([
        ['a\tb', 'c\r\nd', 2.5],
        [undefined, '=x'],
      ]),
    ).toBe("a b\tc d\t2.5\n\t'=x\n");
  });
});
