/** The force at the speed cursor under other settings. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { speedsUpTo } from '../../src/ui/app/speeds.ts';
import { text } from '../../src/ui/text/en.ts';
import { barriers, demoText, force, onBench } from './bench-page.ts';
import { fetched, pngSize, readSvg, rows } from './export-page.ts';
import { box, FORK, onFork, showTab } from './fork-page.ts';
import { asSet, at, FORCE_PLAY_N, numberIn, solved, swept, WAYS } from './sweep-page.ts';

const words = text.sweep;
const slider = (page: Page) => page.getByRole('slider', { name: text.chart.cursor });

describe('the sweep of temperature', () => {
  it('has the forces of the solver at each temperature, in both directions', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      const speed = speedsUpTo(2)[20];
      await box(page, text.chart.cursor).first().fill(String(speed));
      for (const oilTemperature_degC of [-10, 0, 90]) {
        for (const [way, sign] of WAYS) {
          const shown = numberIn(await at(page, oilTemperature_degC, way).textContent());
          const wanted = solved(demoText(), { oilTemperature_degC }, sign * speed);
          expect(Math.abs(shown - wanted)).toBeLessThan(FORCE_PLAY_N);
        }
      }
    }));

  it('marks what is set with the force of the readout, as the cursor goes and as the oil warms', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      expect(await asSet(page).textContent()).toBe(await force(page));
      const [before, cold] = [await force(page), await at(page, 0).textContent()];
      await slider(page).focus();
      for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowRight');
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await asSet(page).textContent()).toBe(await force(page));
      expect(await at(page, 0).textContent()).not.toBe(cold);
      expect(await page.locator('.sweep-layer circle').count()).toBe(4);
      await box(page, text.damper.temperature).first().fill('0');
      await expect.poll(async () => (await asSet(page).textContent()) === (await at(page, 0).textContent())).toBe(true);
      expect(await page.locator('.set-line text').textContent()).toContain('0');
    }));

  it('follows an edit of the stack, and says where the viscosity is known', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      const before = numberIn(await at(page, 120).textContent());
      expect(await page.locator('.sweep > .hint').textContent()).toMatch(/40 °C to 100 °C/);
      await page.locator('[data-cell="0:thickness_mm"]').fill('0.35');
      await expect.poll(async () => numberIn(await at(page, 120).textContent())).toBeGreaterThan(before * 1.1);
      await expect.poll(() => page.locator('.sweep-numbers td.stale').count()).toBe(0);
    }));

  it('speaks imperial', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      const metric = numberIn(await at(page, 0).textContent());
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      expect(await page.locator('.sweep-numbers [data-at="0"] th').first().textContent()).toBe('32 °F');
      // One pound-force is 4.4482216 N (from memory, by definition of the pound and standard gravity).
      expect(numberIn(await at(page, 0).textContent()) * 4.4482216).toBeCloseTo(metric, -1);
      await expect.poll(() => page.locator('.plot-board').textContent()).toContain(words.temperatureAxis('°F'));
    }));

  it('leaves as SVG, PNG and CSV', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      const svg = await readSvg(page, (await fetched(page, 'chart', 'chart-svg')).bytes.toString());
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      const plain = svg.words.replaceAll('\u00a0', ' ');
      for (const each of [words.temperatureAxis('°C'), text.readout.title('0.50 m/s'), 'Walther'])
        expect(plain).toContain(each);
      const png = await fetched(page, 'chart', 'chart-png');
      expect(pngSize(png.bytes)).toEqual([svg.width * 2, svg.height * 2]);
      const table = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(table[0]).toContain('"Oil temperature, °C"');
      const cold =
        table
          .find((row) => row.startsWith('0,'))
          ?.split(',')
          .map(Number) ?? [];
      expect(cold).toHaveLength(5);
      expect(Math.round(cold[3])).toBe(numberIn(await at(page, 0).textContent()));
    }));

  it('tells when it cannot be solved, and leaves the rest of the bench alone', () =>
    onBench(async (page) => {
      await page.evaluate(() => {
        globalThis.Worker = class extends EventTarget {
          constructor() {
            super();
            throw new Error('no thread to be had');
          }
        } as unknown as typeof Worker;
      });
      await showTab(page, 'temperature');
      await page.locator('.sweep .warnings').waitFor();
      expect(await page.locator('.sweep .warnings').textContent()).toContain('no thread to be had');
      expect(await force(page)).toMatch(/^\d+$/);
    }));
});

const NEEDLE = text.adjusterOf('cartridge', 'base-needle');
const answer = (page: Page, id: string, way: 0 | 1 = 0) => page.locator(`[data-answer="${id}"] td`).nth(way);
const choose = (page: Page) => page.getByLabel(words.adjuster, { exact: true }).selectOption({ label: NEEDLE });

async function sweptNeedle(page: Page): Promise<void> {
  await swept(page, 'clicks');
  await choose(page);
  await expect.poll(() => page.locator('.sweep-numbers th').first().textContent()).toBe(words.clicksAxis(NEEDLE));
  await page.locator('[data-sweep=done]').waitFor();
  await expect.poll(() => page.locator('.sweep-numbers [data-at="20"]').count()).toBe(2);
}

describe('the sweep of clicks', () => {
  it('says that there is nothing to turn, and goes to where a needle is added', () =>
    onBench(async (page) => {
      await page.getByRole('button', { name: text.placeOf('monotube', 'pistonRebound').name, exact: true }).click();
      await showTab(page, 'clicks');
      expect(await page.locator('.no-adjusters').textContent()).toContain(words.noAdjusters);
      await page.getByRole('button', { name: words.addNeedle }).click();
      await page.locator('details[data-group=needle][open] > summary:focus').waitFor();
    }));

  it('lists the adjusters of the damper and has the forces of the solver at each click', () =>
    onFork(async (page) => {
      await swept(page, 'clicks');
      const names = await page.getByLabel(words.adjuster, { exact: true }).locator('option').allTextContents();
      expect(names).toEqual([text.adjusterOf('cartridge', 'needle'), NEEDLE]);
      await sweptNeedle(page);
      const speed = speedsUpTo(2)[20];
      await box(page, text.chart.cursor).first().fill(String(speed));
      for (const clicks of [0, 3, 20]) {
        for (const [way, sign] of WAYS) {
          const shown = numberIn(await at(page, clicks, way).textContent());
          const wanted = solved(FORK, { clicks: { 'base-needle': clicks } }, sign * speed);
          expect(Math.abs(shown - wanted)).toBeLessThan(FORCE_PLAY_N);
        }
      }
    }));

  it('marks the set click, and tells what one more does and how many do what the other build does', () =>
    onFork(async (page) => {
      await sweptNeedle(page);
      await box(page, text.chart.cursor).first().fill('0.05');
      await expect.poll(async () => (await at(page, 7).textContent()) === (await force(page))).toBe(true);
      expect(await answer(page, 'set').textContent()).toBe(await force(page));
      const closer = numberIn(await at(page, 6).textContent()) - numberIn(await at(page, 7).textContent());
      expect(closer).toBeGreaterThan(0);
      expect(await answer(page, 'closer').textContent()).toMatch(/^\+\d+ \(\+\d+ %\)$/);
      expect(Math.abs(Number.parseFloat((await answer(page, 'closer').textContent()) ?? '') - closer)).toBeLessThan(2);
      // Turned to as many clicks as are told, the build is as firm as the other.
      const clicks = Math.round(Number.parseFloat((await answer(page, 'as-stock').textContent()) ?? ''));
      const stock = numberIn(await page.locator('.sweep-numbers [data-at="10"] td').first().textContent());
      const near = [clicks - 1, clicks, clicks + 1].map(async (n) => numberIn(await at(page, n).textContent()));
      const [before, , after] = await Promise.all(near);
      expect(before).toBeGreaterThanOrEqual(stock);
      expect(after).toBeLessThanOrEqual(stock);
      await page.getByRole('button', { name: text.adjusters.opener(NEEDLE) }).click();
      await expect.poll(() => page.locator('.sweep-numbers [data-at="8"] td.as-set').count()).toBe(2);
      expect(await at(page, 8).textContent()).toBe(await force(page));
    }));

  it('leaves as SVG and CSV', () =>
    onFork(async (page) => {
      await sweptNeedle(page);
      const svg = await readSvg(page, (await fetched(page, 'chart', 'chart-svg')).bytes.toString());
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      expect(svg.words.replaceAll('\u00a0', ' ')).toContain(words.clicksAxis(NEEDLE));
      const table = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(table).toHaveLength(22);
      expect(table[0]).toContain(words.clicksAxis(NEEDLE));
    }));

  it.each([
    [1440, 'light'],
    [390, 'dark'],
  ] as const)('axe-core finds no barrier and nothing hangs over the edge (%i px, %s)', (width, colorScheme) =>
    onFork(
      async (page) => {
        await swept(page, 'clicks');
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
    ),
  );
});
