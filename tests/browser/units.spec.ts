import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { unitsWords as words } from '../../src/ui/text/units.ts';
import { barriers, cell, force, onBench, pressIn, SCREENS, settled } from './bench-page.ts';
import { choose } from './export-page.ts';

const dialog = (page: Page) => page.getByRole('dialog', { name: words.title });
const opener = (page: Page) => page.locator('.units-button');
const clamp = (page: Page) => page.locator('#stack').getByLabel(text.stack.clamp, { exact: true });
const gas = (page: Page) => page.getByLabel(text.damper.gasPressure, { exact: true });
const unitOf = (page: Page, field: string) =>
  page.getByRole('button', { name: new RegExp(`^Unit of ${field}: `), includeHidden: true });

/** Where the bar has no room the button is in its menu. */
async function unfold(page: Page): Promise<void> {
  if ((await opener(page).count()) === 0) await page.locator('#bar-menu-button').click();
}

const openGas = async (page: Page): Promise<void> => {
  await page.locator('.damper summary', { hasText: /^Gas/ }).click();
  await gas(page).waitFor();
};

describe('the unit of one quantity', () => {
  it('is picked at a number by keys, holds for every number of the kind and no other, and is kept', () =>
    onBench(async (page) => {
      await openGas(page);
      // The demo's gas pressure is 12 bar; 12 × 14.5038 psi, the pound-force per square inch of 6894.757 Pa.
      expect(await gas(page).inputValue()).toBe('12');
      await gas(page).focus();
      await page.keyboard.press('Alt+ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Enter');
      await expect.poll(() => gas(page).inputValue()).toBe('174.05');
      expect(await unitOf(page, text.damper.gasPressure).textContent()).toBe('psi');
      expect(await clamp(page).inputValue()).toBe('12');
      await page
        .getByRole('tab', { name: text.chart.tabs.pressures })
        .or(page.getByRole('button', { name: text.chart.tabs.pressures }))
        .first()
        .click();
      await expect.poll(() => page.locator('.plot-board .ytitle').textContent()).toContain('psi');
      expect(await page.locator('.readout').textContent()).toContain('psi');

      await page.reload();
      await settled(page);
      await openGas(page);
      expect(await gas(page).inputValue()).toBe('174.05');

      await opener(page).click();
      await dialog(page).getByRole('button', { name: words.reset }).click();
      await page.keyboard.press('Escape');
      expect(await gas(page).inputValue()).toBe('12');
    }));

  it('closes its menu by Escape with nothing changed and the field at hand', () =>
    onBench(async (page) => {
      await clamp(page).focus();
      await page.keyboard.press('Alt+ArrowDown');
      await page.getByRole('menu', { name: words.menu('length') }).waitFor();
      await page.keyboard.press('Escape');
      expect(await page.locator('.unit-menu:popover-open').count()).toBe(0);
      expect(await clamp(page).inputValue()).toBe('12');
    }));

  it.each(SCREENS)('is listed in a view that breaks no rule of reach at %i, %s', (width, colorScheme) =>
    onBench(
      async (page) => {
        await unfold(page);
        await opener(page).click();
        await dialog(page).getByLabel(words.kinds.length).selectOption('thou');
        expect(await barriers(page)).toEqual([]);
        await page.keyboard.press('Escape');
        // 34 mm is 1338.6 thou.
        await expect.poll(() => cell(page, 0, 'outerDiameter_mm').inputValue()).toBe('1338.6');
        await unfold(page);
        expect(await opener(page).getAttribute('aria-label')).toBe(words.open(1));
        expect(await barriers(page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );
});

describe('numbers in the locale of the browser', () => {
  const GERMAN = { locale: 'de-DE' };

  it('are shown and read with its decimal comma; what could be thousands is asked back', () =>
    onBench(async (page) => {
      const thickness = cell(page, 0, 'thickness_mm');
      expect(await thickness.inputValue()).toBe('0,25');
      await thickness.fill('0,3');
      await pressIn(thickness, 'Enter');
      await settled(page);
      expect(await thickness.inputValue()).toBe('0,3');
      const before = await force(page);
      await thickness.fill('0.35');
      await pressIn(thickness, 'Enter');
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await thickness.inputValue()).toBe('0,35');

      await thickness.fill('1.234');
      await expect
        .poll(() => page.locator('[data-code="units.number.ambiguous-point"]').textContent())
        .toContain('1,234 or 1234');
      await pressIn(thickness, 'Escape');
      expect(await page.locator('.plot-board').textContent()).toMatch(/\d,\d/);
      expect(await page.locator('.plot-board').textContent()).not.toMatch(/\d\.\d/);
    }, GERMAN));

  it('stay with a point in the copied list and in links, and in files', () =>
    onBench(
      async (page) => {
        await page.locator('#stack').getByRole('button', { name: text.stack.copy }).click();
        await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toContain('0.25');
        const arriving = page.waitForEvent('download');
        await choose(page, 'readout', 'readings-csv');
        const stream = await (await arriving).createReadStream();
        let csv = '';
        for await (const part of stream) csv += part;
        expect(csv.split('\r\n').slice(2, 8).join('\n')).not.toMatch(/"[−-]?\d+,\d/);
      },
      { ...GERMAN, permissions: ['clipboard-read', 'clipboard-write'] },
    ));

  it('can be chosen otherwise', () =>
    onBench(async (page) => {
      await opener(page).click();
      await dialog(page).getByRole('button', { name: words.numberChoices.point }).click();
      await page.keyboard.press('Escape');
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.25');
      await page.reload();
      await settled(page);
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.25');
    }, GERMAN));
});
