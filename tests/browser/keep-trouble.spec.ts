import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { keeping } from '../../src/ui/text/keeping.ts';
import { cell, force, kept, onBench, settled } from './bench-page.ts';
import { countIn, newestText, secondTab } from './keep-page.ts';

const bar = (page: Page) => page.locator('[data-bar=trouble]');
const button = (page: Page, name: string) => bar(page).getByRole('button', { name });
const setCount = (page: Page, value: string): Promise<void> => cell(page, 0, 'count').fill(value);

/** The copy that the bar offers. */
async function downloadedCopy(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await button(page, keeping.trouble.download).click();
  const copy = join(mkdtempSync(join(tmpdir(), 'shimwright-')), 'copy.json');
  await (await download).saveAs(copy);
  return readFileSync(copy, 'utf8');
}

describe('storage that does not work', () => {
  it.each<[string, () => void]>([
    ['is not there', () => Object.defineProperty(globalThis, 'indexedDB', { value: undefined })],
    [
      'is forbidden',
      () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('The user denied permission to access the database.', 'SecurityError');
        };
      },
    ],
  ])('%s: told at once, the bench works on, and a copy can be had', (_, breakStorage) =>
    onBench(async (page) => {
      await page.addInitScript(breakStorage);
      await page.reload();
      await settled(page);
      expect(await bar(page).textContent()).toContain(keeping.trouble.missing);
      const before = await force(page);
      await cell(page, 0, 'thickness_mm').fill('0.4');
      await setCount(page, '4');
      await expect.poll(() => force(page)).not.toBe(before);
      await page.locator('.saving.failed').waitFor({ state: 'attached' });
      expect(countIn(await downloadedCopy(page))).toBe(4);
    }),
  );

  it('is full: told, nothing kept is lost, and trying again keeps the work once there is room', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      await page.evaluate(() => {
        const put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
          if ('hasRoom' in document.documentElement.dataset) return put.apply(this, args);
          throw new DOMException('no room', 'QuotaExceededError');
        };
      });
      await setCount(page, '5');
      await bar(page).waitFor();
      expect(await bar(page).textContent()).toContain(keeping.trouble.full);
      expect(countIn(await newestText(page))).toBe(2);
      expect(countIn(await downloadedCopy(page))).toBe(5);
      await button(page, keeping.trouble.retry).click();
      expect(countIn(await newestText(page))).toBe(2);
      await page.evaluate(() => {
        document.documentElement.dataset.hasRoom = '';
      });
      await button(page, keeping.trouble.retry).click();
      await bar(page).waitFor({ state: 'detached' });
      expect(countIn(await newestText(page))).toBe(5);
    }));

  it('that works again is told by trying again, before anything was edited', () =>
    onBench(async (page) => {
      await page.addInitScript(() => {
        const open = IDBFactory.prototype.open;
        IDBFactory.prototype.open = function (this: IDBFactory, ...args: [string, number?]) {
          if ('works' in document.documentElement.dataset) return open.apply(this, args);
          throw new DOMException('The user denied permission to access the database.', 'SecurityError');
        };
      });
      await page.reload();
      await settled(page);
      await button(page, keeping.trouble.retry).click();
      await bar(page).waitFor();
      await page.evaluate(() => {
        document.documentElement.dataset.works = '';
      });
      await button(page, keeping.trouble.retry).click();
      await bar(page).waitFor({ state: 'detached' });
      await setCount(page, '4');
      await kept(page);
      expect(countIn(await newestText(page))).toBe(4);
    }));

  it('fails in the middle of a save: the whole save is given up, and told', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      await page.evaluate(() => {
        const put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
          const request = put.apply(this, args);
          if (this.name === 'projects') this.transaction.abort();
          return request;
        };
      });
      await setCount(page, '5');
      await bar(page).waitFor();
      expect(await bar(page).textContent()).toContain(keeping.trouble.failed);
      expect(countIn(await newestText(page))).toBe(2);
    }));

  it('a newer database: the older tab closes its own, says so, and keeps nothing any more', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const newer = await page.context().newPage();
      await newer.goto(new URL('mark.svg', page.url()).href);
      const version = await newer.evaluate(
        () =>
          new Promise<number>((resolve, reject) => {
            const open = indexedDB.open('shimwright', 99);
            open.onerror = () => reject(open.error);
            open.onsuccess = () => {
              resolve(open.result.version);
              open.result.close();
            };
          }),
      );
      expect(version).toBe(99);
      await bar(page).waitFor();
      expect(await bar(page).textContent()).toContain(keeping.trouble.outdated);
      await setCount(page, '6');
      await page.locator('.saving.failed').waitFor({ state: 'attached' });
      expect(countIn(await downloadedCopy(page))).toBe(6);
      expect(countIn(await newestText(page))).toBe(2);
    }));

  it('trouble in one tab is no trouble in another', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page, async (tab) => {
        await tab.addInitScript(() => Object.defineProperty(globalThis, 'indexedDB', { value: undefined }));
      });
      await bar(second).waitFor();
      expect(await bar(page).count()).toBe(0);
      await setCount(page, '3');
      await kept(page);
      expect(countIn(await newestText(page))).toBe(3);
    }));
});
