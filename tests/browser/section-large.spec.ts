/** The section over the whole window: its cursor, its keys, what it exports, and whom it keeps out. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, ENDS, onBench, pressIn } from './bench-page.ts';
import { fetched, readSvg } from './export-page.ts';

const words = text.sectionView;
const opener = (page: Page) => page.getByRole('button', { name: words.large });
const dialog = (page: Page) => page.locator('dialog.large-section');
const slider = (page: Page) => dialog(page).getByRole('slider', { name: words.cursor });
const face = (page: Page) => page.locator('.drawing [data-row="0"]').first().getAttribute('d');
const speed = async (page: Page) => Number.parseFloat((await dialog(page).locator('output').textContent()) ?? '');

async function enlarge(page: Page): Promise<void> {
  await opener(page).focus();
  await page.keyboard.press('Enter');
  await dialog(page).locator('svg[data-state=bent]').first().waitFor();
}

describe('the large view of the section', () => {
  it('fills the window with the section, the plan beside it, and gives the focus back when Escape closes it', () =>
    onBench(async (page) => {
      const small = await page.locator('.drawing svg').boundingBox();
      await enlarge(page);
      expect(await page.locator('[data-figure=section] .drawing svg').count()).toBe(1);
      expect(await page.locator('[data-figure=plan] .drawing svg').count()).toBe(1);
      const large = await page.locator('[data-figure=section] .drawing svg').boundingBox();
      expect(large?.height).toBeGreaterThan(1.5 * (small?.height ?? Number.NaN));
      expect(await dialog(page).boundingBox()).toMatchObject({ x: 0, y: 0, width: 1440, height: 900 });
      await page.keyboard.press('Escape');
      await dialog(page).waitFor({ state: 'detached' });
      expect(await opener(page).evaluate((button) => button === document.activeElement)).toBe(true);
      expect((await page.locator('.drawing svg').boundingBox())?.height).toBe(small?.height);
    }));

  it('bends with its own speed cursor, by keys, and takes the cursor of the bench along', () =>
    onBench(async (page) => {
      await enlarge(page);
      const [before, bent] = [await speed(page), await face(page)];
      await pressIn(slider(page), 'ArrowRight');
      expect(await speed(page)).toBeGreaterThan(before);
      expect(await face(page)).not.toBe(bent);
      expect(await slider(page).getAttribute('aria-valuetext')).toBe(
        await dialog(page).locator('output').textContent(),
      );
      await pressIn(slider(page), 'End');
      expect(await speed(page)).toBe(2);
      await dialog(page).getByRole('button', { name: words.close }).click();
      expect(Number(await page.getByRole('slider', { name: text.chart.cursor }).getAttribute('aria-valuenow'))).toBe(2);
    }));

  it('marks a part from its table, and its row from the part', () =>
    onBench(async (page) => {
      await enlarge(page);
      await dialog(page).locator('.parts [data-of=shim-1]').hover();
      expect(await page.locator('.drawing .shim.active').first().getAttribute('data-part')).toBe('shim-1');
      await dialog(page).getByRole('listbox').focus();
      await page.keyboard.press('End');
      expect(await dialog(page).locator('.parts tr.active').count()).toBe(1);
    }));

  it('plays the stroke and puts the cursor back', () =>
    onBench(async (page) => {
      await enlarge(page);
      const [before, bent] = [await speed(page), await face(page)];
      await dialog(page).getByRole('button', { name: words.play }).click();
      await expect.poll(() => face(page)).not.toBe(bent);
      const playing = await face(page);
      await expect.poll(() => face(page)).not.toBe(playing);
      await dialog(page).getByRole('button', { name: words.pause }).click();
      expect(await speed(page)).toBe(before);
      expect(await face(page)).toBe(bent);
    }));

  it('stops the stroke when it is closed, at the speed it stood at', () =>
    onBench(async (page) => {
      const bent = await face(page);
      await enlarge(page);
      await dialog(page).getByRole('button', { name: words.play }).click();
      await page.keyboard.press('Escape');
      await dialog(page).waitFor({ state: 'detached' });
      expect(await face(page)).toBe(bent);
    }));

  it('plays nothing to those who asked for less motion', () =>
    onBench(
      async (page) => {
        await enlarge(page);
        expect(await dialog(page).getByRole('button', { name: words.play }).count()).toBe(0);
        expect(await slider(page).count()).toBe(1);
      },
      { reducedMotion: 'reduce' },
    ));

  it('exports what it shows: as large, shaded as it is', () =>
    onBench(async (page) => {
      const small = await readSvg(page, (await fetched(page, 'section', 'section-svg')).bytes.toString('utf8'));
      await enlarge(page);
      const large = await readSvg(page, (await fetched(page, 'section', 'section-svg')).bytes.toString('utf8'));
      const drawing = await page.locator('[data-figure=section] .drawing svg').boundingBox();
      expect(large.width).toBeGreaterThan(drawing?.width ?? Number.NaN);
      expect(large.width).toBeGreaterThan(1.5 * small.width);
      expect(large).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      expect(large.words).toContain(words.legend('MPa'));
      expect(large.colours.join()).toMatch(/stop-color:\s*rgb/);
      expect(large.colours.join()).not.toMatch(/var\(|color-mix|color\(/);
    }));

  it.each(ENDS)('axe-core finds no barrier at %i pixels, %s', (width, colorScheme) =>
    onBench(
      async (page) => {
        await enlarge(page);
        expect(await barriers(page)).toEqual([]);
        await dialog(page).getByRole('listbox').focus();
        expect(await barriers(page)).toEqual([]);
        expect(await dialog(page).evaluate((each) => each.scrollWidth - each.clientWidth)).toBe(0);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );
});
