/** The bench by the theory that follows the waves of the rim. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { demoText, drop, onBench, pressIn, settled } from './bench-page.ts';
import type { PageOptions } from './harness.ts';

export const cursor = (page: Page) => page.getByRole('slider', { name: text.chart.cursor });

async function followWaves(page: Page): Promise<void> {
  await page.getByRole('button', { name: text.theoryShort['port-periodic'] }).click();
  await expect.poll(() => page.locator('.title-block').first().textContent()).toContain(text.theory['port-periodic']);
  await settled(page);
}

/** The demo at its fastest: there its rim waves. */
export const onWaves = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  onBench(async (page) => {
    await followWaves(page);
    await pressIn(cursor(page), 'End');
    await page.locator('.cut-name').first().waitFor();
    await test(page);
  }, options);

/** The same with four ports that open part of the ring: it waves from the first, four times. */
export const onFourPorts = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  onBench(async (page) => {
    const document = JSON.parse(demoText());
    document.name = 'Four ports (invented)';
    document.damper.valves.pistonCompression.ports.coveredFraction = 0.65;
    await drop(page, 'four.shimwright.json', JSON.stringify(document));
    await page.locator('.notice').filter({ hasText: 'four.shimwright.json' }).waitFor();
    await followWaves(page);
    await page.locator('.cut-name').first().waitFor();
    await test(page);
  }, options);
