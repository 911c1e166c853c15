/** The force at the speed cursor over the place in the stroke. */
import { describe, expect, it } from 'vitest';
import { speedsUpTo } from '../../src/ui/app/speeds.ts';
import { text } from '../../src/ui/text/en.ts';
import { force, onBench } from './bench-page.ts';
import { fetched, rows } from './export-page.ts';
import { box, FORK, onFork } from './fork-page.ts';
import { asSet, at, FORCE_PLAY_N, numberIn, solved, swept, WAYS } from './sweep-page.ts';

const words = text.sweep;

describe('the sweep over the stroke', () => {
  it('has the forces of the solver at each place, and the hydraulic stop at the end', () =>
    onFork(async (page) => {
      await swept(page, 'position');
      const speed = speedsUpTo(2)[20];
      await box(page, text.chart.cursor).first().fill(String(speed));
      for (const place_mm of [0, 120, 240]) {
        for (const [way, sign] of WAYS) {
          const shown = numberIn(await at(page, place_mm, way).textContent());
          const wanted = solved(FORK, {}, sign * speed, place_mm / 1000);
          expect(Math.abs(shown - wanted)).toBeLessThan(FORCE_PLAY_N);
        }
      }
      // The plunger is in its cup over the last 25 of 240 mm: far more than the gas adds over the half stroke before.
      const [middle, before, end] = await Promise.all(
        [120, 210, 240].map(async (place) => numberIn(await at(page, place).textContent())),
      );
      expect(end - before).toBeGreaterThan(2 * (before - middle));
      expect(await page.locator('.sweep > .hint').textContent()).toContain(words.positionStop.compression('25 mm'));
    }));

  it('marks the place that the bench looks at, and leaves as CSV', () =>
    onBench(async (page) => {
      await swept(page, 'position');
      expect(await asSet(page).textContent()).toBe(await force(page));
      await box(page, text.chart.position).first().fill('10');
      await expect.poll(() => page.locator('.set-line text').textContent()).toContain('10.0 mm');
      await expect.poll(async () => (await asSet(page).textContent()) === (await force(page))).toBe(true);
      expect(await page.locator('.sweep-layer circle').count()).toBe(4);
      const table = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(table[0]).toContain(words.positionAxis('mm'));
      expect(table.length).toBeGreaterThan(17);
    }));
});
