/** A whole revalve without a mouse: every control is reached by Tab and shows that it has the keyboard (WCAG 2.1.1, 2.4.7). */
import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { compare } from '../../src/ui/text/compare.ts';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { cell, diameters, onBench, settled } from './bench-page.ts';
import { menu } from './export-page.ts';

/** More stops than the bench has. */
const MOST_STOPS = 250;

const hasFocus = (target: Locator): Promise<boolean> => target.evaluate((each) => each === document.activeElement);

/** Tab after Tab, as a person goes, until the control has the keyboard; then it must be seen to have it. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    if (await hasFocus(target)) break;
    await page.keyboard.press('Tab');
  }
  expect(await hasFocus(target)).toBe(true);
  const marked = await target.evaluate((each) => {
    // A box may carry the mark for the input in it.
    const marks = [each, each.parentElement].map((at) => at && getComputedStyle(at));
    return marks.some(
      (style) =>
        style && ((style.outlineStyle !== 'none' && style.outlineWidth !== '0px') || style.boxShadow !== 'none'),
    );
  });
  expect(marked, await target.evaluate((each) => each.outerHTML.slice(0, 120))).toBe(true);
}

async function press(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press('Enter');
}

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true }).first();

it('a revalve, from the copy of a build to the proof and back, by the keyboard alone', () =>
  onBench(async (page) => {
    const before = await diameters(page);
    await press(page, button(page, text.builds.edit));
    await press(page, page.locator('.build-acts').getByRole('button', { name: text.builds.duplicate }));
    await expect.poll(() => page.locator('.build-name').count()).toBe(3);

    await tabTo(page, cell(page, 0, 'thickness_mm'));
    await page.keyboard.press('Control+a');
    await page.keyboard.type('0.3');
    expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.3');

    await press(page, button(page, text.stack.paste));
    await tabTo(page, page.locator('.paste-box textarea'));
    await page.keyboard.type('34 x 0.2 (2), 26 x 0.2, 18 x 0.3');
    await press(page, button(page, text.stack.pasteApply(3)));
    expect(await diameters(page)).toEqual(['34', '26', '18']);

    await press(page, button(page, compare.open));
    await page.getByRole('dialog', { name: compare.title }).locator('table').first().waitFor();
    await page.keyboard.press('Escape');
    expect(await hasFocus(button(page, compare.open))).toBe(true);

    await page.keyboard.press('Control+z');
    expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.3');
    expect(await diameters(page)).toEqual(before);

    const arriving = page.waitForEvent('download');
    await press(page, menu(page, 'chart'));
    await page.keyboard.press('Enter');
    expect((await arriving).suggestedFilename()).toMatch(/\.svg$/);

    await press(page, page.getByRole('link', { name: pageWords.pages.proof.name, exact: true }).first());
    await page.locator('#proof-list, .proof').first().waitFor();
    await press(page, page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).first());
    await settled(page);
    expect(await diameters(page)).toEqual(before);
  }));
