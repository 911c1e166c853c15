import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, onBench, plotted, settled } from './bench-page.ts';
import { fetched, readSvg, rows } from './export-page.ts';

const words = text.chart;
type Line = (number | null)[];

const choose = (page: Page, measure: keyof typeof words.measureLong): Promise<void> =>
  page.getByRole('button', { name: words.measureLong[measure]('N') }).click();

/** Compression and rebound of the baseline, then of the other build. */
const lines = async (page: Page): Promise<Line[]> => (await plotted(page)).map((line) => JSON.parse(line) as Line);

async function redrawn(page: Page, act: () => Promise<void>): Promise<Line[]> {
  const before = await plotted(page);
  await act();
  await expect.poll(() => plotted(page)).not.toEqual(before);
  return lines(page);
}

const told = (page: Page): Promise<string | null> => page.locator('.warnings').textContent();
const against = (page: Page, way: 'compression' | 'rebound', build: number) =>
  page.locator(`[data-way=${way}] [data-row=difference] td`).nth(build);

const near = (got: Line, wanted: Line): void => {
  expect(got).toHaveLength(wanted.length);
  for (const [i, value] of wanted.entries()) expect(got[i]).toBeCloseTo(value as number, 6);
};

describe('the force chart measured from the baseline', () => {
  it('draws how much firmer each build is, in force and in per cent, the baseline as the zero line', () =>
    onBench(async (page) => {
      const [stockC, stockR, buildC, buildR] = (await lines(page)) as number[][];
      const difference = await redrawn(page, () => choose(page, 'difference'));
      near(
        difference[0],
        stockC.map(() => 0),
      );
      near(
        difference[1],
        stockR.map(() => 0),
      );
      near(
        difference[2],
        buildC.map((force, i) => force - stockC[i]),
      );
      near(
        difference[3],
        buildR.map((force, i) => stockR[i] - force),
      );
      const share = await redrawn(page, () => choose(page, 'share'));
      near(
        share[2],
        buildC.map((force, i) => (force / stockC[i] - 1) * 100),
      );
      const last = buildR.length - 1;
      expect(share[3][last]).toBeCloseTo((buildR[last] / stockR[last] - 1) * 100, 6);
      const back = await redrawn(page, () => choose(page, 'force'));
      expect(back).toEqual([stockC, stockR, buildC, buildR]);
    }));

  it('leaves the percentage out where the baseline has next to no force, and says where', () =>
    onBench(async (page) => {
      const [, stockR] = (await lines(page)) as number[][];
      // The gas pushes the slow rod out harder than the oil holds it.
      expect(stockR[0]).toBeGreaterThan(0);
      const share = await redrawn(page, () => choose(page, 'share'));
      expect(share[3][0]).toBeNull();
      expect(share[1][0]).toBeNull();
      expect(share[3].at(-1)).not.toBeNull();
      const stock = await page.locator('.build-name').first().textContent();
      expect(await told(page)).toMatch(new RegExp(`No percentage at .* rebound: there ${stock}`));
      const lessGas = await redrawn(page, () =>
        page.getByRole('button', { name: words.gasForceLong.subtracted }).click(),
      );
      const blanks = (all: Line[]): number => all.flat().filter((value) => value === null).length;
      expect(blanks(lessGas)).toBeLessThan(blanks(share));
    }));

  it('the readout, the axis and the cursor follow, in both unit families', () =>
    onBench(async (page) => {
      const force = async (build: number): Promise<number> =>
        Number(
          (await page.locator('[data-way=compression] [data-row=force] td').nth(build).textContent())?.replace(
            '−',
            '-',
          ),
        );
      const wanted = (await force(1)) - (await force(0));
      expect(await against(page, 'compression', 1).textContent()).toMatch(/ %$/);
      await choose(page, 'difference');
      expect(await against(page, 'compression', 0).textContent()).toBe(text.builds.baseline);
      const shown = (await against(page, 'compression', 1).textContent()) ?? '';
      expect(Math.abs(Number(shown.replace('−', '-')) - wanted)).toBeLessThanOrEqual(1);
      expect(await against(page, 'rebound', 1).textContent()).toMatch(/^\+\d+$/);
      await expect.poll(() => page.locator('.plot-board').textContent()).toContain(words.differenceAxis('N'));
      const zero = page.locator('.cut').first();
      const other = page.locator('.cut').nth(2);
      expect(Number(await other.getAttribute('cy'))).toBeGreaterThan(Number(await zero.getAttribute('cy')));
      expect(await page.locator('.names text').allTextContents()).toHaveLength(3);
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      await expect.poll(() => page.locator('.plot-board').textContent()).toContain(words.differenceAxis('lbf'));
      expect(await page.locator('[data-way=compression] [data-row=difference] th').textContent()).toContain('lbf');
    }));

  it('follows an edit of either build, and a baseline that is not on show', () =>
    onBench(async (page) => {
      await choose(page, 'difference');
      await page.getByRole('switch').first().click();
      await expect.poll(async () => (await lines(page)).length).toBe(2);
      const [before] = await lines(page);
      const [edited] = await redrawn(page, async () => {
        await cell(page, 0, 'thickness_mm').fill('0.4');
        await settled(page);
      });
      expect(edited.at(-1)).toBeGreaterThan(before.at(-1) as number);
      await page.getByRole('switch').first().click();
      await page.getByRole('switch').nth(1).click();
      await expect.poll(() => told(page)).toContain(words.nothingToCompare);
    }));

  it('has no band, and says why', () =>
    onBench(async (page) => {
      await page.getByRole('button', { name: words.bandLong.shown }).click();
      await expect.poll(async () => (await lines(page)).length).toBeGreaterThan(4);
      await choose(page, 'difference');
      await expect.poll(async () => (await lines(page)).length).toBe(4);
      expect(await page.getByRole('button', { name: words.bandLong.shown }).count()).toBe(0);
      expect(await told(page)).toContain(words.noBandOfDifference);
      await choose(page, 'force');
      await expect.poll(async () => (await lines(page)).length).toBeGreaterThan(4);
    }));

  it('is what the exports give', () =>
    onBench(async (page) => {
      await choose(page, 'difference');
      await expect.poll(() => page.locator('.plot-board').textContent()).toContain(words.differenceAxis('N'));
      const [stock, build] = await page.locator('.build-name').allTextContents();
      const drawn = (await lines(page))[3];
      const table = await fetched(page, 'chart', 'chart-csv');
      expect(table.name).toMatch(/-difference\.csv$/);
      const [head, ...body] = rows(table.bytes);
      expect(head).toContain(`"${build}: Firmer than ${stock} by (softer below 0), rebound, N"`);
      const written = body.map((row) => Number(row.split(',').at(-1)));
      expect(written).toHaveLength(drawn.length);
      // A table has six significant digits.
      for (const [i, value] of drawn.entries()) expect(written[i] / (value as number)).toBeCloseTo(1, 5);
      const picture = await fetched(page, 'chart', 'chart-svg');
      expect(picture.name).toMatch(/-difference\.svg$/);
      const svg = await readSvg(page, picture.bytes.toString('utf8'));
      for (const each of [text.export.difference(stock), words.firmer, words.softer, words.differenceAxis('N')])
        expect(svg.words.replaceAll('\u00a0', ' ')).toContain(each);
      await choose(page, 'share');
      expect((await fetched(page, 'chart', 'chart-csv')).name).toMatch(/-difference-in-per-cent\.csv$/);
    }));
});
