import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { lessonsWords as words } from '../../src/ui/text/lessons.ts';
import { barriers, cell, demoText, drop, fromMenu, onBench, SCREENS, settled } from './bench-page.ts';

const button = (page: Page, name: string) => page.locator('.lessons').getByRole('button', { name, exact: true });
/** The button stands in the bar, or in its menu where the bar has no room. */
async function open(page: Page): Promise<void> {
  const atHand = page.locator('.bar > #lessons-button');
  if (await atHand.isVisible()) await atHand.click();
  else await fromMenu(page, words.button);
}
const pick = (page: Page, id: keyof typeof words.lessons) => page.locator(`[data-lesson=${id}]`).click();
const result = (page: Page, state: 'met' | 'not-yet') =>
  page.locator(`.lesson-result[data-result=${state}][data-settled=true] .lesson-mark`).waitFor();
const said = (page: Page) => page.locator('.lesson-result').textContent();
const title = (page: Page) => page.locator('#lessons-title').textContent();
const name = (page: Page) => page.getByLabel(text.bar.projectName).inputValue();
const focusedId = (page: Page) => page.evaluate(() => document.activeElement?.id ?? '');

describe('a lesson', () => {
  it('is answered through the fields of the bench; leaving brings the own project back as it was', () =>
    onBench(async (page) => {
      const mine = demoText().replace('Larkspur 230 rear damper (invented)', 'Mine');
      await drop(page, 'mine.shimwright.json', mine);
      await expect.poll(() => name(page)).toBe('Mine');
      await cell(page, 0, 'count').fill('2');
      await settled(page);
      await open(page);
      await pick(page, 'face');
      expect(await title(page)).toBe(words.lessons.face.title);
      await result(page, 'not-yet');
      expect(await said(page)).toContain(words.nothingStrayed);
      expect(await name(page)).toBe(words.project(words.lessons.face.title));
      expect(await cell(page, 0, 'count').inputValue()).toBe('1');

      await cell(page, 0, 'thickness_mm').fill('0.28');
      await expect.poll(() => said(page)).toMatch(/Compression at 0.30 m\/s: now [−-]\d+(\.\d)?\s%, too firm/);
      await result(page, 'not-yet');
      await cell(page, 0, 'thickness_mm').fill('0.25');
      await result(page, 'met');
      expect(await said(page)).toContain(words.lessons.face.learnt);
      await settled(page);
      await page.getByRole('button', { name: text.chart.gasForceLong.subtracted }).click();
      const inReadout = page.locator('[data-way=compression] [data-row=difference] td').nth(1);
      await expect.poll(() => inReadout.textContent()).toMatch(/^[−-]1\d %$/);
      const measured = /m\/s: now [−-]([\d.]+)\s%/.exec((await said(page)) ?? '')?.[1];
      const read = /(\d+) %/.exec((await inReadout.textContent()) ?? '')?.[1];
      expect(Math.abs(Number(measured) - Number(read))).toBeLessThanOrEqual(0.55);
      await cell(page, 1, 'thickness_mm').fill('0.15');
      await result(page, 'not-yet');
      expect(await said(page)).toContain(words.parts['compression-second-thickness']);

      await button(page, words.leave).click();
      await settled(page);
      expect(await name(page)).toBe('Mine');
      expect(await cell(page, 0, 'count').inputValue()).toBe('2');
      await expect.poll(() => page.locator('[data-lesson=face] .lesson-done').count()).toBe(1);
      await expect.poll(() => page.locator('.lesson-done').count()).toBe(1);
      await page.locator('.saving.saved').waitFor({ state: 'attached' });
      await page.reload();
      await settled(page);
      expect(await name(page)).toBe('Mine');
      await open(page);
      await expect.poll(() => page.locator('.lesson-done').count()).toBe(1);
    }));

  it('goes on after a reload, and still knows the way back', () =>
    onBench(async (page) => {
      await drop(page, 'mine.shimwright.json', demoText().replace('Larkspur 230 rear damper (invented)', 'Mine'));
      await expect.poll(() => name(page)).toBe('Mine');
      await cell(page, 0, 'count').fill('2');
      await settled(page);
      await page.locator('.saving.saved').waitFor({ state: 'attached' });
      await open(page);
      await pick(page, 'preload');
      await page.getByLabel(text.stack.seatHeight, { exact: true }).fill('0.15');
      await result(page, 'met');
      await page.locator('.saving.saved').waitFor({ state: 'attached' });
      await page.reload();
      await settled(page);
      expect(await title(page)).toBe(words.lessons.preload.title);
      await result(page, 'met');
      await button(page, words.leave).click();
      await expect.poll(() => name(page)).toBe('Mine');
      expect(await cell(page, 0, 'count').inputValue()).toBe('2');
      await expect.poll(() => title(page)).toBe(words.title);
    }));

  it('leaves its copy with the deleted projects when another one is opened, and undo goes on with it', () =>
    onBench(async (page) => {
      await open(page);
      await pick(page, 'preload');
      await page.getByLabel(text.stack.seatHeight, { exact: true }).fill('0.15');
      await result(page, 'met');
      await page.locator('.saving.saved').waitFor({ state: 'attached' });
      const copy = words.project(words.lessons.preload.title);
      await fromMenu(page, text.bar.openDemo);
      await expect.poll(() => name(page)).not.toBe(copy);

      const dialog = page.getByRole('dialog');
      const deleted = dialog.getByRole('region', { name: keeping.projects.deleted });
      await fromMenu(page, keeping.projects.open);
      await expect.poll(() => deleted.textContent()).toContain(copy);
      await page.keyboard.press('Escape');

      await page.getByRole('button', { name: /^Undo/ }).first().click();
      await expect.poll(() => name(page)).toBe(copy);
      await result(page, 'met');
      await page.getByLabel(text.stack.seatHeight, { exact: true }).fill('0.16');
      await page.locator('.saving.saved').waitFor({ state: 'attached' });
      await fromMenu(page, keeping.projects.open);
      await expect.poll(() => dialog.locator('[data-project]').first().textContent()).toContain(copy);
      expect(await deleted.filter({ hasText: copy }).count()).toBe(0);
    }));

  it('about the gas is answered in the damper form', () =>
    onBench(async (page) => {
      await open(page);
      await pick(page, 'gas');
      await result(page, 'not-yet');
      expect(await said(page)).toMatch(/now [−-]\d\.\d bar, too little/);
      const group = page.locator('details').filter({ hasText: text.damper.groups.gas }).last();
      await group.locator('> summary').click();
      await group.getByRole('textbox').first().fill('10');
      await result(page, 'met');
    }));

  it('follows the theory of the bench, and does not count what the charts do not reach', () =>
    onBench(async (page) => {
      await open(page);
      await pick(page, 'face');
      await cell(page, 0, 'thickness_mm').fill('0.25');
      await result(page, 'met');
      await page.getByRole('button', { name: text.theoryShort['small-deflection'] }).click();
      await result(page, 'met');
      await page.getByLabel(text.chart.upTo, { exact: true }).fill('0.2');
      await result(page, 'not-yet');
      expect(await said(page)).toContain(words.noNumber['beyond-chart']);
    }));
});

