/** Project files that try to become page, code or somebody else's object. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { demoText, drop, force, kept, onBench, settled } from './bench-page.ts';

const HOSTILE = [
  '<img src=x onerror="globalThis.harmed=1">',
  '<script>globalThis.harmed=1</script>',
  '"><svg onload="globalThis.harmed=1"><b>bold</b>',
  '<a href="javascript:globalThis.harmed=1">here</a>',
  '</title></style><iframe srcdoc="<script>parent.harmed=1</script>">',
  '\u202e{{constructor.constructor("globalThis.harmed=1")()}}#{globalThis.harmed=1}',
] as const;

type Json = { [key: string]: unknown };

/** The demo with every name and note in it replaced. */
function renamed(words: string): string {
  const spoil = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(spoil);
    if (typeof value !== 'object' || value === null) return value;
    const entries = Object.entries(value as Json).map(([key, part]) => [
      key,
      key === 'name' || key === 'notes' ? words : spoil(part),
    ]);
    return Object.fromEntries(entries);
  };
  return JSON.stringify(spoil(JSON.parse(demoText())));
}

const projectName = (page: Page) => page.getByLabel(text.bar.projectName, { exact: true }).inputValue();

/** What markup in a name would leave behind. */
const traces = (page: Page): Promise<unknown> =>
  page.evaluate(() => ({
    harmed: 'harmed' in globalThis,
    // The bench has bold words of its own; the one that a name would make is told by what it says.
    elements: [...document.querySelectorAll('img, iframe, b, object, embed, [onerror], [onload], body script')]
      .filter(({ tagName, textContent }) => tagName !== 'B' || textContent === 'bold')
      .map(({ outerHTML }) => outerHTML),
    links: [...document.querySelectorAll('a')].filter(({ protocol }) => !/^https?:$/.test(protocol)).length,
  }));
const NO_TRACES = { harmed: false, elements: [], links: 0 };

describe('a hostile project file', () => {
  it.each(HOSTILE)('with %s for every name and note shows it as it is, in every view and after a reload', (words) =>
    onBench(async (page) => {
      await drop(page, `${words}.json`, renamed(words));
      await expect.poll(() => projectName(page)).toBe(words);
      await settled(page);
      for (const name of Object.values(text.chart.tabs)) await page.getByRole('button', { name, exact: true }).click();
      for (const group of await page.locator('details > summary').all()) await group.click();
      await page.getByRole('button', { name: text.builds.edit, exact: true }).click();
      expect(await traces(page)).toEqual(NO_TRACES);
      expect(await page.locator('.build-name').allTextContents()).toContain(words);
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await projectName(page)).toBe(words);
      expect(await traces(page)).toEqual(NO_TRACES);
    }),
  );

  it('with the names of every object’s own parts among its keys and ids changes no other object', () =>
    onBench(async (page) => {
      const ids: Readonly<Record<string, string>> = { stock: '__proto__', 'square-edge': 'constructor' };
      const content = demoText()
        .replace(/"(stock|square-edge)"/g, (_, id: string) => JSON.stringify(ids[id]))
        .replace('{', '{ "__proto__": { "harmed": 1 }, "constructor": { "prototype": { "harmed": 1 } },');
      const before = await force(page);
      await drop(page, 'keys.json', content);
      await page.locator('.notice').first().waitFor();
      expect(await page.locator('.notice.problem').count()).toBe(0);
      await settled(page);
      expect(await force(page)).toBe(before);
      await page.locator('.build .pick').last().click();
      await settled(page);
      expect(await page.evaluate(() => 'harmed' in {})).toBe(false);
    }));

  it.each([390, 1440])(
    'nested deep or with a name too long is refused; the longest name widens nothing at %i pixels',
    (width) =>
      onBench(
        async (page) => {
          const nested = `{"format":"shimwright/project","version":1,"deep":${'['.repeat(20_000)}${']'.repeat(20_000)}}`;
          await drop(page, 'deep.json', nested);
          await page.locator('.notice.problem').first().waitFor();
          await drop(page, 'too-long.json', renamed('x'.repeat(201)));
          await page.locator('.notice.problem').filter({ hasText: 'too-long.json' }).waitFor();
          await drop(page, 'long.json', renamed('x'.repeat(200)));
          await expect.poll(async () => (await projectName(page)).length).toBe(200);
          await settled(page);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        },
        { viewport: { width, height: 900 } },
      ),
  );
});
