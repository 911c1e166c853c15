/** Every view of `views.ts` against WCAG 2.2 A and AA as far as axe-core knows it, on a desk, a tablet and a phone, light and dark. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { barriers, onBench, paleWords } from './bench-page.ts';
import { openView, partOf, VIEWS, type View } from './views.ts';

/** Headings of the dialogs in the sources. */
const dialogsOf = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.tsx'))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'))
    .flatMap((source) => [...source.matchAll(/<dialog\b[^>]*?aria-labelledby="([^"]+)"/gs)].map(([, id]) => id));

describe('the list of views', () => {
  it('has every page that the bar leads to', () =>
    onBench(async (page) => {
      const links = await page.locator('.pages a').evaluateAll((all) => all.map((each) => each.getAttribute('href')));
      const listed = [...new Set(VIEWS.map((view) => `#${view.page}`))];
      expect(links).toEqual(Object.keys(pageWords.pages).map((id) => `#${id}`));
      expect(listed).toEqual(links);
    }));

  it('has every chart but the one that the bench opens with', () => {
    const listed = VIEWS.map(({ name }) => name);
    const charts = Object.keys(text.chart.tabs).map((tab) => `chart: ${tab}`);
    expect(charts.filter((name) => !listed.includes(name))).toEqual(['chart: force']);
  });

  it('has every dialog of the sources', () => {
    const listed = new Set(VIEWS.flatMap(({ dialog }) => dialog ?? []));
    expect([...new Set(dialogsOf('src/ui'))].sort()).toEqual([...listed].sort());
  });
});

/** Every width is seen on the page that is open: a view is as wide as its window, whichever width it was opened at. */
async function foundAt(page: Page, view: View, width: number): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'light' });
  await page.setViewportSize({ width, height: 900 });
  // Charts follow the width of the window in the next frame.
  await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  const part = partOf(view);
  const over = await page.locator(part).evaluateAll((all) => all.map((each) => each.scrollWidth - each.clientWidth));
  const light = await barriers(page, part);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark');
  const dark = await paleWords(page, part);
  return [
    // The centring mark of a sheet stands out by one.
    ...over.filter((beyond) => beyond > 1).map((beyond) => `hangs over by ${beyond} pixels`),
    ...light,
    ...dark.map((line) => `dark: ${line}`),
  ].map((line) => `${width}: ${line}`);
}

describe('no barrier, and nothing over the edge, at 1440, 1024 and 390 pixels, light and dark', () => {
  it.each(VIEWS)(
    '$name',
    (view) =>
      onBench(
        async (page) => {
          await openView(page, view);
          const found: string[] = [];
          for (const width of [1440, 1024, 390]) found.push(...(await foundAt(page, view, width)));
          expect(found).toEqual([]);
        },
        { reducedMotion: 'reduce' },
      ),
    120_000,
  );
});
