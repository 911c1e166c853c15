import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, diameters, force, onBench } from './bench-page.ts';
import type { PageOptions } from './harness.ts';

const hand = (width: number, height: number): PageOptions => ({
  viewport: { width, height },
  hasTouch: true,
  isMobile: true,
});
/** Small and usual phones, upright and on their side, and tablets. */
const HANDS = [
  [320, 640],
  [390, 844],
  [844, 390],
  [768, 1024],
  [1024, 768],
] as const;

/** What a finger may hit, with its size; what is folded away or outside of every view counts not. */
const targets = (page: Page) =>
  page.locator('button, a, input, select, summary').evaluateAll((all) =>
    all
      .filter((each) => each.checkVisibility({ visibilityProperty: true }) && each.getClientRects().length > 0)
      .map((each) => {
        const { width, height } = each.getBoundingClientRect();
        return { of: each.outerHTML.slice(0, 90), width, height };
      }),
  );

/** One finger down, over the given ways, and up again, as the browser gets it from the screen. */
async function swipe(page: Page, from: { x: number; y: number }, by: { x: number; y: number }): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const at = (part: number) => [{ x: from.x + by.x * part, y: from.y + by.y * part }];
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  for (let step = 1; step <= 10; step++)
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / 10) });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await session.detach();
}

const speed = async (page: Page): Promise<number> =>
  Number(await page.getByRole('slider').getAttribute('aria-valuenow'));
const scrolled = (page: Page): Promise<number> => page.evaluate(() => Math.round(scrollY));

describe.each(HANDS)('in a hand, %i by %i', (width, height) => {
  it('nothing hangs over, every target is large, and the shim table shows its numbers whole', () =>
    onBench(
      async (page) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        const all = await targets(page);
        expect(all.length).toBeGreaterThan(40);
        expect(all.filter((each) => each.width < 44 || each.height < 44)).toEqual([]);
        const cut = await page.locator('.shims').evaluate((table) =>
          [...table.querySelectorAll('input, td, th:not(.unseen)')]
            .filter((each) => each.getBoundingClientRect().width > 1)
            .filter(
              (each) =>
                each.scrollWidth > each.clientWidth + 1 ||
                each.getBoundingClientRect().right > table.getBoundingClientRect().right + 1,
            )
            .map((each) => each.outerHTML.slice(0, 90)),
        );
        expect(cut).toEqual([]);
      },
      hand(width, height),
    ));
});

describe('on a phone', () => {
  it('the curves are in the first view with every tab whole; the builds unfold from their one line', () =>
    onBench(
      async (page) => {
        const plot = await page.locator('.plot').boundingBox();
        expect(plot?.y).toBeLessThan(320);
        expect((plot?.y ?? 0) + (plot?.height ?? 0)).toBeLessThan(844);
        const cut = await page
          .locator('.chart-tabs button')
          .evaluateAll(
            (tabs) =>
              tabs.map((tab) => tab.getBoundingClientRect()).filter(({ left, right }) => left < 0 || right > innerWidth)
                .length,
          );
        expect(cut).toBe(0);
        const fold = page.locator('.builds-fold');
        const list = page.locator('.builds ul');
        expect([await fold.getAttribute('aria-expanded'), await list.isVisible()]).toEqual(['false', false]);
        await fold.tap();
        expect([await fold.getAttribute('aria-expanded'), await list.isVisible()]).toEqual(['true', true]);
        const other = list.locator('[aria-pressed=false]');
        const name = (await other.locator('.build-name').textContent()) ?? '';
        await other.tap();
        expect(await fold.textContent()).toContain(name);
        await page.getByRole('button', { name: text.chart.tabs.opening, exact: true }).tap();
        await page.locator('.plot[data-chart=opening]').waitFor();
      },
      hand(390, 844),
    ));

  it('a row still is a row of the table to those who hear the page', () =>
    onBench(
      async (page) => {
        const rows = page.getByRole('table').and(page.locator('.shims')).getByRole('row');
        expect(await rows.count()).toBe((await diameters(page)).length + 1);
        expect(await rows.first().getByRole('columnheader').count()).toBeGreaterThanOrEqual(7);
        expect(await rows.first().textContent()).toMatch(/MPa/);
        expect(await rows.nth(1).getByRole('cell').count()).toBeGreaterThanOrEqual(6);
      },
      hand(390, 844),
    ));

  it('a thumb drags the speed cursor and the page stays; a swipe upwards scrolls and the cursor stays', () =>
    onBench(
      async (page) => {
        await page.locator('.cursor-layer').evaluate((layer) => layer.scrollIntoView({ block: 'center' }));
        const box = await page.locator('.cursor-layer').boundingBox();
        if (!box) throw new Error('no chart');
        const middle = { x: box.x + box.width * 0.4, y: box.y + box.height / 2 };
        const [before, place] = [await speed(page), await scrolled(page)];
        await swipe(page, middle, { x: box.width * 0.4, y: 6 });
        await expect.poll(() => speed(page)).toBeGreaterThan(before + 0.3);
        expect(await scrolled(page)).toBe(place);
        const moved = await speed(page);
        await swipe(page, middle, { x: 0, y: -180 });
        await expect.poll(() => scrolled(page)).toBeGreaterThan(place + 60);
        expect(await speed(page)).toBe(moved);
        await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2 - (await scrolled(page)) + place);
        await expect.poll(() => speed(page)).not.toBe(moved);
      },
      hand(390, 844),
    ));

  it('a shim is added, made thinner and taken back with taps alone', () =>
    onBench(
      async (page) => {
        const [start, at] = [await diameters(page), await force(page)];
        await page.getByRole('button', { name: text.stack.add }).tap();
        await expect.poll(() => diameters(page)).toHaveLength(start.length + 1);
        await cell(page, 0, 'thickness_mm').tap();
        await page.keyboard.type('0.2');
        await expect.poll(() => force(page)).not.toBe(at);
        await page.locator('.bar .icon').first().tap();
        await page.locator('.bar .icon').first().tap();
        await expect.poll(() => diameters(page)).toEqual(start);
        await expect.poll(() => force(page)).toBe(at);
      },
      hand(390, 844),
    ));
});
