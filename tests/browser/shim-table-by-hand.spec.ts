import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, diameters, force, onBench, SCREENS } from './bench-page.ts';

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const focused = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.activeElement?.getAttribute('data-cell'));
const grip = async (page: Page, row: number): Promise<{ x: number; y: number }> => {
  const box = await page.locator('.shims .grip').nth(row).boundingBox();
  if (!box) throw new Error('no such row');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

describe('the count of a row', () => {
  it('goes up and down by buttons, one step of undo each, and never to none', () =>
    onBench(async (page) => {
      const count = cell(page, 0, 'count');
      const before = await force(page);
      expect(await count.inputValue()).toBe('1');
      expect(await button(page, text.stack.oneLess(1)).isDisabled()).toBe(true);
      await button(page, text.stack.oneMore(1)).click();
      await button(page, text.stack.oneMore(1)).click();
      expect(await count.inputValue()).toBe('3');
      await expect.poll(() => force(page)).not.toBe(before);
      await button(page, text.stack.oneLess(1)).click();
      expect(await count.inputValue()).toBe('2');
      for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
      expect(await count.inputValue()).toBe('1');
      await expect.poll(() => force(page)).toBe(before);
    }));

  it('goes up and down by arrow keys, and Enter goes from row to row', () =>
    onBench(async (page) => {
      const count = cell(page, 1, 'count');
      await count.focus();
      await page.keyboard.press('ArrowUp');
      await page.keyboard.press('ArrowUp');
      expect(await count.inputValue()).toBe('3');
      for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowDown');
      expect(await count.inputValue()).toBe('1');
      expect(await focused(page)).toBe('1:count');
      await page.keyboard.press('Enter');
      await expect.poll(() => focused(page)).toBe('2:count');
      await page.keyboard.press('Shift+Enter');
      await expect.poll(() => focused(page)).toBe('1:count');
      await cell(page, 1, 'thickness_mm').focus();
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => focused(page)).toBe('0:thickness_mm');
    }));
});

describe('rows', () => {
  it('move by a finger on their number', () =>
    onBench(
      async (page) => {
        const start = await diameters(page);
        const [from, to] = [await grip(page, 1), await grip(page, 2)];
        const touch = await page.context().newCDPSession(page);
        const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) =>
          touch.send('Input.dispatchTouchEvent', { type, touchPoints: points });
        await send('touchStart', [from]);
        for (let step = 1; step <= 5; step++)
          await send('touchMove', [{ x: from.x, y: from.y + ((to.y - from.y) * step) / 5 }]);
        // Going down a row comes to lie after the one it is over.
        await page.locator('.shims tr.drop-after').waitFor();
        await send('touchEnd', []);
        await expect.poll(() => diameters(page)).toEqual([start[0], start[2], start[1], ...start.slice(3)]);
        expect(await page.locator('.shims tr.drop-after').count()).toBe(0);
      },
      { hasTouch: true },
    ));

  it('keep the keyboard when the last one is deleted', () =>
    onBench(async (page) => {
      const rows = (await diameters(page)).length;
      await button(page, text.stack.remove(rows)).focus();
      await page.keyboard.press('Enter');
      expect(await diameters(page)).toHaveLength(rows - 1);
      await expect.poll(() => focused(page)).toBe(`${rows - 2}:outerDiameter_mm`);
    }));
});

describe.each(SCREENS)('at %i pixels, %s', (width, colorScheme) => {
  it('every button of a row is within the sheet and large enough', () =>
    onBench(
      async (page) => {
        const sheet = await page.locator('.sheet.stack').boundingBox();
        if (!sheet) throw new Error('no sheet');
        const last = await page.locator('.shims tbody tr').first().locator('button').last().boundingBox();
        // A phone scrolls the table inside its sheet.
        if (width > 760) expect((last?.x ?? 0) + (last?.width ?? 0)).toBeLessThanOrEqual(sheet.x + sheet.width);
        const steps = page.locator('.stepper button');
        for (const each of await steps.all()) {
          const box = await each.boundingBox();
          expect(box?.width).toBeGreaterThanOrEqual(24);
          expect(box?.height).toBeGreaterThanOrEqual(24);
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ));
});
