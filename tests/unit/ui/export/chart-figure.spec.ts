import { describe, expect, it } from 'vitest';
import { buildColour, onLight } from '../../../../src/ui/app/palette.ts';
import { asWords, type FigureRequest, figureOf } from '../../../../src/ui/export/chart-figure.ts';
import { wrapWords } from '../../../../src/ui/export/wrap.ts';

const line = (name: string, part = {}) => ({
  ...{ x: [0, 1], y: [0, 100], name, colour: buildColour(0, true), dash: 'solid', width: 2, faded: false },
  ...part,
});
const request = (part: Partial<FigureRequest> = {}): FigureRequest => ({
  title: 'Trail rear · Force',
  view: {
    areas: [],
    lines: [line('Stock'), line('Stock'), line('Custom', { faded: true })],
    xRange: [0, 1],
    yRange: [0, 110],
    xTitle: 'Shaft speed, m/s',
    yTitle: 'Force, N',
  },
  signs: [],
  levels: [],
  notes: ['Estimates.'],
  inks: { ink: '#000', soft: '#555', grid: '#ccc', sheet: '#fff' },
  font: 'sans-serif',
  separators: ', ',
  ...part,
});

describe('a chart that stands alone', () => {
  it('has one entry of the legend a build, with the colours of a light page', () => {
    const { data } = figureOf(request());
    expect(data.map(({ showlegend }) => showlegend)).toEqual([true, false, true]);
    expect(data[0].line).toMatchObject({ color: buildColour(0, false) });
  });

  it('says which curve is that of an edit before', () => {
    expect(figureOf(request()).data[2].name).toBe('Custom (as last solved)');
  });

  it('keeps bands under the lines, signs at their places, and levels with their names', () => {
    const area = {
      x: [0, 1],
      low: [0, 80],
      high: [0, 120],
      colour: buildColour(0, true),
      kind: 'tint' as const,
      faded: false,
    };
    const { data, layout } = figureOf(
      request({
        view: { ...request().view, areas: [area] },
        signs: [{ x: 0.5, y: 50, sign: '≈', colour: buildColour(1, true) }],
        levels: [{ value: 12, label: 'gas 12 bar' }],
      }),
    );
    expect(data[0]).toMatchObject({ fill: 'toself', fillcolor: buildColour(0, false), y: [0, 80, 120, 0] });
    expect(layout.annotations).toContainEqual(
      expect.objectContaining({ text: '≈', x: 0.5, y: 50, font: { size: 20, color: buildColour(1, false) } }),
    );
    expect(layout.annotations).toContainEqual(expect.objectContaining({ text: 'gas 12 bar', y: 12 }));
    expect(layout.shapes).toMatchObject([{ y0: 12, y1: 12 }]);
  });

  it('is as much higher as it has more to say', () => {
    const short = figureOf(request());
    const long = figureOf(request({ notes: ['Estimates.', 'And one more.'] }));
    expect(long.height).toBeGreaterThan(short.height);
    expect(long.layout.height).toBe(long.height);
  });

  it('takes names for words, never for tags', () => {
    const hostile = '<a href="https://example.org">x</a>';
    const { data, layout } = figureOf(request({ title: hostile, view: { ...request().view, lines: [line(hostile)] } }));
    expect(JSON.stringify([data, layout.annotations])).not.toContain('<a');
    expect(asWords('a < b & c')).toBe('a &lt; b &amp; c');
  });
});

it('colours of a dark page have their partner on a light one; others stay', () => {
  for (const i of [0, 1, 2, 3, 4, 5]) expect(onLight(buildColour(i, true))).toBe(buildColour(i, false));
  expect(onLight(buildColour(3, false))).toBe(buildColour(3, false));
});

describe('lines of words', () => {
  it.each([
    ['one two three', 7, ['one two', 'three']],
    ['  spaced\nout ', 20, ['spaced out']],
    ['unbreakable', 4, ['unbr', 'eaka', 'ble']],
    ['', 10, []],
  ])('%j in %d letters', (words, letters, lines) => expect(wrapWords(words, letters)).toEqual(lines));
});
