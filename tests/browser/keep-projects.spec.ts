import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../src/demo/index.ts';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { barriers, cell, demoText, drop, fromMenu, kept, onBench, settled } from './bench-page.ts';
import { countIn, secondTab, storedIn } from './keep-page.ts';

const words = keeping.projects;
const count = (page: Page): Promise<string> => cell(page, 0, 'count').inputValue();
const setCount = (page: Page, value: string): Promise<void> => cell(page, 0, 'count').fill(value);
const projectName = (page: Page): Promise<string> =>
  page.getByLabel(text.bar.projectName, { exact: true }).inputValue();
const dialog = (page: Page) => page.getByRole('dialog');
const act = (page: Page, name: string) => dialog(page).getByRole('button', { name, exact: true });
const said = (page: Page) => dialog(page).locator('.keeping-bar');
const rows = (page: Page) => dialog(page).locator('[data-project]');

async function openView(page: Page): Promise<void> {
  await fromMenu(page, words.open);
  await dialog(page).waitFor();
}
const close = (page: Page): Promise<void> => act(page, words.close).click();

/** What each project was saved as last, by name. */
async function keptCounts(page: Page): Promise<Record<string, number>> {
  const { projects, texts } = await storedIn(page);
  const newest = (id: string, head: number) => texts.find((each) => each.project === id && each.revision === head);
  return Object.fromEntries(
    projects.map(({ id, head, name }) => [name, countIn(newest(id, head)?.projectText ?? '')] as const),
  );
}

