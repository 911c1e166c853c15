import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { cell, demoText, force, kept, onBench, settled } from './bench-page.ts';
import { benchAddress } from './harness.ts';
import { countIn, kill, newestText, onQuietPage, openBench, secondTab, spoil, storedIn } from './keep-page.ts';

const problem = (page: Page) => page.locator('.notice.problem');
const count = (page: Page): Promise<string> => cell(page, 0, 'count').inputValue();
const setCount = (page: Page, value: string): Promise<void> => cell(page, 0, 'count').fill(value);

describe('work kept on this machine', () => {
  it('a save that cannot be read is kept aside; the one before it opens, and the person is told', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      await setCount(page, '3');
      await kept(page);
      await spoil(page, '{"half a');
      await page.reload();
      await settled(page);
      expect(await problem(page).textContent()).toContain(text.notices.keptAsideOlder);
      expect(await count(page)).toBe('2');
      await setCount(page, '4');
      await kept(page);
      expect((await storedIn(page)).aside.map(({ projectText }) => projectText)).toEqual(['{"half a']);
      expect(countIn(await newestText(page))).toBe(4);
    }));

  it('when none can be read, the demo opens and the saved text is still there', () =>
    onBench(async (page) => {
      const demo = await force(page);
      await cell(page, 0, 'thickness_mm').fill('0.4');
      await kept(page);
      await spoil(page, '[]');
      await page.reload();
      await settled(page);
      expect(await problem(page).textContent()).toContain(text.notices.keptAside);
      expect(await force(page)).toBe(demo);
      expect((await storedIn(page)).aside.map(({ projectText }) => projectText)).toEqual(['[]']);
    }));

  it('a page that closes at once after an edit has kept it', () =>
    onBench(async (page) => {
      await setCount(page, '5');
      await page.reload();
      await settled(page);
      expect(await count(page)).toBe('5');
      await kept(page);
      expect(countIn(await newestText(page))).toBe(5);
      expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('leaving')))).toEqual([]);
    }));

  it('typing without a pause is kept meanwhile', () =>
    onBench(async (page) => {
      // 40 edits, 60 ms apart: never quiet long enough for the pause after an edit.
      await cell(page, 0, 'count').evaluate(async (input: HTMLInputElement) => {
        for (let i = 0; i < 40; i++) {
          input.value = String((i % 9) + 1);
          input.dispatchEvent(new InputEvent('input', { bubbles: true }));
          await new Promise((next) => setTimeout(next, 60));
        }
      });
      expect((await storedIn(page)).texts.length).toBeGreaterThan(1);
    }));
});

/** Every save from now on stays half done: its requests are through, but the whole is never brought to an end. */
const holdSavesOpen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...args: [unknown, IDBValidKey?]) {
      const request = put.apply(this, args);
      const again = (): void => {
        this.count().onsuccess = again;
      };
      request.addEventListener('success', () => {
        document.documentElement.dataset.halfSaved = this.name;
        again();
      });
      return request;
    };
  });

describe('a tab that dies', () => {
  it('during a save leaves the last whole state, and nothing of the half one', () =>
    onQuietPage(async (page) => {
      const tab = await secondTab(page);
      await setCount(tab, '2');
      await kept(tab);
      await holdSavesOpen(tab);
      await setCount(tab, '7');
      await tab.locator('html[data-half-saved]').waitFor();
      await kill(tab);
      const after = await secondTab(page);
      expect(await count(after)).toBe('2');
      expect(countIn(await newestText(after))).toBe(2);
      expect((await storedIn(after)).texts.map(({ projectText }) => countIn(projectText))).not.toContain(7);
      expect(await problem(after).count()).toBe(0);
      await setCount(after, '6');
      await kept(after);
      expect(countIn(await newestText(after))).toBe(6);
    }));

  it('at any moment of editing leaves a whole state, no older than the last one said to be kept', () =>
    onQuietPage(async (page) => {
      let tab = await secondTab(page);
      for (let round = 0; round < 6; round++) {
        const [said, typed] = [round + 2, round + 3];
        await setCount(tab, `${said}`);
        await kept(tab);
        await setCount(tab, `${typed}`);
        await tab.evaluate((wait) => new Promise((next) => setTimeout(next, wait)), 210 + 20 * round);
        await kill(tab);
        tab = await secondTab(page);
        expect([said, typed].map(String)).toContain(await count(tab));
        expect(countIn(await newestText(tab))).toBe(Number(await count(tab)));
        expect(await problem(tab).count()).toBe(0);
      }
    }));
});

