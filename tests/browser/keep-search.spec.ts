import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { keeping } from '../../src/ui/text/keeping.ts';
import { demoText, fromMenu, kept, settled } from './bench-page.ts';
import { onQuietPage, openBench, storedIn } from './keep-page.ts';
import { begin, inPhase, onSearch, openSearch, setEffort } from './search-page.ts';

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

/** Projects that have a search, or a start of one, on this machine. */
const searched = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('shimwright'));
    const read = db.transaction(['searches', 'searchStarts']);
    const [searches, starts] = await Promise.all([
      asked<{ project: string }[]>(read.objectStore('searches').getAll()),
      asked<{ project: string }[]>(read.objectStore('searchStarts').getAll()),
    ]);
    db.close();
    return [...searches, ...starts].map(({ project }) => project);
  });

it('a search goes with its project when that is deleted for good, and not before', () =>
  onSearch(async (page) => {
    const words = keeping.projects;
    await setEffort(page, { starts: 2, steps: 5, seed: 1, cores: 1 });
    await kept(page);
    await begin(page);
    await inPhase(page, 'finished');
    await expect.poll(async () => (await searched(page)).length).toBe(3);
    const [id] = await searched(page);
    const { projects } = await storedIn(page);
    const name = projects.find((each) => each.id === id)?.name ?? '';
    await fromMenu(page, words.open);
    const act = (label: string) => page.getByRole('dialog').getByRole('button', { name: label, exact: true });
    await act(words.remove(name)).click();
    await act(words.forGood(name)).waitFor();
    expect((await searched(page)).length).toBe(3);
    await act(words.forGood(name)).click();
    await act(words.forGoodYes).click();
    await expect.poll(() => searched(page)).toEqual([]);
    expect((await storedIn(page)).projects.map((each) => each.id)).not.toContain(id);
  }));
