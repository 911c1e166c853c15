import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, onBench, plotted, settled } from './bench-page.ts';

const told = (page: Page) => page.locator('.theory-used').textContent();
const section = (page: Page) => page.locator('.title-block').textContent();
const choose = (page: Page, theory: keyof typeof text.theoryShort) =>
  page.getByRole('button', { name: text.theoryShort[theory], exact: true }).click();
const waved = (page: Page) => page.locator('.theory-used[data-waves=settled]', { hasText: 'port-periodic' }).waitFor();

/** What the page shows of the theory from now on, in its order. */
const watch = (page: Page) =>
  page.evaluate(() => {
    const seen: string[] = [];
    const used = document.querySelector('.theory-used') as HTMLElement;
    const note = () => {
      const now = `${used.dataset.waves}: ${used.textContent}`;
      if (seen.at(-1) !== now) seen.push(now);
    };
    new MutationObserver(note).observe(used, { attributes: true, childList: true, characterData: true, subtree: true });
    note();
    (globalThis as unknown as { seen: string[] }).seen = seen;
  });
const seen = (page: Page) => page.evaluate(() => (globalThis as unknown as { seen: string[] }).seen);

describe('the plate theory', () => {
  it('is auto at first: round curves are replaced by those that follow the waves, marked in between', () =>
    onBench(async (page) => {
      await waved(page);
      const before = await plotted(page);
      await watch(page);
      await cell(page, 0, 'thickness_mm').fill('0.26');
      await expect.poll(() => seen(page)).toContain(`solving: ${text.theories.following}`);
      await waved(page);
      await settled(page);
      const after = await plotted(page);
      expect(after).not.toEqual(before);
      expect(await section(page)).toContain(text.theory['port-periodic']);
      // The round curves that stood there meanwhile are those of large deflection.
      await choose(page, 'large-deflection');
      await expect.poll(() => told(page)).toBe(text.theories.used(text.theory['large-deflection']));
      expect(await plotted(page)).not.toEqual(after);
      await choose(page, 'auto');
      await waved(page);
      await expect.poll(() => plotted(page)).toEqual(after);
    }));

  it('under auto is the round one where that serves, and nothing is solved twice', () =>
    onBench(async (page) => {
      await page.getByLabel(text.chart.upTo, { exact: true }).fill('0.3');
      await expect.poll(() => told(page)).toBe(text.theories.used(text.theory['large-deflection']));
      await watch(page);
      await cell(page, 0, 'thickness_mm').fill('0.26');
      await settled(page);
      expect(await seen(page)).toEqual([`settled: ${text.theories.used(text.theory['large-deflection'])}`]);
    }));

  it('may follow the waves of the rim alone: other curves, and its name on the section', () =>
    onBench(async (page) => {
      await choose(page, 'large-deflection');
      await settled(page);
      const before = await plotted(page);
      await choose(page, 'port-periodic');
      await expect.poll(() => section(page)).toContain(text.theory['port-periodic']);
      await settled(page);
      await expect.poll(() => plotted(page)).not.toEqual(before);
    }));
});
