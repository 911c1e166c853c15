/** What each shim of the stack on show does to the force: bars and sentences at the speed cursor. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, onBench } from './bench-page.ts';
import { fetched, rows } from './export-page.ts';
import { box, showTab } from './fork-page.ts';

const cellAt = (page: Page, n: number, name: string) =>
  page.locator(`.effects [data-shim="${n}"] [data-effect=${name}]`);
const numberAt = async (page: Page, n: number, name: string) =>
  Number.parseFloat((await cellAt(page, n, name).textContent()) ?? '');
const solved = (page: Page) => page.locator('[data-effects=solved]').waitFor({ timeout: 60_000 });

const onEffects = (test: (page: Page) => Promise<void>) =>
  onBench(async (page) => {
    await showTab(page, 'effects');
    await solved(page);
    await test(page);
  });

describe('what each shim does', () => {
  it('tells of every single shim what a change of it does, in a bar and a sentence, and follows the cursor', () =>
    onEffects(async (page) => {
      const shims = await page.locator('.effects tbody tr').count();
      expect(shims).toBe(3);
      expect(await page.locator('.effect-words li').count()).toBe(shims);
      const before = await numberAt(page, 1, 'thicker');
      expect(before).toBeGreaterThan(0);
      expect(await page.locator('.effect-words li').first().textContent()).toContain(
        text.effects.firmer(`${before} N`),
      );
      await box(page, text.chart.cursor).first().fill('2');
      await expect.poll(() => numberAt(page, 1, 'thicker')).toBeGreaterThan(before);
    }));

  it('is marked as of the stack before while an edit is solved, and then tells of the new one', () =>
    onEffects(async (page) => {
      const before = await numberAt(page, 3, 'thicker');
      const thickness = page.locator('.shims tbody tr').first().getByRole('textbox').nth(1);
      await thickness.fill('0.3');
      await page.locator('.shim-effects .stale').waitFor();
      await solved(page);
      expect(await numberAt(page, 3, 'thicker')).not.toBe(before);
    }));

  it('is saved as a table with its errors, and free of barriers', () =>
    onEffects(async (page) => {
      const saved = await rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(saved[0]).toContain(text.effects.error1);
      expect(saved.length).toBeGreaterThan(3 * 8);
      expect(await barriers(page)).toEqual([]);
    }));
});
