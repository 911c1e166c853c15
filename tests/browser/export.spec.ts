import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, onBench } from './bench-page.ts';

const words = text.export;
const folder = mkdtempSync(join(tmpdir(), 'shimwright-'));
const CLIPBOARD = ['clipboard-read', 'clipboard-write'];

const menu = (page: Page, sheet: keyof typeof words.sheets) =>
  page.getByRole('button', { name: words.of(words.sheets[sheet]) });

async function choose(page: Page, sheet: keyof typeof words.sheets, choice: string): Promise<void> {
  await menu(page, sheet).click();
  await page.locator(`[data-export=${choice}]`).click();
}

/** What arrives among the downloads. */
async function fetched(page: Page, sheet: keyof typeof words.sheets, choice: string) {
  const arriving = page.waitForEvent('download');
  await choose(page, sheet, choice);
  const download = await arriving;
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return { name: download.suggestedFilename(), bytes: readFileSync(path) };
}

const notice = (page: Page) => page.locator('.notice').first();

describe('the export menu', () => {
  it('opens, moves, chooses and closes by keys, and breaks no rule of reach', () =>
    onBench(async (page) => {
      const button = menu(page, 'readout');
      await button.focus();
      await page.keyboard.press('Enter');
      const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-export'));
      expect(await focused()).toBe('copy-readings');
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe('readings-csv');
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe('copy-readings');
      await page.keyboard.press('End');
      expect(await focused()).toBe('readings-csv');
      await page.keyboard.press('Escape');
      expect(await page.locator('.export-list').count()).toBe(0);
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
      await button.click();
      await button.click();
      expect(await page.locator('.export-list').count()).toBe(0);
      await page.keyboard.press('ArrowDown');
      const arriving = page.waitForEvent('download');
      await page.keyboard.press('End');
      await page.keyboard.press('Enter');
      expect((await arriving).suggestedFilename()).toMatch(/-readings\.csv$/);
    }));

  it('stays on a narrow page', () =>
    onBench(
      async (page) => {
        for (const sheet of ['readout'] as const) {
          await menu(page, sheet).click();
          const box = await page.locator('.export-list').boundingBox();
          expect(box?.x).toBeGreaterThanOrEqual(0);
          expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(390);
          await page.keyboard.press('Escape');
        }
      },
      { viewport: { width: 390, height: 844 } },
    ));
});

describe('the readings', () => {
  it('go to the clipboard as they stand on the page', () =>
    onBench(
      async (page) => {
        const shown = await page.locator('[data-way=rebound] [data-row=force] td').allTextContents();
        await choose(page, 'readout', 'copy-readings');
        await expect.poll(() => notice(page).textContent()).toContain(words.copied);
        const lines = (await page.evaluate(() => navigator.clipboard.readText()))
          .split('\n')
          .map((row) => row.split('\t'));
        const forces = lines.filter(([name]) => name === 'Force, N').map(([, ...cells]) => cells);
        expect(forces[1]).toEqual(shown.map((cell) => cell.replace('−', '-')));
        expect(forces[1].every((cell) => Number(cell) < 0)).toBe(true);
        expect(lines.flat()).toContain(text.chart.estimate);
        expect(lines.flat()).toContain(words.invented);
      },
      { permissions: CLIPBOARD },
    ));

  it('where copying is refused, that is told, with the file instead', () =>
    onBench(async (page) => {
      await page.evaluate(() => {
        navigator.clipboard.writeText = () => Promise.reject(new Error('refused'));
      });
      await choose(page, 'readout', 'copy-readings');
      await page.locator('.notice.problem').waitFor();
      const arriving = page.waitForEvent('download');
      await page.locator('.notice.problem').getByRole('button', { name: words.readingsCsv }).click();
      expect((await arriving).suggestedFilename()).toMatch(/-readings\.csv$/);
    }));

  it('arrive as a file that a spreadsheet takes for UTF-8', () =>
    onBench(async (page) => {
      const { name, bytes } = await fetched(page, 'readout', 'readings-csv');
      expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
      expect(bytes.toString('utf8')).toContain('Force, N');
      await expect.poll(() => notice(page).textContent()).toContain(words.saved(name));
    }));
});
