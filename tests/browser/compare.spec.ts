import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { compare as words } from '../../src/ui/text/compare.ts';
import { cell, onBench, paste } from './bench-page.ts';

const view = (page: Page) => page.getByRole('dialog', { name: words.title });
const opener = (page: Page) => page.getByRole('button', { name: words.open });
const names = (page: Page): Promise<string[]> =>
  view(page)
    .locator('select')
    .evaluateAll((all) => all.map((select) => (select as HTMLSelectElement).selectedOptions[0].label));
const marks = (page: Page): Promise<(string | null)[]> =>
  view(page)
    .locator('[data-place=pistonCompression] tbody tr')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-mark')));

const LIST = '34 x 0.3, 20 x 0.1, 24 x 0.2 (2)';

describe('the comparison of two builds', () => {
  it('opens by keys, is swapped, chosen anew, follows no other build, and gives the focus back', () =>
    onBench(async (page) => {
      await paste(page, '#stack', LIST);
      await expect.poll(() => cell(page, 2, 'count').inputValue()).toBe('2');
      await opener(page).focus();
      await page.keyboard.press('Enter');
      const [from, to] = await names(page);
      expect(from).not.toBe(to);
      const forward = await marks(page);
      expect(forward).toContain('added');
      const totals = () => view(page).locator('[data-place=pistonCompression] tfoot .total').allTextContents();
      expect(await totals()).toEqual([expect.any(String), '4 shims, 0.80 mm high']);

      await view(page).getByRole('button', { name: words.swap }).focus();
      await page.keyboard.press('Enter');
      expect(await names(page)).toEqual([to, from]);
      expect(await totals()).toEqual(['4 shims, 0.80 mm high', expect.any(String)]);
      expect(await marks(page)).toContain('removed');

      await view(page).getByLabel(words.to).selectOption({ label: to });
      expect(await view(page).getByRole('status').textContent()).toBe(words.same);
      expect(new Set(await marks(page))).toEqual(new Set(['kept']));

      await page.keyboard.press('Escape');
      await view(page).waitFor({ state: 'detached' });
      expect(await opener(page).evaluate((button) => button === document.activeElement)).toBe(true);
    }));

  it('is copied as text', () =>
    onBench(
      async (page) => {
        await paste(page, '#stack', LIST);
        await opener(page).click();
        await view(page).getByRole('button', { name: words.copy }).click();
        await expect.poll(() => view(page).getByRole('status').textContent()).toBe(words.copied);
        const written = await page.evaluate(() => navigator.clipboard.readText());
        expect(written.split('\n')[0]).toBe((await names(page)).join(' → '));
        expect(written).toContain('20 × 0.1 mm');
        expect(written).toContain('→ 4 shims, 0.80 mm high');
      },
      { permissions: ['clipboard-read', 'clipboard-write'] },
    ));

  it('is what is printed while it is open', () =>
    onBench(async (page) => {
      await page.evaluate(() => {
        window.print = () => document.documentElement.setAttribute('data-printed', '');
      });
      await opener(page).click();
      await view(page).getByRole('button', { name: words.print }).click();
      expect(await page.locator('html[data-printed]').count()).toBe(1);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.bench').isVisible()).toBe(false);
      expect(await view(page).locator('table').first().isVisible()).toBe(true);
      expect(await view(page).getByRole('button', { name: words.copy }).isVisible()).toBe(false);
      await page.emulateMedia({ media: 'screen' });
    }));

  it('needs two builds', () =>
    onBench(async (page) => {
      await page.getByRole('button', { name: 'Edit', exact: true }).click();
      await page.locator('.build-acts').getByRole('button', { name: 'Delete' }).click();
      expect(await opener(page).isDisabled()).toBe(true);
      expect(await opener(page).getAttribute('title')).toBe(words.needsTwo);
    }));
});
