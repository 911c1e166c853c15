import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { demoText, settled } from './bench-page.ts';
import { onQuietPage, openBench, storedIn } from './keep-page.ts';
import { openSearch } from './search-page.ts';

/** The database as version 2 left it: one project with one state, and no search. */
const prepareSecondVersion = (page: Page, projectText: string): Promise<void> =>
  page.evaluate(
    (saved) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('shimwright', 2);
        open.onerror = () => reject(open.error);
        open.onupgradeneeded = () => {
          open.result.createObjectStore('projects', { keyPath: 'id' });
          open.result.createObjectStore('states', { keyPath: ['project', 'revision'] });
          open.result.createObjectStore('texts');
          open.result.createObjectStore('aside', { autoIncrement: true });
        };
        open.onsuccess = () => {
          const write = open.result.transaction(['projects', 'states', 'texts', 'aside'], 'readwrite');
          write
            .objectStore('projects')
            .put({ id: 'p', name: 'Old', revision: 1, head: 1, changedAt: 1_750_000_000_000 });
          write
            .objectStore('states')
            .put({ project: 'p', revision: 1, savedAt: 1_750_000_000_000, bytes: saved.length, note: '' });
          write.objectStore('texts').put(saved, ['p', 1]);
          write.objectStore('aside').put({ project: 'p', keptAt: 1_750_000_000_000, projectText: '{"unreadable' });
          write.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    projectText,
  );

it('work kept before there were searches is whole, and a search can be kept beside it', () =>
  onQuietPage(async (page) => {
    await prepareSecondVersion(page, demoText());
    await openBench(page);
    await settled(page);
    const { projects, texts, aside } = await storedIn(page);
    expect(projects.map(({ id }) => id)).toEqual(['p']);
    expect(texts).toEqual([{ project: 'p', revision: 1, projectText: demoText() }]);
    expect(aside.map(({ projectText }) => projectText)).toEqual(['{"unreadable']);
    await openSearch(page);
    await page.locator('.run-bar[data-phase=idle]').waitFor();
    expect(await page.locator('[data-bar=trouble]').count()).toBe(0);
  }));
