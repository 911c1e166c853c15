import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { measuredWords } from '../../src/ui/text/measured.ts';
import { normals } from '../helpers/normals.ts';
import { barriers, demoText, kept, onBench, plotted, settled } from './bench-page.ts';

const words = measuredWords.fit;
const SPEEDS = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.2, 1.5].flatMap((v) => [v, -v]);
const HIDDEN = 0.76;

/** What a bench would write of the second build of the demo, had its jets a coefficient that nobody tells the page. */
function benchFile(): string {
  const project = JSON.parse(demoText()) as Project;
  const options = { speeds_m_s: SPEEDS, theory: 'auto', coefficients: { jetDischarge: HIDDEN } } as const;
  const { points } = forceCurveForBuild(project, project.builds[1].id, options);
  const scatter = normals(11, SPEEDS.length);
  const rows = points.map((point, i) => {
    if (point.status !== 'converged') throw new Error(point.reason);
    return `${SPEEDS[i]},${(point.force_N + 4 * scatter[i]).toFixed(2)}`;
  });
  return `speed [m/s],force [N]\n${rows.join('\n')}\n`;
}

async function readBench(page: Page): Promise<void> {
  const buffer = Buffer.from(benchFile(), 'utf8');
  await page.locator('[data-measured-file]').setInputFiles({ name: 'hidden.csv', mimeType: 'text/csv', buffer });
  await page.locator('.measured-view .primary').click();
  await page.locator('[data-measurement]').waitFor();
}

const start = (page: Page) => page.getByRole('button', { name: words.start, exact: true });
const cells = (page: Page, name: string): Promise<string[]> =>
  page.locator(`[data-coefficient=${name}] td`).allTextContents();
const numbers = (text: string): number[] => (text.match(/\d+\.\d+/g) ?? []).map(Number);

describe('a fit on the bench', () => {
  it('finds the hidden coefficient, draws its curve beside the physical one, and is taken back', () =>
    onBench(async (page) => {
      await readBench(page);
      const before = (await plotted(page)).length;
      await start(page).click();
      await page.locator('.fit-table').waitFor({ timeout: 60_000 });
      const [physical, fitted, interval] = await cells(page, 'jetDischarge');
      expect(physical).toBe('0.700');
      const [low, high] = numbers(interval);
      expect(low).toBeLessThanOrEqual(HIDDEN);
      expect(high).toBeGreaterThanOrEqual(HIDDEN);
      expect(Math.abs(Number(fitted) - HIDDEN)).toBeLessThan(0.03);
      expect(await page.locator('.fit').textContent()).toContain(words.untold([words.coefficient.sharpEdgeDischarge]));
      // The top bar stays while the page scrolls, and would cover half of a box.
      await page.evaluate(() => scrollTo(0, 0));
      expect(await barriers(page)).toEqual([]);
      // Two directions of one fitted curve; the physical lines stay.
      await expect.poll(async () => (await plotted(page)).length, { timeout: 20_000 }).toBe(before + 2);
      await page.getByRole('button', { name: words.curveChoice.hidden }).click();
      await expect.poll(async () => (await plotted(page)).length).toBe(before);
      await kept(page);
      await page.reload();
      await settled(page);
      expect((await cells(page, 'jetDischarge'))[1]).toBe(fitted);
      await page.getByRole('button', { name: words.remove }).click();
      await page.locator('.fit-table').waitFor({ state: 'detached' });
    }));

  it('changes what is ticked alone; a fit again is one step of undo, and remembers its coefficients', () =>
    onBench(async (page) => {
      await readBench(page);
      const tick = (name: 'jetDischarge' | 'frictionFactor') =>
        page.locator(`[data-choice=${name}] input[type=checkbox]`);
      const rows = (): Promise<(string | null)[]> =>
        page
          .locator('[data-coefficient]')
          .evaluateAll((each) => each.map((row) => row.getAttribute('data-coefficient')));
      await tick('jetDischarge').waitFor();
      expect(await page.locator('[data-choice=jetDischarge]').textContent()).toMatch(
        /0\.700.*0\.600 to 0\.800.*textbook/,
      );
      expect(await page.locator('[data-choice=compressionSeatShift_m] input').isChecked()).toBe(false);
      for (const box of await page.locator('.fit-choices input').all()) await box.uncheck();
      expect(await start(page).isDisabled()).toBe(true);
      await tick('jetDischarge').check();
      await page.evaluate(() => scrollTo(0, 0));
      expect(await barriers(page)).toEqual([]);
      await start(page).click();
      await page.locator('.fit-table').waitFor({ timeout: 60_000 });
      expect(await rows()).toEqual(['jetDischarge']);
      const first = await cells(page, 'jetDischarge');
      await page.locator('.fit-picker summary').click();
      await tick('frictionFactor').check();
      await page.getByRole('button', { name: words.again }).click();
      await expect.poll(rows, { timeout: 60_000 }).toEqual(['jetDischarge', 'frictionFactor']);
      await page.keyboard.press('Control+z');
      await expect.poll(rows).toEqual(['jetDischarge']);
      expect(await cells(page, 'jetDischarge')).toEqual(first);
      await kept(page);
      await page.reload();
      await settled(page);
      await page.locator('.fit-picker').waitFor();
      expect(await tick('jetDischarge').isChecked()).toBe(true);
      expect(await page.locator('.fit-choices input:checked').count()).toBe(1);
      await page.locator('.fit-picker summary').click();
      await page.getByRole('button', { name: words.usual }).click();
      expect(await page.locator('.fit-choices input:checked').count()).toBe(8);
    }));

  it('stops when it is asked to, and leaves nothing behind', () =>
    onBench(async (page) => {
      await readBench(page);
      // As soon as it stands there: a quick machine has fitted before a hand has come from outside the page.
      await page.evaluate(() => {
        const stopAtOnce = (): void => document.querySelector<HTMLElement>('.fit-running button')?.click();
        new MutationObserver(stopAtOnce).observe(document.body, { childList: true, subtree: true });
      });
      await start(page).click();
      await start(page).waitFor();
      expect(await page.locator('.fit-table').count()).toBe(0);
    }));
});
