import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { pageWords } from '../../src/ui/text/pages.ts';
import { proofWords as words } from '../../src/ui/text/proof.ts';
import { barriers, onBench } from './bench-page.ts';
import {
  button,
  caseRow,
  FEM,
  onProof,
  openProof,
  phase,
  plant,
  QUANTITIES,
  ROUTED,
  read,
  rows,
  STORED,
  source,
  status,
  textOf,
} from './proof-page.ts';

describe('the proof', () => {
  it('runs every folder of reference-cases in this browser, and all are within their tolerance', () =>
    onProof(async (page) => {
      expect(await rows(page).evaluateAll((all) => all.map((row) => (row as HTMLElement).dataset.case))).toEqual(
        [...STORED].sort(),
      );
      expect(await page.locator('.result.bad, tr.outside').count()).toBe(0);
      const said = (await status(page)) ?? '';
      expect(said).toContain(words.run.allWithin(STORED.length, QUANTITIES, 0).split(' in ')[0]);
    }));

  it('shows every quantity beside what its file expects, and every source, as text', () =>
    onProof(async (page) => {
      await button(page, words.filter.expandAll).click();
      expect(await page.locator('.quantities tbody tr').count()).toBe(QUANTITIES);
      const sources = await page.locator('.source').allTextContents();
      expect(sources.map(source)).toEqual([...STORED].sort().map((folder) => source(read(folder, 'SOURCE.md'))));
      expect(await page.locator('.source > *').count()).toBe(0);
      // Printed in Timoshenko's Table 3, row 7, from memory: k at a/b = 3 is 0.293, exact 0.28902, kept as a slip.
      const slip = page.locator('tr').filter({ hasText: 'a/b 3 deflection' }).filter({ hasText: '0.293' });
      expect(await slip.locator('td').allTextContents()).toEqual(
        expect.arrayContaining(['0.293', 'q a⁴/(E h³)', '1.5 %', words.cases.within]),
      );
    }));

  it('says where a tolerance is wider and why, and which rows lie beyond the proven range', () =>
    onProof(async (page) => {
      await caseRow(page, FEM).getByRole('button').click();
      const opened = page.locator('.details:not([hidden])');
      const { tolerances, quantities } = JSON.parse(read(FEM, 'expected.json'));
      for (const { reason } of Object.values<{ reason: string }>(tolerances)) {
        expect(await opened.textContent()).toContain(reason);
      }
      const noted = Object.values<{ note?: string }>(quantities).filter(({ note }) => note?.startsWith('beyond'));
      expect(noted.length).toBeGreaterThan(10);
      expect(await opened.locator('.quantities sup').count()).toBe(noted.length);
      expect(await opened.locator('.notes').textContent()).toContain('beyond the onset of waviness');
      expect(await caseRow(page, FEM).textContent()).toContain('±9 MPa');
    }));

  it('is no part of the bench’s first load', () =>
    onBench(async (page) => {
      const loaded = () => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
      expect((await loaded()).filter((name) => /proof/.test(name))).toEqual([]);
      expect(page.workers().filter((worker) => /proof/.test(worker.url()))).toEqual([]);
      await openProof(page);
      await phase(page, 'done');
      expect((await loaded()).filter((name) => /proof-page/.test(name)).length).toBeGreaterThan(0);
    }));

  it('chooses by field and by kind, and has nothing to show outside', () =>
    onProof(async (page) => {
      await button(page, words.fields.gas).click();
      expect(await rows(page).count()).toBe(STORED.filter((folder) => folder.startsWith('gas/')).length);
      const exact = STORED.filter((folder) => JSON.parse(read(folder, 'case.json')).kind === 'exact');
      await page.getByLabel(words.filter.field).getByRole('button', { name: words.filter.all }).click();
      await button(page, words.kinds.exact).click();
      expect(await rows(page).count()).toBe(exact.length);
      await page.getByLabel(words.filter.onlyOutside).check();
      expect(await rows(page).count()).toBe(0);
      await page.getByText(words.filter.nothingOutside).waitFor();
    }));
});

