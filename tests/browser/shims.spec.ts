/** What each shim of the stack on show does: over speed, and as bars at the speed cursor. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, drawnLines, onBench } from './bench-page.ts';
import { fetched, pngSize, readSvg, rows } from './export-page.ts';
import { box, numberOf, reading, showTab } from './fork-page.ts';

const words = text.shims;
const quantity = (page: Page, which: keyof typeof words.quantityLong) =>
  page.getByRole('button', { name: words.quantityLong[which] });
const shim = (page: Page, n: number, column: number) => page.locator(`.shim-bars [data-shim="${n}"] td`).nth(column);
const numbers = async (page: Page, column: number): Promise<number[]> => {
  const cells = page.locator(`.shim-bars tbody td:nth-of-type(${column + 1})`);
  return (await cells.allTextContents()).map(Number.parseFloat);
};

describe('the shims', () => {
  it('stand in order with the numbers of the shim table and the worst reserves of the readout', () =>
    onBench(async (page) => {
      await showTab(page, 'shims');
      expect(await page.locator('.shim-bars tbody tr').count()).toBe(3);
      const table = await page.locator('.shims tbody tr:not(.shim-more) td.number-col').allTextContents();
      expect(await shim(page, 2, 0).textContent()).toBe(Number.parseFloat(table[2]).toFixed(3));
      expect(Number.parseFloat((await shim(page, 2, 1).textContent()) ?? '')).toBe(Number.parseFloat(table[3]));
      expect(Math.max(...(await numbers(page, 1)))).toBe(await numberOf(page, 'stress'));
      for (const [row, column] of [
        ['life', 2],
        ['yield', 3],
      ] as const) {
        const worst = Number.parseFloat((await reading(page, row).textContent()) ?? '');
        // One is read between two speeds, the other between two pressures.
        expect(Math.min(...(await numbers(page, column)))).toBeCloseTo(worst, 1);
      }
    }));

  it('follow the cursor, and warn where a limit is passed', () =>
    onBench(async (page) => {
      await showTab(page, 'shims');
      const width = () =>
        page
          .locator('.shim-bars [data-shim="1"] .shim-bar i')
          .first()
          .evaluate((bar) => bar.clientWidth);
      const before = await width();
      expect(await page.locator('.shim-bars .caution').count()).toBe(0);
      await box(page, text.chart.cursor).first().fill('2');
      await expect.poll(width).toBeGreaterThan(before);
      // A full bar is the most at the fastest speed on show.
      const track = await page
        .locator('.shim-bars .shim-bar')
        .first()
        .evaluate((bar) => bar.clientWidth);
      expect(await width()).toBe(track);
      expect(await page.locator('.shim-bars .caution').first().textContent()).toContain('over the limit');
    }));

  it('draw a line each for the quantity chosen, with the limit of a reserve', () =>
    onBench(async (page) => {
      await showTab(page, 'shims');
      await expect.poll(async () => (await drawnLines(page)).length).toBe(3);
      const lift = (await drawnLines(page)).join();
      expect(await page.locator('[data-level=limit]').count()).toBe(0);
      await quantity(page, 'life').click();
      await expect.poll(async () => (await drawnLines(page)).join()).not.toBe(lift);
      expect(await page.locator('[data-level=limit]').count()).toBe(1);
      await cell(page, 0, 'count').fill('2');
      await page.locator('.names text', { hasText: words.line('1–2') }).waitFor();
      await expect.poll(() => page.locator('.shim-bars tbody tr').count()).toBe(4);
    }));

  it('leave as SVG and CSV, over speed and at the cursor', () =>
    onBench(async (page) => {
      await showTab(page, 'shims');
      await quantity(page, 'stress').click();
      await expect.poll(() => page.locator('.plot-board').textContent()).toContain(words.axis.stress('MPa'));
      const svg = await readSvg(page, (await fetched(page, 'chart', 'chart-svg')).bytes.toString());
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      expect(svg.words.replaceAll('\u00a0', ' ')).toContain(words.line('3'));
      expect(rows((await fetched(page, 'chart', 'chart-csv')).bytes)[0]).toMatch(/shim 1, stress, compression, MPa/);
      const atCursor = rows((await fetched(page, 'chart', 'shims-csv')).bytes);
      expect(atCursor).toHaveLength(4);
      const stress = Number(atCursor[1].split(',')[4]);
      expect(Math.round(stress)).toBe(Number.parseFloat((await shim(page, 1, 1).textContent()) ?? ''));
    }));
});

describe('the bars as a picture', () => {
  it('of the shims have their numbers at the cursor, as SVG and PNG', () =>
    onBench(async (page) => {
      await showTab(page, 'shims');
      const stresses = await numbers(page, 1);
      const { name, bytes } = await fetched(page, 'chart', 'shims-svg');
      expect(name).toMatch(/-shims-at-the-cursor\.svg$/);
      const file = await readSvg(page, bytes.toString('utf8'));
      expect(file).toMatchObject({ root: 'svg', outside: [] });
      for (const stress of stresses) expect(file.words).toContain(String(stress));
      expect(file.words).toContain(words.caption('Piston, compression, Softer on square edges', '0.50 m/s'));
      const [width] = pngSize((await fetched(page, 'chart', 'shims-png')).bytes);
      expect(width).toBe(2 * file.width);
    }));

  it('of what each shim does have the numbers of the table', () =>
    onBench(async (page) => {
      await showTab(page, 'effects');
      await page.locator('[data-effects=solved] tbody tr').first().waitFor({ timeout: 60_000 });
      const told = await page.locator('[data-effect=thicker]').allTextContents();
      const file = await readSvg(page, (await fetched(page, 'chart', 'effects-svg')).bytes.toString('utf8'));
      expect(told.length).toBeGreaterThan(1);
      for (const number of told) expect(file.words).toContain(number);
      expect(file.words).toContain(text.effects.out);
    }));
});
