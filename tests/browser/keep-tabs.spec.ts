import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { cell, diameters, kept, onBench } from './bench-page.ts';
import { countIn, newestText, secondTab, storedIn } from './keep-page.ts';

const count = (page: Page): Promise<string> => cell(page, 0, 'count').inputValue();
const setCount = (page: Page, value: string): Promise<void> => cell(page, 0, 'count').fill(value);
const bar = (page: Page) => page.locator('[data-bar=access]');
const takeOver = (page: Page): Promise<void> =>
  bar(page).getByRole('button', { name: keeping.access.takeOver }).click();
const names = async (page: Page): Promise<string[]> => (await storedIn(page)).projects.map(({ name }) => name).sort();

describe('two tabs on one project', () => {
  it('the second says so, can only read, and follows the first', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page);
      await bar(second).waitFor();
      expect(await bar(second).textContent()).toContain(keeping.access.reading);
      expect(await bar(page).count()).toBe(0);
      await setCount(second, '9');
      await expect.poll(() => second.locator('.stack .fault').textContent()).toContain(keeping.access.refused);
      await second.keyboard.press('Escape');
      await second.getByRole('button', { name: text.stack.add }).click();
      expect(await second.locator('.notice.problem').textContent()).toContain(keeping.access.refused);
      expect(await diameters(second)).toEqual(await diameters(page));
      await setCount(page, '3');
      await kept(page);
      await expect.poll(() => count(second)).toBe('3');
      expect(countIn(await newestText(page))).toBe(3);
      expect(await storedIn(page)).toMatchObject({ projects: [{}] });
    }));

  it('taking over saves the edits of the other tab first; then that one can only read', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page);
      await bar(second).waitFor();
      await setCount(page, '4');
      await takeOver(second);
      await bar(page).waitFor();
      await bar(second).waitFor({ state: 'detached' });
      expect(await count(second)).toBe('4');
      await setCount(second, '5');
      await kept(second);
      await expect.poll(() => count(page)).toBe('5');
      await takeOver(page);
      await bar(second).waitFor();
      await bar(page).waitFor({ state: 'detached' });
      await setCount(page, '6');
      await kept(page);
      await expect.poll(() => count(second)).toBe('6');
      expect(await names(page)).toHaveLength(1);
      // What the other tab did is one step of undo, and the person's own steps lie before it.
      const undo = page.getByRole('button', { name: text.bar.undo(keeping.access.followed) });
      await page.keyboard.press('Control+z');
      expect(await count(page)).toBe('5');
      await undo.click();
      expect(await count(page)).toBe('4');
    }));

  it('when the first is closed, the second can edit', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page);
      await bar(second).waitFor();
      const third = await secondTab(page);
      await bar(third).waitFor();
      await takeOver(third);
      await bar(third).waitFor({ state: 'detached' });
      await third.close();
      await expect.poll(async () => (await bar(page).count()) + (await bar(second).count())).toBe(1);
      const writer = (await bar(page).count()) === 0 ? page : second;
      await setCount(writer, '8');
      await kept(writer);
      expect(countIn(await newestText(page))).toBe(8);
    }));

  it('what the second edits before it knows becomes a project of its own', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const before = await diameters(page);
      const second = await secondTab(page, async (tab) => {
        // Adds a shim as soon as the button is there, and gives the page longer to find out who writes.
        await tab.addInitScript((label) => {
          const wait = setTimeout;
          Object.assign(globalThis, { setTimeout: (run: () => void, ms: number) => wait(run, ms === 400 ? 3000 : ms) });
          const look = setInterval(() => {
            const button = [...document.querySelectorAll('button')].find((each) => each.textContent?.includes(label));
            if (button) clearInterval(look);
            button?.click();
          }, 5);
        }, text.stack.add);
      });
      await second.locator('.notice.problem').waitFor();
      await kept(second);
      const [name] = (await names(page)).sort((a, b) => a.length - b.length);
      expect(await names(page)).toEqual([name, keeping.forkName(name)].sort());
      expect(await diameters(second)).toHaveLength(before.length + 1);
      expect(await diameters(page)).toEqual(before);
      await setCount(page, '3');
      await kept(page);
      expect(await names(page)).toHaveLength(2);
    }));

  it('a tab that cannot save keeps the project; nothing is handed over', () =>
    onBench(async (page) => {
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page);
      await bar(second).waitFor();
      await page.evaluate(() => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException('no room', 'QuotaExceededError');
        };
      });
      await setCount(page, '7');
      await page.locator('[data-bar=trouble]').waitFor();
      await takeOver(second);
      await second.locator('.notice.problem').waitFor();
      expect(await second.locator('.notice.problem').textContent()).toContain(keeping.access.notHandedOver);
      expect(await bar(second).count()).toBe(1);
      expect(await count(page)).toBe('7');
      await setCount(page, '8');
      expect(await count(page)).toBe('8');
    }));
});

const withoutLocks = (page: Page): Promise<unknown> =>
  page.addInitScript(() => Object.defineProperty(Navigator.prototype, 'locks', { value: undefined }));
/** The tabs then do not hear of one another either. */
const withoutChannel = (page: Page): Promise<unknown> =>
  page.addInitScript(() => Object.defineProperty(globalThis, 'BroadcastChannel', { value: undefined }));

describe('a browser without Web Locks', () => {
  it('keeps the edits of both tabs: the later save becomes a project of its own', () =>
    onBench(async (page) => {
      for (const prepare of [withoutLocks, withoutChannel]) await prepare(page);
      await page.reload();
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page, async (tab) => {
        for (const prepare of [withoutLocks, withoutChannel]) await prepare(tab);
      });
      expect(await bar(second).count()).toBe(0);
      await setCount(second, '3');
      await kept(second);
      await setCount(page, '4');
      await page.locator('.notice.problem').waitFor();
      await kept(page);
      const [name] = (await names(page)).sort((a, b) => a.length - b.length);
      const copy = keeping.forkName(name);
      expect(await page.locator('.notice.problem').textContent()).toContain(keeping.access.forked(name, copy));
      expect(await page.getByLabel(text.bar.projectName, { exact: true }).inputValue()).toBe(copy);
      expect(await names(page)).toEqual([name, copy].sort());
      const { projects, texts } = await storedIn(page);
      const counts = projects.map(({ id, head }) =>
        countIn(texts.find((each) => each.project === id && each.revision === head)?.projectText ?? ''),
      );
      expect(counts.sort()).toEqual([3, 4]);
      await setCount(second, '5');
      await setCount(page, '6');
      await kept(second);
      await kept(page);
      expect(await names(page)).toHaveLength(2);
    }));

  it('a tab without edits of its own follows the other', () =>
    onBench(async (page) => {
      await withoutLocks(page);
      await page.reload();
      await setCount(page, '2');
      await kept(page);
      const second = await secondTab(page, async (tab) => void (await withoutLocks(tab)));
      await setCount(page, '3');
      await kept(page);
      await expect.poll(() => count(second)).toBe('3');
      await setCount(second, '4');
      await kept(second);
      expect(await names(page)).toHaveLength(1);
    }));
});