/** The database as version 1 left it: saves by number, the newest of them, and what could not be read. */
const prepareFirstVersion = (page: Page, saves: Record<number, string>, head: number): Promise<void> =>
  page.evaluate(
    ([saved, newest]) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('shimwright', 1);
        open.onerror = () => reject(open.error);
        open.onupgradeneeded = () => {
          for (const store of ['saves', 'head', 'aside']) open.result.createObjectStore(store);
        };
        open.onsuccess = () => {
          const write = open.result.transaction(['saves', 'head', 'aside'], 'readwrite');
          for (const [key, value] of Object.entries(saved)) write.objectStore('saves').put(value, Number(key));
          write.objectStore('head').put(newest, 'project');
          write.objectStore('aside').put('{"unreadable', 1_700_000_000_000);
          write.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    [saves, head] as const,
  );

const demoWith = (count: number): string => {
  const project = JSON.parse(demoText());
  project.builds[1].valves.pistonCompression.shims[0].count = count;
  return JSON.stringify(project);
};

describe('what version 1 kept', () => {
  it('becomes one project with all its states; nothing is lost', () =>
    onQuietPage(async (page) => {
      const saves = { 1750000000001: demoWith(2), 1750000000002: demoWith(3), 1750000000003: demoWith(4) };
      await prepareFirstVersion(page, saves, 1_750_000_000_003);
      await openBench(page);
      expect(await count(page)).toBe('4');
      const { projects, texts, aside } = await storedIn(page);
      expect(projects).toHaveLength(1);
      expect(projects[0].name).toBe(JSON.parse(demoText()).name);
      expect(texts.map(({ projectText }) => projectText)).toEqual(Object.values(saves));
      expect(aside.map(({ projectText }) => projectText)).toEqual(['{"unreadable']);
      await setCount(page, '5');
      await kept(page);
      expect(countIn(await newestText(page))).toBe(5);
    }));

  it('and what its closing page had left is taken up', () =>
    onQuietPage(async (page) => {
      await prepareFirstVersion(page, { 1750000000001: demoWith(2) }, 1_750_000_000_001);
      await page.evaluate((left) => localStorage.setItem('shimwright.leaving.old', left), demoWith(8));
      await openBench(page);
      expect(await count(page)).toBe('8');
      expect(await page.evaluate(() => localStorage.getItem('shimwright.leaving.old'))).toBeNull();
    }));

  it('is not touched while a tab of version 1 still holds it: the person is told', () =>
    onQuietPage(async (page) => {
      await prepareFirstVersion(page, { 1750000000001: demoWith(2) }, 1_750_000_000_001);
      await page.evaluate(
        () =>
          new Promise<void>((resolve) => {
            const open = indexedDB.open('shimwright', 1);
            open.onsuccess = () => {
              Object.assign(globalThis, { held: open.result });
              resolve();
            };
          }),
      );
      const tab = await page.context().newPage();
      await tab.goto(benchAddress());
      await tab.locator('[data-bar=trouble]').waitFor();
      expect(await tab.locator('[data-bar=trouble]').textContent()).toContain(keeping.trouble.blocked);
      await page.evaluate(() => (globalThis as unknown as { held: IDBDatabase }).held.close());
      await openBench(tab);
      expect(await count(tab)).toBe('2');
    }));
});
