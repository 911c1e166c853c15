import { describe, expect, it } from 'vitest';
import type { ShownLine } from '../../../../src/ui/charts/chart-model.ts';
import { type LineName, namedBriefly, placeNames } from '../../../../src/ui/charts/line-names.ts';

/** A chart of 400 by 300 pixels, its y axis upwards from the bottom. */
const scales = { x: (value: number) => value, y: (value: number) => 300 - value };
const room = { left: 4, right: 396, top: 19, bottom: 296 };

const through = (label: string, y: (number | null)[], part: ShownLine['part'] = 'compression'): ShownLine => ({
  buildId: label,
  label,
  name: label,
  part,
  named: part !== 'rebound',
  x: y.map((_, i) => (400 * i) / (y.length - 1)),
  y,
  colour: '',
  dash: 'solid',
  width: 2,
  faded: false,
  marks: [],
});
const rising = (label: string, last: number): ShownLine => through(label, [0, last / 2, last]);
const flat = (label: string, at: number): ShownLine => through(label, [at, at, at]);

/** 6.5 pixels a letter, 10 above the baseline and 3 below. */
const boxOf = ({ line, x, y }: LineName) => ({
  left: x - 6.5 * line.label.length,
  right: x,
  top: y - 10,
  bottom: y + 3,
});

/** Whether the line comes into the letters, told by a thousand points of it. */
function crosses({ x, y }: ShownLine, name: LineName): boolean {
  const { left, right, top, bottom } = boxOf(name);
  const heightAt = (at: number): number => {
    const i = Math.min(
      x.length - 2,
      x.findIndex((_, n) => at <= x[n + 1]),
    );
    const share = (at - x[i]) / (x[i + 1] - x[i]);
    return scales.y((y[i] ?? 0) + share * ((y[i + 1] ?? 0) - (y[i] ?? 0)));
  };
  return Array.from({ length: 1001 }, (_, n) => (400 * n) / 1000).some(
    (at) => at > left && at < right && heightAt(at) > top && heightAt(at) < bottom,
  );
}

function expectClear(names: readonly LineName[], lines: readonly ShownLine[]): void {
  for (const name of names) {
    for (const line of lines)
      expect([name.line.label, line.label, crosses(line, name)]).toEqual([name.line.label, line.label, false]);
    for (const other of names) {
      const [a, b] = [boxOf(name), boxOf(other)];
      const meet = a.left < b.right && b.left < a.right && a.bottom > b.top && b.bottom > a.top;
      expect([name.line.label, other.line.label, meet]).toEqual([name.line.label, other.line.label, name === other]);
    }
  }
}

describe('names of lines', () => {
  it('stand clear of one another and of every line, however close the lines are', () => {
    const lines = ['a', 'b', 'c', 'd'].map((label) => rising(label, 200));
    const names = placeNames(lines, scales, room);
    expect(names).toHaveLength(4);
    expectClear(names, lines);
  });

  it('stand at the right end, the upper name above its line and the lower below', () => {
    const [upper, lower] = placeNames([flat('stock', 200), flat('softer', 100)], scales, room);
    expect([upper.line.label, upper.x, upper.y]).toEqual(['stock', 396, 100 - 7]);
    expect([lower.line.label, lower.x, lower.y]).toEqual(['softer', 396, 200 + 15]);
  });

  it('cross no line where there is room beside their own: between two that run 20 pixels apart there is none', () => {
    const lines = [
      flat('Softer, shims', 220),
      flat('Stock, shims', 200),
      flat('Stock, bleed', 40),
      flat('Softer, bleed', 20),
    ];
    expectClear(placeNames(lines, scales, room), lines);
  });

  it('stand above one another as their lines do, where both are on the same side', () => {
    // Too long to stand side by side, and no room beneath the lower line.
    const lines = [
      flat('Softer on the largest edges, its bleed', 10),
      flat('Stock, just as it came out, its bleed', 16),
      flat('shims', 200),
    ];
    const names = placeNames(lines, scales, room);
    expectClear(names, lines);
    expect(names.toSorted((a, b) => a.y - b.y).map(({ line }) => line.label)).toEqual([
      'shims',
      lines[1].label,
      lines[0].label,
    ]);
  });

  it('go back along the line where another would cross them at the right end', () => {
    const lines = [
      through('a long name of a line', [200, 200, 200, 200, 200]),
      through('b', [100, 100, 100, 190, 290]),
    ];
    const names = placeNames(lines, scales, room);
    expectClear(names, lines);
    expect(names.find(({ line }) => line.label !== 'b')?.x).toBeLessThan(396);
  });

  it('stand on one another at the right end, rather than far back, when they are long', () => {
    const lines = ['first', 'second', 'third'].map((nth) => flat(`${nth} of three names in a row`, 150));
    const names = placeNames(lines, scales, room);
    expectClear(names, lines);
    expect(names.map(({ x }) => x)).toEqual([396, 396, 396]);
  });

  it('leave the other words of the chart free', () => {
    const lines = [flat('stock', 200), flat('softer', 100)];
    const [free] = placeNames(lines, scales, room);
    const words = { left: 350, right: 400, top: free.y - 12, bottom: free.y };
    const [moved] = placeNames(lines, scales, room, [words]);
    const { left, right, top, bottom } = boxOf(moved);
    expect(left < words.right && right > words.left && top < words.bottom && bottom > words.top).toBe(false);
  });

  it('know of a line between its points', () => {
    // Two points each: within the length of a name there is none but the last.
    const lines = [through('a name of twenty one', [100, 200]), through('another of twenty one', [290, 150])];
    expectClear(placeNames(lines, scales, room), lines);
  });

  it('are written for lines with a name of their own, and never off the chart', () => {
    const lines = [
      rising('a', 290),
      through('a', [0, -50, -100], 'rebound'),
      flat('above', 400),
      through('none', [null, null]),
    ];
    const names = placeNames(lines, scales, room);
    expect(names.map(({ line }) => line.label).sort()).toEqual(['a', 'above']);
    for (const { y } of names) {
      expect(y).toBeGreaterThanOrEqual(19);
      expect(y).toBeLessThanOrEqual(296);
    }
  });

  it('stand above lines that run along the axis, and still clear of one another', () => {
    const lines = [flat('a', 270), flat('b', 230), flat('c', 8), flat('d', 4)];
    const names = placeNames(lines, scales, room);
    expectClear(names, lines);
    // Of the lines at 8 and 4 over the axis at 300: the letters stand above both.
    expect(Math.max(...names.map(({ y }) => y))).toBeLessThan(300 - 8);
  });

  it('leave the build to colour and dash in a chart too narrow for one of them', () => {
    const chamber = (build: string): ShownLine => ({ ...rising(`${build}, chamber`, 200), brief: 'chamber' });
    const lines = [chamber('Stock, as it came out'), chamber('Soft'), rising('aim', 100)];
    expect(namedBriefly(lines, 600)).toEqual(lines);
    expect(namedBriefly(lines, 290).map(({ label }) => label)).toEqual(['chamber', 'chamber', 'aim']);
  });
});
