import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { sheetWords } from '../../src/sheet/text/en.ts';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { sheetPageWords as words } from '../../src/ui/text/sheet.ts';
import { runHere } from '../helpers/run-cli.ts';
import { DEMO_FILE, kept, onBench } from './bench-page.ts';
import type { PageOptions } from './harness.ts';

/** The bench on the sheet, with the curve drawn: compression and rebound of two builds. */
const onSheet = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  onBench(async (page) => {
    await page.evaluate(() => {
      location.hash = 'sheet';
    });
    await page.locator('.paper .curve svg polyline').nth(3).waitFor();
    await test(page);
  }, options);

const forces = (page: Page): Promise<string[]> => page.locator('.paper .curve tbody td').allTextContents();
const fact = (page: Page, label: string) =>
  page.locator('.paper .fill .facts > div', { has: page.locator('dt', { hasText: label }) }).locator('dd');

async function saved(page: Page): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: words.save, exact: true }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/build-sheet-.*\.html$/);
  return Buffer.concat(await (await file.createReadStream()).toArray()).toString('utf8');
}

describe('the sheet', () => {
  it('is the one that the command line writes, and is saved as it is shown', () =>
    onSheet(async (page) => {
      const { result } = await runHere(['sheet', DEMO_FILE, '--html', '--build', 'square-edge']);
      const numbers = [...result.split('id="sheet-curve"')[1].matchAll(/<td class="[^"]*">([^<]*)<\/td>/g)];
      expect(await forces(page)).toEqual(numbers.map(([, number]) => number));
      const file = await saved(page);
      expect(file).not.toContain('<script');
      const body = (html: string): string => html.split('id="sheet-links"')[0];
      expect(body(file)).toBe(body(result));
    }));

  it('keeps what is written onto it with the build, in both units', () =>
    onSheet(async (page) => {
      expect(await fact(page, sheetWords.fill.pistonTorque).textContent()).toBe('');
      await page.getByLabel(words.torques.pistonTorque_N_m, { exact: true }).fill('20');
      await page.getByLabel(words.lines.torqueSource, { exact: true }).fill('manual <b>p. 7</b>');
      await expect.poll(() => fact(page, sheetWords.fill.pistonTorque).textContent()).toBe('20 N·m (14.8 ft·lbf)');
      expect(await fact(page, sheetWords.fill.torqueSource).textContent()).toBe('manual <b>p. 7</b>');
      await page.getByLabel(text.bar.familyLong.imperial).first().click();
      await expect.poll(() => fact(page, sheetWords.fill.pistonTorque).textContent()).toBe('14.8 ft·lbf (20 N·m)');
      await kept(page);
      await page.reload();
      await expect.poll(() => fact(page, sheetWords.fill.pistonTorque).textContent()).toBe('14.8 ft·lbf (20 N·m)');
    }));

  it('lists the stack that goes on first from its clamp side, once it is said', () =>
    onSheet(async (page) => {
      const first = () => page.locator('.paper .stacks section').first();
      const sizes = () => first().locator('tbody tr td:nth-child(2)').allTextContents();
      const before = await sizes();
      await page.getByLabel(words.firstStack, { exact: true }).selectOption('pistonCompression');
      await expect.poll(sizes).toEqual([...before].reverse());
      expect(await first().textContent()).toContain(sheetWords.shims.order['before-piston']);
    }));

  it('prints on two pages of A4 and of Letter, with the sheet alone on them', () =>
    onSheet(async (page) => {
      for (const format of ['A4', 'Letter']) {
        const pdf = (await page.pdf({ format })).toString('latin1');
        expect([format, pdf.match(/\/Type\s*\/Page\b/g)?.length]).toEqual([format, 2]);
      }
      await page.emulateMedia({ media: 'print' });
      for (const part of ['.bar', '.page-head', '.assembly-fields'])
        expect(await page.locator(part).first().isVisible()).toBe(false);
      expect(await page.locator('.paper').isVisible()).toBe(true);
      // The width between the margins of A4: nothing may stand over.
      await page.setViewportSize({ width: 703, height: 1039 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(703);
    }));

  it('is reached by the bar, and by keys past it', () =>
    onBench(async (page) => {
      await page.getByRole('navigation', { name: pageWords.nav }).getByRole('link', { name: 'Sheet' }).click();
      await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
      expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
      await page.locator('.paper .sheet-title').waitFor();
      await page.locator('.skip').focus();
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('build-sheet');
    }));
});
