import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, force, onBench, plotted, settled } from './bench-page.ts';
import { withPage } from './harness.ts';

/** That of the curves came first, then that of the waves. */
const solversOf = (page: Page) =>
  expect
    .poll(() => page.workers().length, { timeout: 20_000 })
    .toBe(2)
    .then(() => page.workers());

it('a worker that ends without a word is noticed and replaced', () =>
  withPage(async (page) => {
    await settled(page);
    const [worker] = await solversOf(page);
    await worker.evaluate(() => self.close()).catch(() => {});
    await page.getByText(text.solver.restartedWhy).waitFor();
    expect(await solversOf(page)).not.toContain(worker);
  }));

/** Workers that go down with what they are given to solve, as often as the page's root element says: killed, or by an error. */
function goDownSolving(how: 'killed' | 'throws'): void {
  const Real = globalThis.Worker;
  globalThis.Worker = class extends Real {
    override postMessage(message: { path?: string[] }, rest?: StructuredSerializeOptions | Transferable[]): void {
      super.postMessage(message, rest as Transferable[]);
      const marks = document.documentElement.dataset;
      if (message.path?.[0] !== 'run' || !Number(marks.goDown)) return;
      marks.goDown = String(Number(marks.goDown) - 1);
      if (how === 'killed') this.terminate();
      else this.dispatchEvent(new ErrorEvent('error', { message: 'thrown by a test' }));
    }
  };
}

async function withFragileWorkers(page: Page, how: 'killed' | 'throws'): Promise<void> {
  await page.addInitScript(goDownSolving, how);
  await page.reload();
  await settled(page);
}

const goDown = (page: Page, times: number): Promise<void> =>
  page.evaluate((count) => {
    document.documentElement.dataset.goDown = String(count);
  }, times);

const warnings = (page: Page): Promise<string> => page.locator('.warnings').textContent().then(String);
const readsStale = (page: Page) => page.locator('[data-way=compression] [data-row=force] td').nth(1);

describe.each(['killed', 'throws'] as const)('a worker that goes down while it solves (%s)', (how) => {
  it('is told, and a fresh one solves the edit without being asked', () =>
    onBench(async (page) => {
      await withFragileWorkers(page, how);
      const [before, lines] = [await force(page), await plotted(page)];
      await goDown(page, 1);
      await cell(page, 0, 'thickness_mm').fill('0.4');
      await page.getByText(text.solver.restartedWhy).waitFor();
      await expect.poll(() => force(page)).not.toBe(before);
      await settled(page);
      expect(await plotted(page)).not.toEqual(lines);
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.4');
    }));

  it('over what brought it down before: the build says so and keeps its last curve, the other goes on', () =>
    onBench(async (page) => {
      await withFragileWorkers(page, how);
      const [before, lines] = [await force(page), await plotted(page)];
      const name = (await page.locator('.build-name').nth(1).textContent()) as string;
      await goDown(page, 2);
      await cell(page, 0, 'thickness_mm').fill('0.4');
      await expect.poll(() => warnings(page)).toContain(text.solver.failedFor(name, ''));
      expect(await force(page)).toBe(before);
      expect(await readsStale(page).getAttribute('class')).toContain('stale');
      expect(await plotted(page)).toEqual(lines);
      await page.getByLabel(text.damper.temperature, { exact: true }).last().fill('60');
      await expect.poll(async () => (await plotted(page)).filter((line, i) => line !== lines[i]).length).toBe(4);
      await settled(page);
      expect(await warnings(page)).not.toContain(text.solver.failedFor(name, ''));
    }));

  it('with two builds in hand: only the one that brings it down again stays without a curve', () =>
    onBench(async (page) => {
      await withFragileWorkers(page, how);
      const lines = await plotted(page);
      const [stock, custom] = await page.locator('.build-name').allTextContents();
      await goDown(page, 2);
      await page.getByLabel(text.damper.temperature, { exact: true }).last().fill('60');
      await expect.poll(() => warnings(page)).toContain(text.solver.failedFor(stock, ''));
      await expect
        .poll(async () => (await plotted(page)).map((line, i) => line !== lines[i]))
        .toEqual([false, false, true, true]);
      expect(await warnings(page)).not.toContain(text.solver.failedFor(custom, ''));
    }));
});

it('the charts library is not asked for before a chart is shown', () =>
  withPage(
    async (page) => {
      const asked = (): Promise<number> =>
        page.evaluate(
          () => performance.getEntriesByType('resource').filter(({ name }) => name.includes('plotly')).length,
        );
      await page.locator('.proof').first().waitFor();
      await page.waitForLoadState('networkidle');
      expect(await asked()).toBe(0);
      await page.evaluate(() => {
        location.hash = '';
      });
      await page.locator('.plot-board .scatterlayer .trace').first().waitFor();
      expect(await asked()).toBe(1);
    },
    { path: '#proof' },
  ));
