import { describe, expect, it } from 'vitest';
import { type BarPanel, barsFigure, rangeOfBars } from '../../../../src/ui/export/bars-picture.ts';

const panel = (values: (number | null)[], limit?: number): BarPanel => ({
  title: 'Lift, mm',
  values,
  written: values.map((value) => (value === null ? 'cannot be' : String(value))),
  ...(limit !== undefined && { limit }),
});
const figure = (panels: readonly BarPanel[]) =>
  barsFigure({
    title: 'A <b>stack</b>',
    names: ['1', '2'],
    panels,
    colour: '#123456',
    notes: ['A note.'],
    inks: { ink: '#000', soft: '#555', grid: '#ddd', sheet: '#fff' },
    font: 'sans-serif',
    separators: '. ',
  });

describe('the picture of bars', () => {
  it('has a panel of bars for each number, side by side, with what is written at each bar', () => {
    const { data, layout } = figure([panel([0.4, 0.1]), panel([-20, null])]);
    expect(data).toHaveLength(2);
    expect(data[1]).toMatchObject({ x: [-20, 0], text: ['-20', 'cannot be'], xaxis: 'x2', yaxis: 'y' });
    const [first, second] = [layout.xaxis, layout.xaxis2] as { domain: [number, number] }[];
    expect(first.domain[0]).toBe(0);
    expect(first.domain[1]).toBeLessThan(second.domain[0]);
    expect(second.domain[1]).toBeCloseTo(1, 12);
  });

  it('reaches to one side of nothing, or to both where a bar goes down, and to a limit beyond the bars', () => {
    expect(rangeOfBars(panel([2, 4]))[0]).toBe(0);
    expect(rangeOfBars(panel([2, 4]))[1]).toBeGreaterThan(4);
    const [low, high] = rangeOfBars(panel([-6, 4]));
    expect(low).toBe(-high);
    expect(high).toBeGreaterThan(6);
    expect(rangeOfBars(panel([0.2], 1))[1]).toBeGreaterThan(1);
    expect(rangeOfBars({ ...panel([0.2]), full: 3 })).toEqual(rangeOfBars(panel([3])));
    expect(rangeOfBars(panel([null, 0]))).toEqual([0, 1]);
  });

  it('marks a limit in its own panel, and reads no tags in names', () => {
    const { layout } = figure([panel([0.4]), panel([0.5], 1)]);
    expect(layout.shapes).toMatchObject([{ xref: 'x2', x0: 1, x1: 1 }]);
    expect(JSON.stringify(layout.annotations)).toContain('A &lt;b&gt;stack&lt;/b&gt;');
  });
});
