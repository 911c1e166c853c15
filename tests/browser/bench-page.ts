/** What the tests of the bench do again and again, as a person would. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { type PageOptions, withPage } from './harness.ts';

const DESK: PageOptions = { viewport: { width: 1440, height: 900 } };

export const DEMO_FILE = 'src/demo/larkspur-trail-rear.shimwright.json';
export const demoText = (): string => readFileSync(DEMO_FILE, 'utf8');

/** The bench with its curves and its bent stack drawn, the waves of its stacks followed. */
export const onBench = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  withPage(
    async (page) => {
      page.setDefaultTimeout(30_000);
      await settled(page);
      await test(page);
    },
    { ...DESK, ...options },
  );

export async function settled(page: Page): Promise<void> {
  await page.locator('svg[data-state=bent]').first().waitFor();
  await page.locator('.plot-board .scatterlayer .trace').first().waitFor();
  await expect.poll(() => page.locator('.plot.stale').count()).toBe(0);
  await expect.poll(() => page.locator('.theory-used[data-waves=solving]').count()).toBe(0);
}

export const cell = (page: Page, row: number, column: 'outerDiameter_mm' | 'thickness_mm' | 'count') =>
  page.locator(`[data-cell="${row}:${column}"]`);

/** Diameters as they stand in the table, piston side first. */
export const diameters = (page: Page): Promise<string[]> =>
  page
    .locator('[data-cell$=":outerDiameter_mm"]')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value));

/** The build on show, as the readout has it: the second of the demo's two. */
export const force = (page: Page, way: 'compression' | 'rebound' = 'compression'): Promise<string | null> =>
  page.locator(`[data-way=${way}] [data-row=force] td`).nth(1).textContent();

/** The lines on the chart as the charts library drew them. */
export const drawnLines = (page: Page): Promise<(string | null)[]> =>
  page.locator('.plot-board path.js-line').evaluateAll((lines) => {
    // An area has an outline too, which is not drawn.
    const isDrawn = (line: Element) => Number.parseFloat(getComputedStyle(line).strokeWidth) > 0;
    return lines.filter(isDrawn).map((line) => line.getAttribute('d'));
  });

/** Presses a key with the keyboard in `target`. */
export async function pressIn(target: Locator, key: string): Promise<void> {
  await target.focus();
  await target.page().keyboard.press(key);
}

/** What the charts library was given, line by line. */
export const plotted = (page: Page): Promise<string[]> =>
  page
    .locator('.plot-board')
    .evaluate((board) => (board as unknown as { data: { y: unknown }[] }).data.map(({ y }) => JSON.stringify(y)));

/** Does what the menu of the top bar offers. */
export async function fromMenu(page: Page, name: string): Promise<void> {
  await page.locator('#bar-menu-button').click();
  await page.locator('#bar-menu').getByRole('button', { name, exact: true }).click();
}

export const kept = (page: Page): Promise<void> => page.locator('.saving.saved').waitFor({ state: 'attached' });

/** A file let go over the page. */
export const drop = (page: Page, name: string, content: string): Promise<void> =>
  page.evaluate(
    ([fileName, written]) => {
      const files = new DataTransfer();
      files.items.add(new File([written], fileName, { type: 'application/json' }));
      for (const type of ['dragover', 'drop'])
        document.body.dispatchEvent(new DragEvent(type, { dataTransfer: files, bubbles: true, cancelable: true }));
    },
    [name, content],
  );

export const paste = (page: Page, selector: string, content: string): Promise<void> =>
  page.locator(selector).evaluate((target, written) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', written);
    target.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, content);

const axeCode = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Into the page, once. */
async function loadAxe(page: Page): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeCode);
}

/** Widths of a desk, a tablet and a phone, and how the page is lit there. */
export const SCREENS = [
  [1440, 'light'],
  [1440, 'dark'],
  [1024, 'light'],
  [390, 'light'],
  [390, 'dark'],
] as const;

/** The two ends of them, for states of a view that `reach-barriers.spec.ts` sees at every width. */
export const ENDS = [
  [1440, 'light'],
  [390, 'dark'],
] as const;

/**
 * What axe-core finds against WCAG 2.2 A and AA, one line each.
 * @param within a part of the page; a sheet that is unfolded covers what is beneath it, which then counts as too small a target
 */
export async function barriers(page: Page, within = 'html'): Promise<string[]> {
  await loadAxe(page);
  return page.evaluate(async (part) => {
    const { axe: checker } = globalThis as unknown as {
      axe: { run(part: string, options: object): Promise<AxeResult> };
    };
    const found = async (options: object, counts = (_: Element | null) => true): Promise<string[]> => {
      const { violations } = await checker.run(part, options);
      return violations.flatMap(({ id, nodes }) =>
        nodes
          .filter(({ target }) => counts(document.querySelector(target[0])))
          .map(({ html }) => `${id}: ${html.slice(0, 160)}`),
      );
    };
    const runOnly = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const all = await found({ runOnly, rules: { 'target-size': { enabled: false } } });
    // What a bar or a notice covers can be scrolled out from under it, which does not make a target small: each is judged without the other.
    const sizes = { runOnly: { type: 'rule', values: ['target-size'] } };
    const over = [...document.querySelectorAll<HTMLElement>('body *')].filter((each) =>
      ['sticky', 'fixed'].includes(getComputedStyle(each).position),
    );
    const small = await found(sizes, (target) => over.some((each) => each.contains(target)));
    const before = over.map(({ style }) => style.visibility);
    for (const each of over) each.style.visibility = 'hidden';
    small.push(...(await found(sizes)));
    over.forEach((each, i) => {
      each.style.visibility = before[i];
    });
    return [...all, ...small];
  }, within);
}

interface AxeResult {
  violations: { id: string; nodes: { html: string; target: string[] }[] }[];
}

/** What axe-core finds against the contrast of words alone: all that changes when the same page is lit in another way. */
export async function paleWords(page: Page, within = 'html'): Promise<string[]> {
  await loadAxe(page);
  return page.evaluate(async (part) => {
    const { axe: checker } = globalThis as unknown as {
      axe: { run(part: string, options: object): Promise<AxeResult> };
    };
    const { violations } = await checker.run(part, { runOnly: { type: 'rule', values: ['color-contrast'] } });
    return violations.flatMap(({ nodes }) => nodes.map(({ html }) => html.slice(0, 160)));
  }, within);
}
