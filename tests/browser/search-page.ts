/** What the tests of the search do again and again, as a person would. */
import type { Page } from 'playwright-core';
import { searchWords as words } from '../../src/ui/text/search.ts';
import { plantedStudy } from '../helpers/search-studies.ts';
import { drop, onBench } from './bench-page.ts';
import type { PageOptions } from './harness.ts';

/** The invented damper with a drawer of 60 shims, and the curve of a stack that it can lay as an aim. */
function plantedProject(): string {
  const { project, request } = plantedStudy({}, 'auto');
  return JSON.stringify({ ...project, aims: [{ id: 'planted', name: 'Planted', points: request.aim }] });
}

export async function openSearch(page: Page): Promise<void> {
  await page.evaluate(() => {
    location.hash = '#search';
  });
  await page.locator('.run-bar').waitFor();
}

/** The page of the search with the planted aim chosen, from the baseline. */
export const onSearch = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  onBench(async (page) => {
    page.setDefaultTimeout(60_000);
    await drop(page, 'planted.json', plantedProject());
    await openSearch(page);
    await page.locator('[data-drawer-total="60"]').waitFor();
    const { project } = plantedStudy();
    await page.getByLabel(words.build, { exact: true }).selectOption(project.baselineBuild);
    await test(page);
  }, options);

export interface Effort {
  readonly starts: number;
  readonly steps: number;
  readonly seed: number;
  readonly cores: number;
}

export async function setEffort(page: Page, { starts, steps, seed, cores }: Effort): Promise<void> {
  const fields: [string, number][] = [
    [words.starts, starts],
    [words.steps, steps],
    [words.seed, seed],
    [words.workers, cores],
  ];
  for (const [label, value] of fields) await page.getByLabel(label, { exact: true }).fill(String(value));
  await page.keyboard.press('Tab');
}

/** Lets stacks through whose shims have no reserve, so that a short search has a list. */
export async function withoutReserves(page: Page): Promise<void> {
  await page.getByLabel(words.reservesAsNow, { exact: true }).uncheck();
  for (const label of [words.lifeReserve, words.yieldReserve]) await page.getByLabel(label, { exact: true }).fill('');
}

export const begin = (page: Page): Promise<void> => page.locator('.run-bar .primary').click();
export const inPhase = (page: Page, phase: string): Promise<void> =>
  page.locator(`.run-bar[data-phase=${phase}]`).waitFor();
export const startsDone = async (page: Page): Promise<number> =>
  Number(await page.locator('.run-bar').getAttribute('data-done'));

/** Every card of the list, as it reads: rank, distance, stack and differences. */
export const listed = (page: Page): Promise<string[]> =>
  page.locator('.found-card').evaluateAll((cards) => cards.map((card) => card.textContent ?? ''));

export const percentOff = async (page: Page, rank: number): Promise<number> =>
  Number.parseFloat((await page.locator(`[data-rank="${rank}"] header [data-off]`).textContent()) ?? '');
