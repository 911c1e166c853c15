import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/ui/text/compare.ts';
import { onBench } from './bench-page.ts';
import { caseRow, FEM, onProof } from './proof-page.ts';

/** Of the sheets on paper, from the head of the page down. */
const topOf = (page: Page, part: string): Promise<number> =>
  page.locator(part).evaluate((each) => each.getBoundingClientRect().top);
const PAPERS = ['A4', 'Letter'] as const;
/** Between the margins of A4 [CSS px]. */
const ROOM = { width: 703, height: 1039 };
const pagesOf = async (page: Page, format: (typeof PAPERS)[number]): Promise<number> => {
  const bytes = (await page.pdf({ format })).toString('latin1');
  return bytes.match(/\/Type \/Page\b/g)?.length ?? 0;
};
const INK = { page: 'rgb(255, 255, 255)', axis: 'rgb(20, 36, 44)' };

describe('the bench on paper', () => {
  it('is light from a dark screen, without buttons, chart and section whole and first', () =>
    onBench(
      async (page) => {
        const line = () => page.locator('.plot-board path.js-line').first().getAttribute('style');
        const dark = await line();
        await page.emulateMedia({ media: 'print' });
        expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(INK.page);
        expect(await page.locator('.section').evaluate((each) => getComputedStyle(each).color)).toBe(INK.axis);
        await expect.poll(line).not.toBe(dark);
        const buttons = page.locator('main.bench :is(.button, .icon, .choice button)');
        expect(await buttons.evaluateAll((all) => all.filter((each) => each.checkVisibility()).length)).toBe(0);
        for (const part of ['.section', '.charts'])
          expect(await page.locator(part).evaluate((each) => getComputedStyle(each).breakInside)).toBe('avoid');
        const tops = await Promise.all(
          ['.builds', '.section', '.charts', '.stack', '.damper'].map((part) => topOf(page, part)),
        );
        expect(tops).toEqual([...tops].sort((a, b) => a - b));
        const [board, plot] = await Promise.all([
          page.locator('.plot-board svg').first().boundingBox(),
          page.locator('.plot').boundingBox(),
        ]);
        expect(board?.height).toBeLessThanOrEqual((plot?.height ?? 0) + 1);
      },
      { colorScheme: 'dark' },
    ));

  it.each(PAPERS)('makes pages of %s', (format) =>
    onBench(async (page) => {
      const pages = await pagesOf(page, format);
      expect(pages).toBeGreaterThanOrEqual(2);
      expect(pages).toBeLessThanOrEqual(5);
    }),
  );
});

describe('two builds side by side on paper', () => {
  it.each(PAPERS)('stand from the head of the sheet on, on one page of %s, each shim on its line', (format) =>
    onBench(
      async (page) => {
        await page.getByRole('button', { name: compare.open }).click();
        const dialog = page.getByRole('dialog', { name: compare.title });
        await dialog.locator('table').first().waitFor();
        await page.emulateMedia({ media: 'print' });
        await page.setViewportSize(ROOM);
        expect((await dialog.boundingBox())?.y).toBe(0);
        expect(await dialog.evaluate((each) => each.scrollWidth)).toBeLessThanOrEqual(ROOM.width);
        expect(await dialog.evaluate((each) => getComputedStyle(each).backgroundColor)).toBe(INK.page);
        expect(
          await dialog.getByRole('button').evaluateAll((all) => all.filter((each) => each.checkVisibility())),
        ).toEqual([]);
        await page.emulateMedia({ media: null });
        expect(await pagesOf(page, format)).toBe(1);
      },
      { colorScheme: 'dark' },
    ),
  );
});

describe('the proof on paper', () => {
  it.each(PAPERS)('keeps every column readable, with an opened case in whole, on %s', (format) =>
    onProof(
      async (page) => {
        await caseRow(page, FEM).getByRole('button').click();
        await page.emulateMedia({ media: 'print' });
        await page.setViewportSize(ROOM);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(ROOM.width);
        const columns = await page
          .locator('.cases > thead > tr > th')
          .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().width / innerWidth));
        expect(columns).toHaveLength(6);
        // The case is told in words, the others in a word or a number.
        expect(columns[0]).toBeGreaterThan(0.25);
        expect(Math.min(...columns)).toBeGreaterThan(0.05);
        await page.emulateMedia({ media: null });
        const pages = await pagesOf(page, format);
        expect(pages).toBeGreaterThanOrEqual(4);
        expect(pages).toBeLessThanOrEqual(14);
      },
      { colorScheme: 'dark' },
    ),
  );
});
