import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, force, kept, onBench, plotted, pressIn, settled } from './bench-page.ts';

const more = (page: Page, row: number) => page.getByRole('button', { name: text.stack.moreOf(row), exact: true });
const box = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const bore = (row: number) => text.stack.field(text.stack.bore, row);
const dish = (row: number) => text.stack.field(text.stack.dish, row);
const springs = (page: Page) => page.locator('.springs > summary');

async function changesForce(page: Page, edit: () => Promise<void>): Promise<void> {
  const before = await force(page);
  await edit();
  await expect.poll(() => force(page)).not.toBe(before);
  await settled(page);
}

describe('what a stack may have beside sizes', () => {
  it('a bore, a dish and a float change the curve, outlive a reload, and are taken back', () =>
    onBench(async (page) => {
      const [lines, atFirst] = [await plotted(page), await force(page)];
      await more(page, 1).click();
      await more(page, 3).click();
      await changesForce(page, () => box(page, dish(1)).fill('0.02 + 0.03'));
      await changesForce(page, () => box(page, bore(3)).fill('14'));
      await springs(page).click();
      const beforeFloat = await force(page);
      await box(page, text.stack.floatTravel).fill('0.5');
      await box(page, text.stack.floatRate).fill('20 N/mm');
      expect(await page.locator('.springs [role=status]').last().textContent()).toContain(text.stack.floatPreload);
      expect(await force(page)).toBe(beforeFloat);
      await changesForce(page, () => box(page, text.stack.floatPreload).fill('5'));
      expect(await springs(page).textContent()).toContain(text.stack.summary.float('0.5 mm'));
      expect(await plotted(page)).not.toEqual(lines);
      const after = await force(page);
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await force(page)).toBe(after);
      await more(page, 1).click();
      await more(page, 3).click();
      await springs(page).click();
      expect(await box(page, dish(1)).inputValue()).toBe('0.05');
      expect(await box(page, bore(3)).inputValue()).toBe('14');
      expect(await box(page, text.stack.floatRate).inputValue()).toBe('20');
      await changesForce(page, () => box(page, text.stack.floatTravel).fill(''));
      expect(await box(page, text.stack.floatRate).inputValue()).toBe('20');
      await changesForce(page, () => box(page, bore(3)).fill(''));
      await box(page, dish(1)).fill('');
      await expect.poll(() => force(page)).toBe(atFirst);
      for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
      await expect.poll(() => force(page)).toBe(after);
      expect(await box(page, text.stack.floatTravel).inputValue()).toBe('0.5');
    }));

  it('says at the box what does not fit', () =>
    onBench(async (page) => {
      await more(page, 1).click();
      await box(page, bore(1)).fill('40');
      const fault = page.locator('.shim-more .fault');
      await fault.waitFor();
      expect(await fault.getAttribute('data-code')).toBe('stack.shim.bore');
      await pressIn(box(page, bore(1)), 'Escape');
      await springs(page).click();
      await box(page, text.stack.coilDiameter).fill('80');
      await page.locator('.springs .fault').waitFor();
      expect(await page.locator('.springs .fault').getAttribute('data-code')).toBe('stack.coil-spring.beyond-shim');
    }));

  it.each([390, 1440])('is without barriers and nothing hangs over the edge at %i pixels', (width) =>
    onBench(
      async (page) => {
        await more(page, 1).click();
        await springs(page).click();
        await box(page, text.stack.floatTravel).fill('0.5');
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        for (const label of [dish(1), text.stack.floatRate]) {
          const place = await box(page, label).boundingBox();
          expect(place && place.x + place.width).toBeLessThan(width);
        }
      },
      { viewport: { width, height: 900 } },
    ),
  );
});
