import { describe, expect, it } from 'vitest';
import { plainColour } from '../../../../src/ui/export/own-styles.ts';
import { laySection, type SheetWords } from '../../../../src/ui/export/section-sheet.ts';

const words = (part: Partial<SheetWords> = {}): SheetWords => ({
  title: 'Trail rear · Section',
  cells: [
    ['Build', 'Stock'],
    ['Scale', '2 : 1'],
    ['At', '0.50 m/s'],
  ],
  notes: ['Estimates.'],
  ...part,
});

describe('the sheet of a section', () => {
  const drawing = { width: 600, height: 300 };

  it('has every word of title, title block and notes, above and below the drawing', () => {
    const { lines, drawingY, height } = laySection(drawing, words());
    expect(lines.map((line) => line.words)).toEqual([
      'Trail rear · Section',
      'Build: Stock',
      'Scale: 2 : 1',
      'At: 0.50 m/s',
      'Estimates.',
    ]);
    expect(lines[0].y).toBeLessThan(drawingY);
    for (const line of lines.slice(1)) {
      expect(line.y).toBeGreaterThan(drawingY + drawing.height);
      expect(line.y).toBeLessThan(height);
    }
    expect(lines[1].y).toBe(lines[2].y);
    expect(lines[3].y).toBeGreaterThan(lines[2].y);
  });

  it('breaks what is long, and no two lines of a column fall on each other', () => {
    const long = 'a build with a very long name '.repeat(6);
    const { lines } = laySection(
      drawing,
      words({
        title: long,
        cells: [
          ['Build', long],
          ['Scale', '1'],
          ['At', long],
        ],
      }),
    );
    const left = lines.filter(({ x }) => x < 100).map(({ y }) => y);
    expect(left.length).toBeGreaterThan(8);
    expect(new Set(left).size).toBe(left.length);
    expect([...left].sort((a, b) => a - b)).toEqual(left);
  });

  it('is wide enough for its words beside a narrow drawing, which stands in the middle', () => {
    const { width, drawingX } = laySection({ width: 200, height: 200 }, words());
    expect(width).toBeGreaterThan(400);
    expect(drawingX).toBe((width - 200) / 2);
  });
});

it.each([
  ['color(srgb 0.5 0 1)', 'rgb(128, 0, 255)'],
  ['color(srgb 1 1.02 -0.1 / 0.5)', 'rgba(255, 255, 0, 0.5)'],
  ['rgb(1, 2, 3)', 'rgb(1, 2, 3)'],
  ['url("#hatch-right")', 'url("#hatch-right")'],
])('the colour %j is written %j', (css, plain) => expect(plainColour(css)).toBe(plain));
