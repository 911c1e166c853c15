import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { proofWords as words } from '../../src/ui/text/proof.ts';
import { barriers, ENDS, onBench } from './bench-page.ts';
import { button, caseRow, FEM, onProof, openProof, phase, QUANTITIES, STORED, textOf } from './proof-page.ts';

describe('results as files', () => {
  it('are a table with a line for every quantity, and JSON that says where and when', () =>
    onProof(async (page) => {
      const table = page.waitForEvent('download');
      await button(page, words.run.csv).click();
      const csv = await textOf(await table);
      expect((await table).suggestedFilename()).toBe('shimwright-proof.csv');
      expect(csv.split('\r\n')).toHaveLength(QUANTITIES + 2);
      expect(csv).toMatch(/^\ufeffcase,field,kind/);
      const whole = page.waitForEvent('download');
      await button(page, words.run.json).click();
      const json = JSON.parse(await textOf(await whole));
      expect(json).toMatchObject({ format: 'shimwright/proof', casesInAll: STORED.length, casesRun: STORED.length });
      expect(json.browser).toBe(await page.evaluate(() => navigator.userAgent));
    }));
});

describe('everyone', () => {
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');
  async function tabTo(page: Page, name: string): Promise<void> {
    for (let presses = 0; presses < 60; presses++) {
      if ((await focused(page)) === name) return;
      await page.keyboard.press('Tab');
    }
    throw new Error(`no way to ${name} by the Tab key`);
  }

  it('reaches, reads, opens and leaves the proof by keyboard alone', () =>
    onBench(async (page) => {
      await tabTo(page, pageWords.pages.proof.name);
      await page.keyboard.press('Enter');
      await phase(page, 'done');
      expect(await focused(page)).toBe(words.title);
      expect(await page.title()).toBe(pageWords.title(words.title, text.appName));
      await tabTo(page, words.fields.hydraulics);
      await page.keyboard.press('Enter');
      await tabTo(page, 'Sharp-edged hole: jet and creeping limit');
      await page.keyboard.press('Enter');
      const opener = caseRow(page, 'hydraulics/sharp-orifice').getByRole('button');
      expect(await opener.getAttribute('aria-expanded')).toBe('true');
      await page.keyboard.press('Tab');
      expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toContain('Sharp-edged');
      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Enter');
      expect(await opener.getAttribute('aria-expanded')).toBe('false');
      await page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).focus();
      await page.keyboard.press('Enter');
      await page.locator('svg[data-state=bent]').waitFor();
      expect(await focused(page)).toBe(pageWords.pages.bench.name);
    }));

  it('gets the results again after a look at the bench, without another run', () =>
    onProof(async (page) => {
      const when = await page.locator('.run-status .hint').textContent();
      await page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).click();
      await page.locator('svg[data-state=bent]').waitFor();
      await openProof(page);
      expect(await page.locator('.run-status .hint').textContent()).toBe(when);
    }));

  it('runs it without a network, after the first visit of the bench', () =>
    onBench(
      async (page) => {
        await page.evaluate(async () => {
          const { active } = await navigator.serviceWorker.ready;
          if (active?.state === 'activated') return;
          await new Promise((done) => active?.addEventListener('statechange', done, { once: true }));
        });
        await page.context().setOffline(true);
        await page.reload();
        await openProof(page);
        await phase(page, 'done');
        expect(await page.locator('.totals tfoot td').first().textContent()).toBe(String(STORED.length));
      },
      // The browser fetches the icon of a tab past the service worker.
      { serviceWorkers: 'allow', expected: [/mark\.svg net::ERR/, /console error: .*ERR_INTERNET_DISCONNECTED$/] },
    ));

  it.each(ENDS)(
    'meets no barrier that axe-core knows, and nothing hangs over, at %i pixels (%s)',
    (width, colorScheme) =>
      onProof(
        async (page) => {
          await page.getByText(words.kindsTitle).click();
          await caseRow(page, FEM).getByRole('button').click();
          await caseRow(page, 'plate/timoshenko-table-3-row-07-printed').getByRole('button').click();
          expect(await barriers(page)).toEqual([]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
          if (width > 1024) {
            const over = await page
              .locator('.scroller')
              .evaluateAll((all) => all.filter((each) => each.scrollWidth > each.clientWidth).length);
            expect(over).toBe(0);
          }
        },
        { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
      ),
  );

  it('prints the opened cases whole and no buttons', () =>
    onProof(async (page) => {
      await caseRow(page, FEM).getByRole('button').click();
      await page.emulateMedia({ media: 'print' });
      expect(await button(page, words.run.again).isVisible()).toBe(false);
      expect(await page.locator('.filter-bar').isVisible()).toBe(false);
      expect(await page.locator('.source').isVisible()).toBe(true);
      const overflow = await page.locator('.scroller').evaluate((each) => getComputedStyle(each).overflowX);
      expect(overflow).toBe('visible');
    }));
});
