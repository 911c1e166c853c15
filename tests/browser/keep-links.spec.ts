import { readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { barriers, cell, DEMO_FILE, fromMenu, kept, onBench, settled } from './bench-page.ts';
import { countIn, openBench, storedIn } from './keep-page.ts';

const words = keeping.link;
const bar = (page: Page, kind: string) => page.locator(`[data-bar=${kind}]`);
const projectName = (page: Page): Promise<string> =>
  page.getByLabel(text.bar.projectName, { exact: true }).inputValue();
const count = (page: Page): Promise<string> => cell(page, 0, 'count').inputValue();

const linkOf = (content: string): string => `#work=1.${deflateRawSync(content).toString('base64url')}`;
/** The demo under another name, with so many face shims in its second build. */
function madeElsewhere(name: string, faceShims: number): string {
  const project = JSON.parse(readFileSync(DEMO_FILE, 'utf8'));
  project.name = name;
  project.builds[1].valves.pistonCompression.shims[0].count = faceShims;
  return linkOf(JSON.stringify(project));
}

/** Asks for the link in the bar and reads it from the clipboard. */
async function copied(page: Page, button: string): Promise<string> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await fromMenu(page, words.button);
  await bar(page, 'offer').getByRole('button', { name: button }).click();
  await bar(page, 'offer').waitFor({ state: 'detached' });
  return page.evaluate(() => navigator.clipboard.readText());
}

describe('a link that carries work', () => {
  it('is copied, opens as a project of its own after a word, and asks nothing of any server', () =>
    onBench(async (page) => {
      await cell(page, 0, 'count').fill('4');
      await kept(page);
      const before = await projectName(page);
      const address = await copied(page, words.ofProject);
      await cell(page, 0, 'count').fill('2');
      await kept(page);
      const asked: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      await page.goto('about:blank');
      await page.goto(address);
      await bar(page, 'arrived').waitFor();
      expect(await barriers(page)).toEqual([]);
      expect([await projectName(page), await count(page)]).toEqual([before, '2']);
      expect((await storedIn(page)).projects).toHaveLength(1);
      await bar(page, 'arrived').getByRole('button', { name: words.open }).click();
      await expect.poll(() => count(page)).toBe('4');
      await kept(page);
      const { projects, texts } = await storedIn(page);
      const newest = projects.map(({ id, head }) => texts.find((t) => t.project === id && t.revision === head));
      expect(newest.map((state) => countIn(state?.projectText ?? '')).sort()).toEqual([2, 4]);
      expect(new URL(page.url()).hash).toBe('');
      expect(asked.length).toBeGreaterThan(0);
      expect(asked.filter((url) => url.includes('work=1.') || new URL(url).search !== '')).toEqual([]);
      await page.reload();
      await settled(page);
      expect(await bar(page, 'arrived').count()).toBe(0);
    }));

  it('to one build carries that build alone', () =>
    onBench(async (page) => {
      const name = (await page.locator('.build-name').nth(1).textContent()) ?? '';
      const address = await copied(page, words.ofBuild(name));
      await page.goto('about:blank');
      await page.goto(address);
      await bar(page, 'arrived').getByRole('button', { name: words.open }).click();
      await expect.poll(() => page.locator('.build-name').allTextContents()).toEqual([name]);
    }));

  it('that is left alone changes nothing, and a second link in the same tab is asked about again', () =>
    onBench(async (page) => {
      const before = await projectName(page);
      await openBench(page, madeElsewhere('First', 3));
      await bar(page, 'arrived').getByRole('button', { name: words.leave }).click();
      await bar(page, 'arrived').waitFor({ state: 'detached' });
      expect(await projectName(page)).toBe(before);
      await page.evaluate(
        (fragment) => {
          location.hash = fragment;
        },
        madeElsewhere('Second', 5),
      );
      await bar(page, 'arrived').getByRole('button', { name: words.open }).click();
      await expect.poll(() => projectName(page)).toBe('Second');
      expect(await count(page)).toBe('5');
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      expect(await projectName(page)).toBe(before);
    }));

  it('can be copied by hand when the browser does not allow it', () =>
    onBench(async (page) => {
      await page.evaluate(() =>
        Object.defineProperty(navigator, 'clipboard', {
          value: { writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError')) },
        }),
      );
      await fromMenu(page, words.button);
      await bar(page, 'offer').getByRole('button', { name: words.ofProject }).click();
      const address = await page.getByLabel(words.copyByHand).inputValue();
      expect(address).toContain('#work=1.');
      expect(await barriers(page)).toEqual([]);
    }));
});

describe('a hostile link', () => {
  it('with markup in its names shows them as they are', () =>
    onBench(async (page) => {
      const hostile = '<img src=x onerror=alert(1)>';
      await openBench(page, madeElsewhere(hostile, 2));
      await bar(page, 'arrived').waitFor();
      expect(await bar(page, 'arrived').textContent()).toContain(hostile);
      expect(await bar(page, 'arrived').locator('img').count()).toBe(0);
      await bar(page, 'arrived').getByRole('button', { name: words.open }).click();
      await expect.poll(() => projectName(page)).toBe(hostile);
      expect(await page.locator('main img').count()).toBe(0);
    }));

  it.each<[string, () => string, string]>([
    ['that was cut', () => madeElsewhere('Cut', 2).slice(0, -40), words.refused.damaged],
    ['that unpacks to 30 MB', () => linkOf(' '.repeat(30 * 1024 * 1024)), words.refused['too-long']],
    ['with no project', () => linkOf('{"format":"elsewhere","version":1}'), words.refused.faults],
    ['of a newer form', () => '#work=7.AAAA', words.refused.newer],
  ])('%s is refused with a reason, and nothing changes', (_, make, reason) =>
    onBench(async (page) => {
      const before = await projectName(page);
      await openBench(page, make());
      await page.locator('.notice.problem').waitFor();
      expect(await page.locator('.notice.problem').textContent()).toContain(reason);
      expect(await bar(page, 'arrived').count()).toBe(0);
      expect(await projectName(page)).toBe(before);
      expect(new URL(page.url()).hash).toBe('');
    }),
  );
});
