/** What the tests of kept work do again and again: look into the storage of the page, open a second tab, kill one. */
import type { Page } from 'playwright-core';
import { benchAddress, withPage } from './harness.ts';

/**
 * A page of the same origin on which no program runs: the place to prepare storage, and to look on while tabs are killed.
 * It has no icon of its own, so the browser asks for one that is not there.
 */
export const onQuietPage = (test: (page: Page) => Promise<void>): Promise<void> =>
  withPage(test, {
    path: 'mark.svg',
    viewport: { width: 1440, height: 900 },
    expected: [/status of 404/, /favicon\.ico/],
  });

export const openBench = async (page: Page, fragment = '', address = benchAddress()): Promise<void> => {
  await page.goto(address + fragment);
  await page.locator('svg[data-state=bent]').waitFor();
};

/** Another tab of the same browser, with the bench open. */
export async function secondTab(
  page: Page,
  prepare?: (page: Page) => Promise<void>,
  address = benchAddress(),
): Promise<Page> {
  const tab = await page.context().newPage();
  tab.setDefaultTimeout(30_000);
  await prepare?.(tab);
  await openBench(tab, '', address);
  return tab;
}

export interface Kept {
  readonly projects: { id: string; name: string; revision: number; head: number; deletedAt?: number }[];
  readonly texts: { project: string; revision: number; projectText: string }[];
  readonly aside: { projectText: string }[];
}

/** Everything in the storage of the bench. */
export const storedIn = (page: Page): Promise<Kept> =>
  page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await asked(indexedDB.open('shimwright'));
    const read = db.transaction(['projects', 'texts', 'aside']);
    const [projects, keys, texts, aside] = await Promise.all([
      asked(read.objectStore('projects').getAll()),
      asked(read.objectStore('texts').getAllKeys()) as unknown as Promise<[string, number][]>,
      asked(read.objectStore('texts').getAll()),
      asked(read.objectStore('aside').getAll()),
    ]);
    db.close();
    const named = keys.map(([project, revision], i) => ({ project, revision, projectText: texts[i] }));
    return { projects, texts: named, aside };
  });

/** The text that the head of the only project points at. */
export async function newestText(page: Page): Promise<string> {
  const { projects, texts } = await storedIn(page);
  const [{ id, head }] = projects;
  return texts.find(({ project, revision }) => project === id && revision === head)?.projectText ?? '';
}

/** Puts a text in the place of the newest state of the only project. */
export async function spoil(page: Page, content: string): Promise<void> {
  const [{ id, head }] = (await storedIn(page)).projects;
  await page.evaluate(
    ([key, spoilt]) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('shimwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const write = open.result.transaction('texts', 'readwrite');
          write.objectStore('texts').put(spoilt, key);
          write.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    [[id, head], content] as [(string | number)[], string],
  );
}

/** Ends the process of the page, as a crash or a power cut does: nothing of the page runs any more. */
export async function kill(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  // The answer never comes.
  void session.send('Page.crash').catch(() => undefined);
  await crashed;
}

/** The number of the first shim row of the second build in a project text: the cell that the tests type into. */
export const countIn = (projectText: string): number =>
  JSON.parse(projectText).builds[1].valves.pistonCompression.shims[0].count;