describe('a planted bad case', () => {
  const spoil = (texts: string): string => {
    // A jet that the source puts at 1.060507e-4 m³/s, an evaluator that is none, and half a file.
    const changes: [RegExp, string][] = [
      [/0\.0001060507/, '0.0001071'],
      [/(evaluator[^a-z]+)check-plate/, '$1no-such-evaluator'],
      [/id(\W+radial-gap)/, 'no-id$1'],
    ];
    return changes.reduce((text, [from, to]) => {
      expect(text).toMatch(from);
      return text.replace(from, to);
    }, texts);
  };

  it('is shown as outside, failed or unreadable, with its reason, and spoils no other', () =>
    onBench(async (page) => {
      await plant(page, spoil);
      await openProof(page);
      await phase(page, 'done');
      expect(await status(page)).toContain(words.run.someOutside(3, STORED.length, 0).split(', in')[0]);
      await page.getByLabel(words.filter.onlyOutside).check();
      expect(await rows(page).count()).toBe(3);
      await button(page, words.filter.expandAll).click();
      const result = (folder: string) => caseRow(page, folder).locator('.result').textContent();
      expect(await result('hydraulics/sharp-orifice')).toBe(words.cases.outsideOf(1, 2));
      expect(await result('hydraulics/check-plate')).toBe(words.cases.failed);
      expect(await result('hydraulics/radial-gap')).toBe(words.cases.unreadable);
      expect(await page.locator('.quantities tr.outside').filter({ hasText: 'jet flow' }).textContent()).toContain(
        '1.071 × 10⁻⁴',
      );
      const reasons = (await page.locator('.case-failure').allTextContents()).join();
      expect(reasons).toMatch(/no-such-evaluator.*could not be read/);
      expect(await page.locator('.totals tfoot .result.bad').textContent()).toBe('3');
      expect(await barriers(page)).toEqual([]);
      const saved = page.waitForEvent('download');
      await button(page, words.run.json).click();
      const { results } = JSON.parse(await textOf(await saved));
      expect(results.filter(({ passed }: { passed?: boolean }) => passed !== true)).toHaveLength(3);
    }, ROUTED));
});

describe('a run that does not end well', () => {
  const stall = (page: Page): Promise<unknown> => page.route(/\/proof-cases-.*\.js$/, () => {});

  it('that is stopped says so, and the next one runs whole', () =>
    onBench(async (page) => {
      await stall(page);
      await openProof(page);
      await button(page, words.run.stop).click();
      await phase(page, 'stopped');
      await page.unrouteAll({ behavior: 'ignoreErrors' });
      await button(page, words.run.again).click();
      await phase(page, 'done');
      expect(await rows(page).count()).toBe(STORED.length);
    }, ROUTED));

  it('whose worker goes away says so', () =>
    onBench(async (page) => {
      await stall(page);
      const started = page.waitForEvent('worker');
      await openProof(page);
      const worker = await started;
      await phase(page, 'running');
      await expect
        .poll(() => worker.evaluate(async () => (await navigator.locks.query()).held?.map(({ name }) => name)))
        .toEqual(expect.arrayContaining([expect.stringMatching(/^shimwright-proof/)]));
      await worker.evaluate(() => self.close()).catch(() => {});
      await phase(page, 'broken');
      expect(await status(page)).toContain('ended by itself');
    }, ROUTED));

  it('whose page cannot be loaded says so and leaves a way back', () =>
    onBench(
      async (page) => {
        await page.route(/\/proof-page-.*\.js$/, (route) => route.abort());
        await openProof(page);
        await page.getByText(pageWords.notLoaded(pageWords.pages.proof.name)).waitFor();
        await page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).click();
        await page.locator('svg[data-state=bent]').waitFor();
      },
      { ...ROUTED, expected: [/proof-page/, /Failed to load resource/] },
    ));
});