/** A second project beside the demo, both edited: `Mine` is on the bench. */
async function twoProjects(page: Page): Promise<string> {
  const demo = await projectName(page);
  await setCount(page, '2');
  await kept(page);
  await drop(page, 'mine.json', demoText().replace(/"name": "[^"]*"/, '"name": "Mine"'));
  await expect.poll(() => projectName(page)).toBe('Mine');
  await setCount(page, '7');
  await kept(page);
  return demo;
}

describe('several projects', () => {
  it('a file opens beside what is kept; each is saved by itself and opens again', () =>
    onBench(async (page) => {
      const demo = await twoProjects(page);
      expect(await keptCounts(page)).toEqual({ [demo]: 2, Mine: 7 });
      await openView(page);
      await expect.poll(() => rows(page).count()).toBe(2);
      expect(await rows(page).first().textContent()).toContain(words.here);
      await act(page, words.openIt(demo)).click();
      await dialog(page).waitFor({ state: 'detached' });
      expect(await count(page)).toBe('2');
      await setCount(page, '3');
      await kept(page);
      await page.reload();
      await settled(page);
      expect([await projectName(page), await count(page)]).toEqual([demo, '3']);
      expect(await keptCounts(page)).toEqual({ [demo]: 3, Mine: 7 });
    }));

  it('undo goes back over the opening of another project, and its edits are kept where they belong', () =>
    onBench(async (page) => {
      const demo = await twoProjects(page);
      for (let i = 0; i < 2; i++) await page.getByRole('button', { name: /^Undo/ }).first().click();
      expect([await projectName(page), await count(page)]).toEqual([demo, '2']);
      await setCount(page, '4');
      await kept(page);
      // The first undo was in `Mine`, and is kept there.
      expect(await keptCounts(page)).toEqual({ [demo]: 4, Mine: countIn(demoText()) });
    }));

  it('an open that is taken back leaves no project behind, but in what was deleted', () =>
    onBench(async (page) => {
      const demo = await projectName(page);
      await setCount(page, '2');
      await kept(page);
      await drop(page, 'mine.json', demoText().replace(/"name": "[^"]*"/, '"name": "Mine"'));
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      expect(await projectName(page)).toBe(demo);
      await expect
        .poll(async () => (await storedIn(page)).projects.filter((each) => !each.deletedAt).map(({ name }) => name))
        .toEqual([demo]);
      await openView(page);
      await act(page, words.takeBack('Mine')).waitFor();
    }));

  it('can be duplicated and renamed, open or not', () =>
    onBench(async (page) => {
      const demo = await twoProjects(page);
      await openView(page);
      await act(page, words.duplicate(demo)).click();
      await said(page).waitFor();
      const copy = keeping.copyName(demo);
      for (const [from, to] of [
        [copy, 'Winter'],
        ['Mine', 'Yours'],
      ]) {
        await act(page, words.rename(from)).click();
        await dialog(page).getByLabel(words.renameTo).fill(to);
        await act(page, words.renameDone).click();
        await act(page, words.openIt(to)).waitFor();
      }
      expect(await keptCounts(page)).toEqual({ [demo]: 2, Winter: 2, Yours: 7 });
      await act(page, words.rename('Winter')).click();
      await dialog(page).getByLabel(words.renameTo).fill('x'.repeat(300));
      await act(page, words.renameDone).click();
      await dialog(page).getByRole('alert').waitFor();
      await close(page);
      expect(await projectName(page)).toBe('Yours');
      expect(Object.keys(await keptCounts(page))).toContain('Winter');
    }));

  it('can be deleted, open or not, and taken back; for good only after a second word', () =>
    onBench(async (page) => {
      const demo = await twoProjects(page);
      await openView(page);
      await act(page, words.remove('Mine')).click();
      await expect.poll(() => said(page).textContent()).toContain(words.removed('Mine'));
      await expect.poll(() => rows(page).count()).toBe(1);
      expect(await projectName(page)).toBe(demo);
      await act(page, words.undo).click();
      await expect.poll(() => projectName(page)).toBe('Mine');
      expect(await count(page)).toBe('7');
      await act(page, words.remove(demo)).click();
      await act(page, words.forGood(demo)).click();
      await act(page, words.forGoodNo).click();
      expect(await keptCounts(page)).toEqual({ [demo]: 2, Mine: 7 });
      await act(page, words.forGood(demo)).click();
      await act(page, words.forGoodYes).click();
      await expect.poll(() => keptCounts(page)).toEqual({ Mine: 7 });
    }));

  it('a project that another tab has open is neither deleted nor renamed', () =>
    onBench(async (page) => {
      const demo = await twoProjects(page);
      const second = await secondTab(page);
      await openView(second);
      await act(second, words.openIt(demo)).click();
      await openView(second);
      await expect.poll(() => rows(second).filter({ hasText: 'Mine' }).textContent()).toContain(words.elsewhere);
      await act(second, words.remove('Mine')).click();
      await expect.poll(() => said(second).textContent()).toContain(words.heldElsewhere('Mine'));
      expect(await keptCounts(page)).toEqual({ [demo]: 2, Mine: 7 });
    }));

  it('every demo starts a project of its own, and the view has no barriers', () =>
    onBench(async (page) => {
      await twoProjects(page);
      for (const { title } of DEMOS) {
        await openView(page);
        expect(await barriers(page)).toEqual([]);
        await act(page, title).click();
        await dialog(page).waitFor({ state: 'detached' });
        await kept(page);
      }
      expect((await storedIn(page)).projects).toHaveLength(2 + DEMOS.length);
    }));
});

const states = (page: Page) => dialog(page).locator('[data-revision]');

async function openStates(page: Page, name: string): Promise<void> {
  await openView(page);
  await act(page, words.history(name)).click();
  await states(page).first().waitFor();
}

describe('saved states', () => {
  it('are listed, compared with now, restored, and the restoring is undone', () =>
    onBench(async (page) => {
      const demo = await projectName(page);
      for (const value of ['2', '3', '4']) {
        await setCount(page, value);
        await kept(page);
      }
      await openStates(page, demo);
      await expect.poll(() => states(page).count()).toBe(3);
      await states(page).nth(2).getByRole('button').first().click();
      await expect.poll(() => states(page).nth(2).locator('li').textContent()).toContain('4→2');
      await states(page).nth(2).getByRole('button').nth(1).click();
      await dialog(page).waitFor({ state: 'detached' });
      expect(await count(page)).toBe('2');
      await kept(page);
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      expect(await count(page)).toBe('4');
      await kept(page);
      expect(await keptCounts(page)).toEqual({ [demo]: 4 });
      await openStates(page, demo);
      await expect.poll(() => states(page).count()).toBe(5);
    }));

  it('one can be opened as a project of its own', () =>
    onBench(async (page) => {
      const demo = await projectName(page);
      for (const value of ['2', '3']) {
        await setCount(page, value);
        await kept(page);
      }
      await openStates(page, demo);
      await states(page).nth(1).getByRole('button').nth(2).click();
      await expect.poll(() => projectName(page)).toBe(keeping.copyName(demo));
      await kept(page);
      expect(await keptCounts(page)).toEqual({ [demo]: 3, [keeping.copyName(demo)]: 2 });
    }));
});