describe('everyone', () => {
  it('walks through all lessons by keyboard, and every one begins unanswered', () =>
    onBench(async (page) => {
      await page.locator('#lessons-button').focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => focusedId(page)).toBe('lessons-title');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      for (const [n, lesson] of Object.values(words.lessons).entries()) {
        await expect.poll(() => title(page)).toBe(lesson.title);
        await expect.poll(() => focusedId(page)).toBe('lessons-title');
        await result(page, 'not-yet');
        expect(await said(page)).toContain(words.nothingStrayed);
        if (n === Object.keys(words.lessons).length - 1) break;
        await button(page, words.next).focus();
        await page.keyboard.press('Enter');
      }
      expect(await button(page, words.next).isDisabled()).toBe(true);
      await button(page, words.leave).focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => title(page)).toBe(words.title);
      await button(page, words.close).focus();
      await page.keyboard.press('Enter');
      expect(await focusedId(page)).toBe('lessons-button');
    }));

  it('rests when the lesson is undone, and goes on when it is redone', () =>
    onBench(async (page) => {
      const before = await name(page);
      await open(page);
      await pick(page, 'clamp');
      await result(page, 'not-yet');
      await page
        .getByRole('button', { name: /^Undo: / })
        .first()
        .click();
      await expect.poll(() => title(page)).toBe(words.title);
      expect(await name(page)).toBe(before);
      await page
        .getByRole('button', { name: /^Redo: / })
        .first()
        .click();
      await expect.poll(() => title(page)).toBe(words.lessons.clamp.title);
      await result(page, 'not-yet');
    }));

  it.each(SCREENS)(
    'meets no barrier that axe-core knows, and nothing hangs over, at %i pixels (%s)',
    (width, colorScheme) =>
      onBench(
        async (page) => {
          await open(page);
          expect(await barriers(page)).toEqual([]);
          await pick(page, 'crossover');
          await result(page, 'not-yet');
          await settled(page);
          expect(await barriers(page)).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        },
        { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
      ),
  );

  it('keeps the charts clear of the panel on a wide screen, and the upper half of a phone', () =>
    onBench(async (page) => {
      const box = async (selector: string) => {
        const found = await page.locator(selector).first().boundingBox();
        if (!found) throw new Error(`${selector} is not on the page`);
        return found;
      };
      await open(page);
      await pick(page, 'face');
      await settled(page);
      const panel = await box('.lessons');
      for (const view of ['.charts', '.section', '.stack'])
        expect((await box(view)).x).toBeGreaterThanOrEqual(panel.x + panel.width);
      expect((await box('.builds')).y).toBeGreaterThanOrEqual(panel.y + panel.height);
      await page.setViewportSize({ width: 390, height: 800 });
      const drawer = await box('.lessons');
      expect(drawer.y).toBeGreaterThanOrEqual(400);
      expect(drawer.y + drawer.height).toBeCloseTo(800, 0);
      await button(page, words.less).click();
      const folded = await box('.lessons');
      expect(folded.height).toBeLessThan(drawer.height);
      expect(await page.locator('.lesson-result').isVisible()).toBe(true);
      expect(await page.locator('.lesson-steps').isVisible()).toBe(false);
      await button(page, words.more).click();
      expect(await page.locator('.lesson-steps').isVisible()).toBe(true);
    }));
});
