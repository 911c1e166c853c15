import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { lessonsWords } from '../../src/ui/text/lessons.ts';
import { pageWords as words } from '../../src/ui/text/pages.ts';
import { barriers, cell, fromMenu, onBench, SCREENS } from './bench-page.ts';

const { bench, proof } = words.pages;
const follow = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: words.nav }).getByRole('link', { name, exact: true }).click();
const here = (page: Page): Promise<string | null> => page.locator('.pages [aria-current=page]').textContent();
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.id || document.activeElement?.textContent || '');
const menu = (page: Page) => page.locator('#bar-menu-button');
const sheet = (page: Page) => page.locator('#bar-menu');
const project = (page: Page) => page.getByLabel(text.bar.projectName, { exact: true });

describe('the pages', () => {
  it('are followed by links, with title, heading and the place on each', () =>
    onBench(async (page) => {
      const name = await project(page).inputValue();
      expect([await page.title(), await here(page)]).toEqual([words.title(name, text.appName), bench.name]);
      await page.evaluate(() => scrollTo(0, 300));
      await expect.poll(() => page.evaluate(() => scrollY)).toBe(300);
      await follow(page, proof.name);
      await page.getByRole('heading', { level: 1, name: proof.name }).waitFor();
      expect(await focused(page)).toBe(proof.name);
      expect([await page.title(), await here(page)]).toEqual([words.title(proof.name, text.appName), proof.name]);
      expect(await page.evaluate(() => scrollY)).toBe(0);
      await page.goBack();
      await page.getByRole('heading', { level: 1, name: bench.name }).waitFor();
      expect([await focused(page), await here(page)]).toEqual([bench.name, bench.name]);
      await expect.poll(() => page.evaluate(() => scrollY)).toBe(300);
    }));

  it('have one first heading each, and the bench takes no focus when it is the first to open', () =>
    onBench(async (page) => {
      expect(await page.getByRole('heading', { level: 1 }).allTextContents()).toEqual([bench.name]);
      expect(await page.evaluate(() => document.activeElement === document.body)).toBe(true);
      await follow(page, proof.name);
      await page.getByRole('heading', { level: 1, name: proof.name }).waitFor();
      expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    }));

  it('tell the project by the title of the tab', () =>
    onBench(async (page) => {
      await project(page).fill('Heron fork (invented)');
      await expect.poll(() => page.title()).toBe(words.title('Heron fork (invented)', text.appName));
      await project(page).fill('');
      await expect.poll(() => page.title()).toBe(words.title(text.bar.unnamed, text.appName));
    }));

  it.each([
    ['', bench.skip, 'stack'],
    ['#proof', proof.skip, 'proof-list'],
  ])('begin with a way past the bar (%s)', (fragment, name, place) =>
    onBench(async (page) => {
      await page.evaluate((hash) => {
        location.hash = hash;
      }, fragment);
      await page.locator(`#${place}`).waitFor();
      await page.evaluate(() => (document.activeElement as HTMLElement).blur());
      await page.getByRole('button', { name }).focus();
      await page.keyboard.press('Enter');
      expect(await focused(page)).toBe(place);
      expect(await page.evaluate(() => location.hash)).toBe(fragment);
    }),
  );
});

describe('the bar', () => {
  it('unfolds a menu that Escape, the way out by Tab and a press elsewhere fold again', () =>
    onBench(async (page) => {
      await menu(page).focus();
      await page.keyboard.press('Enter');
      expect(await menu(page).getAttribute('aria-expanded')).toBe('true');
      await page.keyboard.press('Tab');
      expect(await sheet(page).evaluate((each) => each.contains(document.activeElement))).toBe(true);
      await page.keyboard.press('Escape');
      expect([await sheet(page).count(), await focused(page)]).toEqual([0, 'bar-menu-button']);
      await page.keyboard.press('Enter');
      await page.keyboard.press('Shift+Tab');
      expect(await sheet(page).count()).toBe(0);
      await menu(page).click();
      await page.getByRole('main').click({ position: { x: 2, y: 2 } });
      expect(await sheet(page).count()).toBe(0);
    }));

  it.each([1440, 1280, 1024, 900, 768, 390])('is one row and hides nothing that it cannot unfold, at %i', (width) =>
    onBench(
      async (page) => {
        const { height } = (await page.locator('.bar').boundingBox()) ?? { height: 0 };
        expect(height).toBeLessThan(60);
        expect(await page.locator('.bar').evaluate((bar) => bar.scrollWidth - bar.clientWidth)).toBe(0);
        await cell(page, 0, 'count').fill('2');
        const undo = page.locator('.bar .icon').first();
        await expect.poll(() => undo.isEnabled()).toBe(true);
        expect(await page.locator('.bar .saving').isVisible()).toBe(true);
        await menu(page).click();
        for (const name of [bench.name, proof.name])
          expect(await page.getByRole('link', { name, exact: true }).isVisible()).toBe(true);
        for (const name of [text.bar.openFile, text.bar.saveFile, lessonsWords.button, text.bar.familyLong.imperial])
          expect(await page.getByRole('button', { name, exact: true }).isVisible()).toBe(true);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        expect(await barriers(page, '.bar')).toEqual([]);
      },
      { viewport: { width, height: 900 } },
    ),
  );

  it('leads to another page and to the lessons out of its menu on a phone, and the keyboard comes along', () =>
    onBench(
      async (page) => {
        await fromMenu(page, lessonsWords.button);
        await expect.poll(() => focused(page)).toBe('lessons-title');
        await page.getByRole('button', { name: lessonsWords.close }).click();
        expect(await focused(page)).toBe('bar-menu-button');
        await menu(page).click();
        await follow(page, proof.name);
        await page.getByRole('heading', { level: 1, name: proof.name }).waitFor();
        expect([await sheet(page).count(), await focused(page)]).toEqual([0, proof.name]);
        await menu(page).click();
        await follow(page, bench.name);
        await page.locator('svg[data-state=bent]').waitFor();
      },
      { viewport: { width: 390, height: 844 } },
    ));

  it.each(SCREENS.filter(([width]) => width < 1440))(
    'has large targets under a finger at %i (%s)',
    (width, colorScheme) =>
      onBench(
        async (page) => {
          await menu(page).click();
          const small = await page.locator('.bar button, .bar a, .bar input').evaluateAll((all) =>
            all
              .filter((each) => each.getClientRects().length > 0)
              .map((each) => ({ of: each.outerHTML.slice(0, 80), ...each.getBoundingClientRect().toJSON() }))
              .filter(({ width: wide, height }) => wide < 44 || height < 44),
          );
          expect(small).toEqual([]);
        },
        { viewport: { width, height: 844 }, colorScheme, hasTouch: true, isMobile: true },
      ),
  );
});
