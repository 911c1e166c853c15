import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, ENDS, onBench, settled } from './bench-page.ts';

const words = text.cycle;
const at = (page: Page) => page.getByLabel(words.hysteresisAt, { exact: true });
const row = (page: Page, way: 'compression' | 'rebound') => page.locator(`[data-row=hysteresis-${way}]`);
const heading = (page: Page, way: 'compression' | 'rebound' = 'compression') =>
  row(page, way).locator('th').textContent();
const cellOf = (page: Page, way: 'compression' | 'rebound') => row(page, way).locator('td').nth(1).textContent();
const numberOf = async (page: Page, way: 'compression' | 'rebound') =>
  Number(((await cellOf(page, way)) ?? '').replace('−', '-'));
const gaps = (page: Page) => page.locator('.gaps p').allTextContents();

async function onCycle(page: Page): Promise<void> {
  await page.getByRole('button', { name: text.chart.tabs.cycle, exact: true }).click();
  await expect.poll(() => page.locator('.cycle-readings [data-row=work_J] td').nth(1).textContent()).toMatch(/^\d/);
}

interface Drawn {
  readonly x: number[];
  readonly y: number[];
}

/** The loops over speed and then their marks, as the charts library was given them. */
const drawn = (page: Page): Promise<Drawn[]> =>
  page
    .locator('[data-chart=cycle-speed] .plot-board')
    .evaluate((board) => (board as unknown as { data: Drawn[] }).data.map(({ x, y }) => ({ x, y })));

/** By hand off the drawn loop: force while the speed goes away from 0 through `v`, less that on the way back. */
function gapAt({ x, y }: Drawn, v: number): number {
  const forces = { up: Number.NaN, back: Number.NaN };
  for (let k = 1; k < x.length; k++) {
    const [a, b] = [Math.abs(x[k - 1]), Math.abs(x[k])];
    const isPassed = Math.sign(x[k]) === Math.sign(v) && a < Math.abs(v) !== b < Math.abs(v);
    if (isPassed) forces[b > a ? 'up' : 'back'] = y[k - 1] + ((Math.abs(v) - a) / (b - a)) * (y[k] - y[k - 1]);
  }
  return forces.up - forces.back;
}

describe('the hysteresis of a cycle', () => {
  it('is read at the speed of the person, marked on the loop, and remembered', () =>
    onBench(async (page) => {
      await onCycle(page);
      // pi times 50 mm times 2 Hz, halved.
      expect(await heading(page)).toBe(words.hysteresis.compression('0.16 m/s'));
      expect(await at(page).inputValue()).toBe('');
      const half = await cellOf(page, 'compression');
      await at(page).fill('0.05');
      await expect.poll(() => heading(page)).toBe(words.hysteresis.compression('0.05 m/s'));
      await expect.poll(() => cellOf(page, 'compression')).toMatch(/^−\d+$/);
      expect(await cellOf(page, 'compression')).not.toBe(half);
      await expect.poll(async () => (await drawn(page)).at(3)?.x).toEqual([0.05, 0.05, -0.05, -0.05]);
      const [, loop, , marks] = await drawn(page);
      expect(Math.abs((await numberOf(page, 'compression')) - gapAt(loop, 0.05))).toBeLessThanOrEqual(0.6);
      expect(Math.abs((await numberOf(page, 'rebound')) - gapAt(loop, -0.05))).toBeLessThanOrEqual(0.6);
      expect(marks.y[0] - marks.y[1]).toBeCloseTo(gapAt(loop, 0.05), 6);
      await page.reload();
      await settled(page);
      await onCycle(page);
      expect(await at(page).inputValue()).toBe('0.05');
      await expect.poll(() => numberOf(page, 'compression')).toBeLessThan(0);
      await at(page).fill('');
      await expect.poll(() => heading(page)).toBe(words.hysteresis.compression('0.16 m/s'));
      expect(await cellOf(page, 'compression')).toBe(half);
    }));

  it('is told not to be there where the stroke never gets so fast, in the units of the person', () =>
    onBench(async (page) => {
      await onCycle(page);
      await at(page).fill('1');
      await expect
        .poll(() => gaps(page))
        .toEqual([
          words.noHysteresis.beyond('1 m/s', 'compression', '0.31 m/s'),
          words.noHysteresis.beyond('1 m/s', 'rebound', '0.31 m/s'),
        ]);
      expect(await cellOf(page, 'compression')).toBe(text.readout.none);
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      // 1 m/s and pi times 0.1 m/s over 0.0254 m.
      await expect.poll(() => heading(page)).toBe(words.hysteresis.compression('39.37 in/s'));
      expect((await gaps(page))[0]).toBe(words.noHysteresis.beyond('39.37 in/s', 'compression', '12.4 in/s'));
      await at(page).fill('9');
      await expect.poll(() => gaps(page)).toEqual([]);
      await expect.poll(() => numberOf(page, 'rebound')).toBeGreaterThan(0);
      await at(page).fill('500');
      await page.locator('.loop-readings .fault').waitFor();
      expect(await heading(page)).toBe(words.hysteresis.compression('9 in/s'));
    }));

  it('of a trace is told not to be there where the speed is passed more often', () =>
    onBench(async (page) => {
      await onCycle(page);
      await page.getByRole('button', { name: words.motionLong.trace, exact: true }).click();
      const moments = Array.from({ length: 201 }, (_, i) => i / 100);
      const rows = moments.map((part) => `${part / 2},${10 + 20 * (1 - Math.cos(2 * Math.PI * part))}`);
      await page.getByLabel(words.trace.title, { exact: true }).fill(['time_s,position_mm', ...rows].join('\n'));
      await page.getByRole('button', { name: words.trace.follow, exact: true }).click();
      await at(page).fill('0.1');
      await expect
        .poll(() => gaps(page))
        .toEqual((['compression', 'rebound'] as const).map((way) => words.noHysteresis.often('0.1 m/s', way)));
      expect(await cellOf(page, 'rebound')).toBe(text.readout.none);
    }));

  it.each(ENDS)('has no barrier and keeps to the page at %i (%s)', (width, colorScheme) =>
    onBench(
      async (page) => {
        await onCycle(page);
        await at(page).fill('1');
        await expect.poll(() => gaps(page)).toHaveLength(2);
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
    ),
  );
});
