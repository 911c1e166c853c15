/** The bench with the fork cartridge of the demos: a layout with a base valve, needles, a hydraulic stop and air over the oil. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { drop, onBench, settled } from './bench-page.ts';
import type { PageOptions } from './harness.ts';

export const FORK = readFileSync('src/demo/larkspur-trail-fork.shimwright.json', 'utf8');
const fork = JSON.parse(FORK);

/** The bench with the fork cartridge of the demos open. */
export const onFork = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  onBench(async (page) => {
    await drop(page, 'fork.json', FORK);
    await expect.poll(() => page.getByLabel(text.bar.projectName).inputValue()).toBe(fork.name);
    await settled(page);
    await test(page);
  }, options);

export const place = (page: Page, which: 'pistonCompression' | 'pistonRebound' | 'baseCompression') =>
  page.getByRole('button', { name: text.placeOf('cartridge', which).name, exact: true });
export const showTab = (page: Page, tab: keyof typeof text.chart.tabs): Promise<void> =>
  page.getByRole('button', { name: text.chart.tabs[tab], exact: true }).click();
export const box = (page: Page, label: string) => page.getByLabel(label, { exact: true });
export const group = (page: Page, name: string) => page.locator(`[data-group="${name}"] > summary`);
export const reading = (page: Page, row: string, way: 'compression' | 'rebound' = 'compression') =>
  page.locator(`[data-way=${way}] [data-row="${row}"] td`).nth(1);
export const numberOf = async (
  page: Page,
  row: string,
  way: 'compression' | 'rebound' = 'compression',
): Promise<number> => Number(((await reading(page, row, way).textContent()) ?? '').replace('−', '-'));
export const undo = (page: Page): Promise<void> => page.keyboard.press('Control+z');
