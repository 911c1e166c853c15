import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { withPage } from './harness.ts';

const solverOf = (page: Page) =>
  expect
    .poll(() => page.workers().length, { timeout: 20_000 })
    .toBe(1)
    .then(() => page.workers()[0]);

it('a worker that ends without a word is noticed and replaced', () =>
  withPage(async (page) => {
    const worker = await solverOf(page);
    await page.getByText(/^Solved in/).waitFor();
    await worker.evaluate(() => self.close()).catch(() => {});
    await page.getByText(text.solver.restartedWhy).waitFor();
    expect(await solverOf(page)).not.toBe(worker);
  }));
