import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { recordWords } from '../../src/ui/text/record.ts';
import { barriers, cell, kept } from './bench-page.ts';
import { onFork } from './fork-page.ts';
import { addPhoto, go, openRecord } from './record-page.ts';

const words = recordWords.photos;

/** How much there is of every store that photos use, and the text saved last. */
const stored = (page: Page): Promise<{ photos: { caption: string }[]; pictures: string[] }> =>
  page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('shimwright'));
    const read = db.transaction(['photos', 'pictures']);
    const [photos, pictures] = await Promise.all([
      asked<{ caption: string }[]>(read.objectStore('photos').getAll()),
      asked(read.objectStore('pictures').getAllKeys()) as Promise<string[]>,
    ]);
    db.close();
    return { photos, pictures };
  });

/** Changes what is kept behind the back of the page. */
const change = (page: Page, what: 'lose-pictures' | 'age-deleted'): Promise<void> =>
  page.evaluate(
    (wanted) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('shimwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const write = open.result.transaction(['photos', 'pictures'], 'readwrite');
          if (wanted === 'lose-pictures') write.objectStore('pictures').clear();
          const every = write.objectStore('photos').openCursor();
          every.onsuccess = () => {
            const cursor = every.result;
            if (!cursor) return;
            if (wanted === 'age-deleted' && cursor.value.deletedAt) cursor.update({ ...cursor.value, deletedAt: 1 });
            cursor.continue();
          };
          write.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    what,
  );

/** From here on nothing fits into a store, until `hasRoom` is set. */
const fillUp = (page: Page, store: 'photos' | 'pictures'): Promise<void> =>
  page.evaluate((full) => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
      if (this.name !== full || 'hasRoom' in document.documentElement.dataset) return put.apply(this, args);
      throw new DOMException('no room', 'QuotaExceededError');
    };
  }, store);

const onOil = (test: (page: Page) => Promise<void>): Promise<void> =>
  onFork(async (page) => {
    await openRecord(page);
    await go(page, 'oil');
    await addPhoto(page);
    await page.getByLabel(words.caption(1)).fill('grey, metal in it');
    await test(page);
  });

describe('photos without room', () => {
  it.each(['photos', 'pictures'] as const)('are told (%s), leave no half behind, and all else is kept', (store) =>
    onOil(async (page) => {
      await fillUp(page, store);
      await addPhoto(page);
      await page.getByText(words.full).waitFor();
      expect(await page.locator('.photo').count()).toBe(1);
      const after = await stored(page);
      expect(after.photos.map(({ caption }) => caption)).toEqual(['grey, metal in it']);
      expect(after.pictures).toHaveLength(1);
      // The work on the project goes on being kept.
      await page.evaluate(() => {
        location.hash = '';
      });
      await cell(page, 0, 'count').fill('5');
      await kept(page);
      expect(await page.locator('[data-bar=trouble]').count()).toBe(0);
      await openRecord(page);
      await go(page, 'oil');
      await page.evaluate(() => {
        document.documentElement.dataset.hasRoom = '';
      });
      await addPhoto(page);
      await expect.poll(() => page.locator('.photo').count()).toBe(2);
      expect((await stored(page)).pictures).toHaveLength(2);
    }),
  );
});

describe('pictures that the browser has cleared', () => {
  it('are told in their place; captions and facts stay, and what is left can be deleted', () =>
    onOil(async (page) => {
      await kept(page);
      await change(page, 'lose-pictures');
      await page.reload();
      await page.getByRole('heading', { level: 1, name: recordWords.title }).waitFor();
      await go(page, 'oil');
      await page.locator('.photo .photo-gone').waitFor();
      expect(await page.locator('.photo .photo-gone').textContent()).toBe(words.gone);
      expect(await page.getByLabel(words.caption(1)).inputValue()).toBe('grey, metal in it');
      expect(await barriers(page, '.photos')).toEqual([]);
      await addPhoto(page);
      await page.getByRole('button', { name: words.remove(1) }).click();
      await expect.poll(() => page.locator('.photo-gone').count()).toBe(0);
      expect(await page.locator('.photo img[src^="blob:"]').count()).toBe(1);
    }));

  it('of photos deleted a day ago go with them at the next start, and no others do', () =>
    onOil(async (page) => {
      await addPhoto(page);
      await page.getByRole('button', { name: words.remove(2) }).click();
      await expect.poll(() => page.locator('.photo').count()).toBe(1);
      await page.reload();
      await page.getByRole('heading', { level: 1, name: recordWords.title }).waitFor();
      // It can still be taken back until then.
      expect((await stored(page)).pictures).toHaveLength(2);
      await change(page, 'age-deleted');
      await page.reload();
      await page.getByRole('heading', { level: 1, name: recordWords.title }).waitFor();
      await expect.poll(async () => (await stored(page)).pictures.length).toBe(1);
      expect((await stored(page)).photos.map(({ caption }) => caption)).toEqual(['grey, metal in it']);
    }));
});
