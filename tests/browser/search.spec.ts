import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { presentStacks } from '../../src/solver/index.ts';
import { searchWords as words } from '../../src/ui/text/search.ts';
import { plantedStudy } from '../helpers/search-studies.ts';
import { barriers, kept, SCREENS } from './bench-page.ts';
import {
  begin,
  inPhase,
  listed,
  onSearch,
  openSearch,
  percentOff,
  setEffort,
  startsDone,
  withoutReserves,
} from './search-page.ts';

const SHORT = { starts: 4, steps: 60, seed: 3, cores: 1 } as const;
const LONG = { starts: 40, steps: 4000, seed: 3, cores: 2 } as const;

const builds = async (page: Page): Promise<string[]> =>
  page
    .getByLabel(words.build, { exact: true })
    .evaluate((select) => [...(select as HTMLSelectElement).options].map(({ text }) => text));

describe('a search on the bench', () => {
  it('finds a planted stack within 2 %, previews it, makes it a build, and takes that back', () =>
    onSearch(async (page) => {
      await withoutReserves(page);
      await setEffort(page, { starts: 16, steps: 300, seed: 7, cores: 2 });
      await begin(page);
      await inPhase(page, 'finished');
      expect(await percentOff(page, 1)).toBeLessThan(2);
      await page.locator('[data-previewed="1"][data-solved=yes]').waitFor();
      await page.locator('[data-rank="2"] .make').focus();
      await page.locator('[data-previewed="2"][data-solved=yes]').waitFor();
      const before = await builds(page);
      await page.locator('[data-rank="1"] .make').click();
      const made = words.makeName('Planted', 1);
      await expect.poll(() => builds(page)).toEqual([...before, made]);
      await page.keyboard.press('Control+z');
      await expect.poll(() => builds(page)).toEqual(before);
    }));

  it('gives the same list with one worker, and with two and a reload in the middle', async () => {
    const lists: string[][] = [];
    await onSearch(async (page) => {
      await setEffort(page, SHORT);
      await begin(page);
      await inPhase(page, 'finished');
      lists.push(await listed(page));
    });
    await onSearch(async (page) => {
      await setEffort(page, { ...SHORT, cores: 2 });
      await kept(page);
      await begin(page);
      await expect.poll(() => startsDone(page), { timeout: 60_000 }).toBeGreaterThan(0);
      await page.reload();
      await inPhase(page, 'finished');
      expect(await startsDone(page)).toBe(SHORT.starts);
      expect(await page.getByLabel(words.starts, { exact: true }).inputValue()).toBe(String(SHORT.starts));
      lists.push(await listed(page));
    });
    expect(lists[0].length).toBeGreaterThan(0);
    expect(lists[1]).toEqual(lists[0]);
  });

  it('says how far the present stack is off, and asks for no more reserve than it has unless told to', () =>
    onSearch(async (page) => {
      await setEffort(page, SHORT);
      await begin(page);
      await inPhase(page, 'finished');
      const { project, request } = plantedStudy({}, 'auto');
      const { judgement, usualReserves } = presentStacks(project, request, 'auto');
      if (!judgement) throw new Error('the present stack does not solve');
      const said = async (): Promise<string> => (await page.locator('[data-present]').textContent()) ?? '';
      expect(await said()).toContain(`${judgement.rms_N.toFixed(0)} N`);
      expect(await said()).toContain(words.lifeAsked(usualReserves.minFatigueReserve.toFixed(2)));
      const near = Number.parseFloat((await page.locator('[data-rank="1"] [data-rms]').textContent()) ?? '');
      const share = Math.round(100 * (1 - near / judgement.rms_N));
      expect(await page.locator('[data-rank="1"] [data-against-now]').textContent()).toBe(words.nearer(`${share} %`));
      await page.getByLabel(words.reservesAsNow, { exact: true }).uncheck();
      await page.getByLabel(words.lifeReserve, { exact: true }).fill('40');
      await page.keyboard.press('Tab');
      await begin(page);
      await inPhase(page, 'finished');
      expect(await said()).toContain(words.lifeAsked('40.00'));
      const nothing = page.locator('.results .nothing');
      expect(await nothing.textContent()).toContain(words.nothing);
      expect(await nothing.textContent()).toMatch(/\d+ stacks? came near/);
      await page.getByRole('button', { name: words.loosen }).click();
      await page.locator('.found-card').first().waitFor();
      expect(await page.getByLabel(words.lifeReserve, { exact: true }).inputValue()).toBe('');
    }));

  it('shows before it is begun what is wanted beside what is there, and follows the page', () =>
    onSearch(async (page) => {
      const { project, request } = plantedStudy({}, 'auto');
      const { judgement } = presentStacks(project, request, 'auto');
      if (!judgement) throw new Error('the present stack does not solve');
      const present = page.locator('[data-present]');
      const key = page.locator('.search-chart .chart-key');
      await expect.poll(() => present.textContent()).toContain(`${judgement.rms_N.toFixed(0)} N`);
      const { name } = project.builds[0];
      expect(await key.textContent()).toContain(words.chartNow(name));
      await page.locator('.search-chart .scatterlayer path.js-line').first().waitFor();
      expect(await page.locator('.search-chart .scatterlayer path.point').count()).toBe(request.aim.length);

      await page.getByLabel(words.aim, { exact: true }).selectOption({ label: words.aimKinds.build(name) });
      await expect.poll(() => present.locator('[data-rms]').textContent()).toMatch(/^0 N/);
      const ticked = page.getByRole('checkbox', { checked: true });
      await page.locator('.search-side').locator(ticked).first().uncheck();
      await expect.poll(() => page.locator('.results .nothing').textContent()).toContain(words.noStacks);
      expect(await page.locator('.search-chart').count()).toBe(0);
    }));

  it('pauses, goes on, and stops; what was found stays, through a reload too', () =>
    onSearch(async (page) => {
      await setEffort(page, SHORT);
      await begin(page);
      await inPhase(page, 'finished');
      const list = await listed(page);
      await setEffort(page, LONG);
      await begin(page);
      await inPhase(page, 'running');
      expect(await listed(page)).toEqual([]);
      await page.getByRole('button', { name: words.pause, exact: true }).click();
      await inPhase(page, 'paused');
      await page.getByRole('button', { name: words.resume, exact: true }).click();
      await inPhase(page, 'running');
      await page.getByRole('button', { name: words.stop, exact: true }).click();
      await inPhase(page, 'stopped');
      await setEffort(page, SHORT);
      await begin(page);
      await inPhase(page, 'finished');
      expect(await listed(page)).toEqual(list);
      await kept(page);
      await page.reload();
      await inPhase(page, 'finished');
      expect(await listed(page)).toEqual(list);
    }));

  it('goes on with more starts of the same question without running the first again', () =>
    onSearch(async (page) => {
      await setEffort(page, SHORT);
      await begin(page);
      await inPhase(page, 'finished');
      await setEffort(page, { ...SHORT, starts: SHORT.starts + 1 });
      await begin(page);
      await expect.poll(() => startsDone(page)).toBeGreaterThanOrEqual(SHORT.starts);
      await inPhase(page, 'finished');
      expect(await startsDone(page)).toBe(SHORT.starts + 1);
    }));

  it('says which starts failed, and tries them again', () =>
    onSearch(
      async (page) => {
        await setEffort(page, { ...SHORT, starts: 1 });
        await begin(page);
        await inPhase(page, 'finished');
        // The solver that reads the question is there; those of the starts that follow are not.
        await page.route('**/solver.worker*', (route) => route.abort());
        await setEffort(page, { ...SHORT, starts: 3 });
        await begin(page);
        await page.locator('.run-bar [data-failed="2"]').waitFor();
        await inPhase(page, 'finished');
        await page.unroute('**/solver.worker*');
        await page.getByRole('button', { name: words.retry }).click();
        await expect.poll(() => startsDone(page), { timeout: 60_000 }).toBe(3);
        expect(await page.locator('[data-failed]').count()).toBe(0);
      },
      { expected: [/solver\.worker/, /ERR_FAILED/] },
    ));

  it('refuses what has no answer, in words', () =>
    onSearch(async (page) => {
      await page.getByLabel('Piston, compression').uncheck();
      await begin(page);
      await inPhase(page, 'refused');
      expect(await page.locator('.run-bar [role=status]').textContent()).toContain(words.noStacks);
      await page.getByLabel('Piston, rebound').check();
      await begin(page);
      await expect.poll(() => page.locator('.run-bar [role=status]').textContent()).toContain(words.aimOtherWay);
    }));

  it('searches for the curve of another build, changed, out of a list of sizes', () =>
    onSearch(async (page) => {
      await withoutReserves(page);
      const [first] = await builds(page);
      await page.getByLabel(words.aim, { exact: true }).selectOption({ label: words.aimKinds.change(first) });
      await page.getByLabel(words.change, { exact: true }).fill('-10');
      await page.getByRole('button', { name: words.sources.catalogue, exact: true }).click();
      await page.getByLabel(words.diameters, { exact: true }).fill('34, 30, 26, 22, 18');
      await page.getByLabel(words.thicknesses, { exact: true }).fill('0.1, 0.2');
      await setEffort(page, { ...SHORT, starts: 1 });
      await begin(page);
      await inPhase(page, 'finished');
      expect(await page.locator('.results > header .hint').textContent()).toContain('-10 % above 1 m/s');
      await page.getByLabel(words.diameters, { exact: true }).fill('34, none');
      await page.locator('[data-code]').first().waitFor();
      expect(await page.locator('.found-card').count()).toBeGreaterThan(0);
    }));

  it.each(SCREENS)('breaks no rule of reach at %s pixels, %s', (width, colorScheme) =>
    onSearch(
      async (page) => {
        await withoutReserves(page);
        await setEffort(page, { ...SHORT, starts: 1, steps: 20 });
        await begin(page);
        await inPhase(page, 'finished');
        await page.locator('.picking summary').first().click();
        await page.locator('.group-of-fields summary').click();
        expect(await barriers(page)).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(wide).toBeLessThanOrEqual(0);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );

  it('shows the search of the open project alone', () =>
    onSearch(async (page) => {
      await setEffort(page, { ...SHORT, starts: 1, steps: 20 });
      await begin(page);
      await inPhase(page, 'finished');
      await page.keyboard.press('Control+z');
      await page.locator('[data-drawer-total="0"]').waitFor();
      await inPhase(page, 'idle');
      expect(await listed(page)).toEqual([]);
      await openSearch(page);
    }));
});
