import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, drop, onBench, SCREENS } from './bench-page.ts';

const BROKEN = '{"format":"shimwright/project","version":1,"damper":5}';
const info = (page: Page) => page.locator('.notice.info');
const problem = (page: Page) => page.locator('.notice.problem');
const MINUTES = 60_000;

/** A message of what went well. */
async function copyList(page: Page): Promise<void> {
  await page.getByRole('button', { name: text.stack.copy, exact: true }).click();
  await info(page).waitFor();
}

const menuItem = (page: Page, name: string) => page.locator('#bar-menu').getByRole('button', { name, exact: true });

/** How much of the page lies beneath the messages at the very end of it [px]. */
const coveredAtEnd = (page: Page): Promise<number> =>
  page.evaluate(() => {
    window.scrollTo(0, document.documentElement.scrollHeight);
    const last = Math.max(...[...document.querySelectorAll('main > *')].map((e) => e.getBoundingClientRect().bottom));
    return last - (document.querySelector('.notices')?.getBoundingClientRect().top ?? 0);
  });

describe('a message', () => {
  it('of what went well goes by, and is not lost; a problem stays until it is dismissed', () =>
    onBench(
      async (page) => {
        await page.clock.install();
        await drop(page, 'gravel-road.json', BROKEN);
        await problem(page).waitFor();
        await copyList(page);
        const said = await info(page).textContent();
        await page.mouse.move(5, 5);
        await page.clock.runFor(2 * MINUTES);
        await expect.poll(() => info(page).count()).toBe(0);
        expect(await problem(page).textContent()).toContain(text.notices.notOpened('gravel-road.json'));
        await page.locator('#bar-menu-button').click();
        await menuItem(page, text.notices.again(1)).click();
        await expect.poll(() => info(page).textContent()).toBe(said);
        await page.clock.runFor(2 * MINUTES);
        expect(await info(page).count()).toBe(1);
        await problem(page).getByRole('button', { name: text.notices.dismiss }).click();
        await expect.poll(() => problem(page).count()).toBe(0);
      },
      { permissions: ['clipboard-write', 'clipboard-read'] },
    ));

  it('waits while the pointer or the keyboard is at it', () =>
    onBench(
      async (page) => {
        await page.clock.install();
        await copyList(page);
        await info(page).getByRole('button', { name: text.notices.dismiss }).focus();
        await page.clock.runFor(2 * MINUTES);
        expect(await info(page).count()).toBe(1);
        await page.locator('#bar-menu-button').focus();
        await page.mouse.move(5, 5);
        await page.clock.runFor(2 * MINUTES);
        await expect.poll(() => info(page).count()).toBe(0);
      },
      { permissions: ['clipboard-write', 'clipboard-read'] },
    ));

  it('leaves the page where it is, however far from what has the keyboard', () =>
    onBench(
      async (page) => {
        const far = page.locator('[data-cell$=":count"]').first();
        await far.focus();
        const before = await page.evaluate(() => {
          window.scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' });
          return window.scrollY;
        });
        expect(await far.evaluate((box) => box.getBoundingClientRect().bottom)).toBeLessThan(0);
        await drop(page, 'gravel-road.json', BROKEN);
        await problem(page).waitFor();
        await expect.poll(() => page.evaluate(() => getComputedStyle(document.body).paddingBottom)).not.toBe('0px');
        expect(await page.evaluate(() => window.scrollY)).toBe(before);
      },
      { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' },
    ));

  it.each(SCREENS)(
    'covers nothing that cannot be scrolled out, nor what has the keyboard, at %i (%s)',
    (width, colorScheme) =>
      onBench(
        async (page) => {
          // The last thing above the lower edge has the keyboard when the message comes.
          const row = page.locator('[data-cell$=":count"]').last();
          await row.evaluate((box) => {
            box.scrollIntoView({ block: 'end' });
            (box as HTMLElement).focus({ preventScroll: true });
          });
          await drop(page, 'gravel-road.json', BROKEN);
          await problem(page).waitFor();
          const top = () => page.locator('.notices').evaluate((list) => list.getBoundingClientRect().top);
          await expect
            .poll(async () => (await row.evaluate((box) => box.getBoundingClientRect().bottom)) - (await top()) < 1)
            .toBe(true);
          expect(await coveredAtEnd(page)).toBeLessThanOrEqual(0);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
          expect(await top()).toBeGreaterThanOrEqual(0.66 * 900);
          expect(await barriers(page)).toEqual([]);
          await problem(page).getByRole('button', { name: text.notices.dismiss }).click();
          await expect.poll(() => page.evaluate(() => getComputedStyle(document.body).paddingBottom)).toBe('0px');
        },
        { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
      ),
  );
});
