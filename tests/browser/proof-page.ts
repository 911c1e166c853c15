/** What the tests of the proof do again and again, and what the folders of reference-cases hold. */
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Page } from 'playwright-core';
import { pageWords } from '../../src/ui/text/pages.ts';
import { type PageOptions, withPage } from './harness.ts';

const foldersIn = (path: string): string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
export const STORED = foldersIn('reference-cases').flatMap((field) =>
  foldersIn(`reference-cases/${field}`).map((id) => `${field}/${id}`),
);
export const read = (folder: string, name: string): string => readFileSync(`reference-cases/${folder}/${name}`, 'utf8');
const quantitiesOf = (folder: string): number =>
  Object.keys(JSON.parse(read(folder, 'expected.json')).quantities).length;
export const QUANTITIES = STORED.reduce((sum, folder) => sum + quantitiesOf(folder), 0);

export const FEM = 'stack/fem-two-stage-large';
export const caseRow = (page: Page, folder: string) => page.locator(`[data-case="${folder}"]`);
export const rows = (page: Page) => page.locator('[data-case]');
export const phase = (page: Page, name: string) => page.locator(`.run-status[data-phase=${name}]`).waitFor();
export const status = (page: Page) => page.locator('.run-status [role=status]').textContent();
export const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
export const source = (text: string): string => text.replace(/\s+/g, ' ').trim();

export const onProof = (test: (page: Page) => Promise<void>, options: PageOptions = {}): Promise<void> =>
  withPage(
    async (page) => {
      page.setDefaultTimeout(20_000);
      await phase(page, 'done');
      await test(page);
    },
    { path: '#proof', viewport: { width: 1440, height: 900 }, ...options },
  );

/** A service worker would answer before a request could be changed or held. */
export const ROUTED: PageOptions = { serviceWorkers: 'block' };

/** The cases as the worker loads them, changed on their way. */
export const plant = (page: Page, change: (texts: string) => string): Promise<unknown> =>
  page.route(/\/proof-cases-.*\.js$/, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: change(await response.text()) });
  });

export const openProof = (page: Page): Promise<void> =>
  page.getByRole('link', { name: pageWords.pages.proof.name, exact: true }).click();

export async function textOf(download: Download): Promise<string> {
  const copy = join(mkdtempSync(join(tmpdir(), 'shimwright-')), 'copy');
  await download.saveAs(copy);
  return readFileSync(copy, 'utf8');
}
