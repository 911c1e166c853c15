/** The force at the speed cursor under other settings. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { decodeProject } from '../../src/model/codec.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { solvedSpeeds, speedsUpTo } from '../../src/ui/app/speeds.ts';
import { text } from '../../src/ui/text/en.ts';
import { barriers, demoText, force, onBench, SCREENS } from './bench-page.ts';
import { fetched, pngSize, readSvg, rows } from './export-page.ts';
import { box, showTab } from './fork-page.ts';

const words = text.sweep;
const numberIn = (written: string | null): number => Number((written ?? '').replace('−', '-'));

async function swept(page: Page, tab: 'temperature'): Promise<void> {
  await showTab(page, tab);
  await page.locator('[data-sweep=done] .plot-board .scatterlayer .trace').first().waitFor();
  await page.locator('.sweep-numbers summary').click();
}

/** The cell of the build on show, the second of the demo's two. */
const at = (page: Page, place: number, way: 'compression' | 'rebound' = 'compression') =>
  page.locator(`.sweep-numbers [data-way=${way}] [data-at="${place}"] td`).nth(1);
const asSet = (page: Page) => page.locator('.sweep-numbers [data-way=compression] td.as-set').nth(1);
const slider = (page: Page) => page.getByRole('slider', { name: text.chart.cursor });

/** Straight from the solver, on this machine, for the oil at a temperature. */
function solved(temperature_degC: number, speed_m_s: number): number {
  const read = decodeProject(demoText());
  if (!read.ok) throw new Error('the demo is no project');
  const { document } = read;
  const warmed = { ...document, fluid: { ...document.fluid, temperature_degC } };
  const theory = 'large-deflection';
  const curve = forceCurveForBuild(warmed, document.builds[1].id, { speeds_m_s: solvedSpeeds(2), theory });
  const point = curve.points.find(({ shaftSpeed_m_s }) => shaftSpeed_m_s === speed_m_s);
  if (point?.status !== 'converged') throw new Error('not solved');
  return point.force_N;
}

describe('the sweep of temperature', () => {
  it('has the forces of the solver at each temperature, in both directions', () =>
    onBench(async (page) => {
      await swept(page, 'temperature');
      const speed = speedsUpTo(2)[20];
      await box(page, text.chart.cursor).first().fill(String(speed));
      // A speed is read to the millimetre a second, so the force to a newton or two.
      for (const temperature of [-10, 0, 90]) {
        for (const [way, sign] of [['compression', 1] as const, ['rebound', -1] as const]) {
          await expect.poll(async () => numberIn(await at(page, temperature, way).textContent())).not.toBeNaN();
          const shown = numberIn(await at(page, temperature, way).textContent());
          expect(Math.abs(shown - solved(temperature, sign * speed))).toBeLessThan(3);
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

  it.each(SCREENS)('axe-core finds no barrier and nothing hangs over the edge (%i px, %s)', (width, colorScheme) =>
    onBench(
      async (page) => {
        await swept(page, 'temperature');
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
    ),
  );
});
