import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { onBench } from './bench-page.ts';

/** Of the sheets on paper, from the head of the page down. */
const topOf = (page: Page, part: string): Promise<number> =>
  page.locator(part).evaluate((each) => each.getBoundingClientRect().top);
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

  it.each(['A4', 'Letter'])('makes pages of %s', (format) =>
    onBench(async (page) => {
      const bytes = (await page.pdf({ format })).toString('latin1');
      const pages = bytes.match(/\/Type \/Page\b/g)?.length ?? 0;
      expect(pages).toBeGreaterThanOrEqual(2);
      expect(pages).toBeLessThanOrEqual(5);
    }),
  );
});
