/** The section of a stack that waves: crest and trough side by side, with their numbers, on every screen. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, pressIn, SCREENS } from './bench-page.ts';
import { fetched, readSvg, rows } from './export-page.ts';
import { showTab } from './fork-page.ts';
import { cursor, onFourPorts, onWaves } from './wave-page.ts';

const words = text.sectionParts;
const caption = (page: Page, name: RegExp) => page.locator('.cut-name').filter({ hasText: name });
const CREST = new RegExp(`^${text.wave.crest}`);
const TROUGH = new RegExp(`^${text.wave.trough}`);

const figure = (page: Page, part: string, name: string) =>
  page.locator(`.parts [data-of="${part}"] td span`).filter({ hasText: name }).locator('b').textContent();
const leading = (said: string | null): number => Number.parseFloat(said ?? '');

/** How high the rim of the face shim stands over the hub, of the right half and of the left [px]. */
const rims = (page: Page): Promise<number[]> =>
  page.locator('.drawing [data-part=shim-0]').evaluateAll((paths) =>
    paths.map((path) => {
      const points = [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)];
      const under = points.slice(0, points.length / 2);
      return Number(under[0][2]) - Number(under[under.length - 1][2]);
    }),
  );

describe('the section of a stack that waves', () => {
  it('is cut through the crest on the left and the trough on the right, as high as their numbers', () =>
    onWaves(async (page) => {
      const crest = leading(await figure(page, 'shim-0', text.wave.at.crest(words.rimLift)));
      const trough = leading(await figure(page, 'shim-0', text.wave.at.trough(words.rimLift)));
      const mean = leading(await figure(page, 'shim-0', text.wave.ofMean(words.rimLift)));
      expect(crest).toBeGreaterThan(1.5 * trough);
      // One harmonic: the mean stands in the middle.
      expect((crest + trough) / 2).toBeCloseTo(mean, 2);
      const [right, left] = await rims(page);
      expect(left / right / (crest / trough)).toBeCloseTo(1, 1);
      expect(await caption(page, CREST).textContent()).toContain(`${crest.toFixed(3)} mm`);
      expect(await caption(page, TROUGH).textContent()).toContain(`${trough.toFixed(3)} mm`);
      expect(await page.locator('.title-block').textContent()).toContain(
        `${text.wave.ofMean(text.section.cells.lift)}${mean.toFixed(3)} mm`,
      );
    }));

  it('tells opening, gaps and contacts of both, and carries the mean opening to the oil', () =>
    onWaves(async (page) => {
      const opens = async (name: (of: string) => string) => leading(await figure(page, 'seat', name(words.opens)));
      const [mean, crest, trough] = [
        await opens(text.wave.ofMean),
        await opens(text.wave.at.crest),
        await opens(text.wave.at.trough),
      ];
      expect(crest).toBeGreaterThan(mean);
      expect(mean).toBeGreaterThan(trough);
      expect(leading(await figure(page, 'oil-shims', text.wave.ofMean(words.opens)))).toBe(mean);
      expect(leading(await page.locator('[data-dimension=opening] text').textContent())).toBe(trough);
      expect(await figure(page, 'gap-seat-0', text.wave.at.crest(words.widest))).toContain('⌀');
      expect(await figure(page, 'shim-0', text.wave.at.trough(words.touches))).toContain('⌀');
    }));

  it('shades the crest, where the stress is known, and leaves the trough without', () =>
    onWaves(async (page) => {
      const fills = await page
        .locator('.drawing [data-part=shim-0]')
        .evaluateAll((paths) => paths.map((path) => getComputedStyle(path).fill));
      expect(fills[0]).not.toContain('url');
      expect(fills[1]).toContain('stress-0');
      expect(await page.locator('.legend').textContent()).toContain(text.wave.legend('MPa'));
    }));

  it('has a wave a port from the first where the ports open part of the ring', () =>
    onFourPorts(async (page) => {
      expect(await caption(page, CREST).locator('.name').textContent()).toBe(text.wave.crestOf(4));
      const [right, left] = await rims(page);
      expect(left).toBeGreaterThan(right);
    }));

  it('is one round section again where the rim does not wave', () =>
    onWaves(async (page) => {
      await pressIn(cursor(page), 'Home');
      for (let i = 0; i < 5; i++) await pressIn(cursor(page), 'ArrowRight');
      await expect.poll(() => page.locator('.cut-name').count()).toBe(0);
      const [right, left] = await rims(page);
      expect(left).toBe(right);
      expect(await page.locator('.title-block').textContent()).not.toContain(text.wave.ofMean(''));
    }));

  it('goes into the picture file with both halves named, and to the large view', () =>
    onWaves(async (page) => {
      const file = await readSvg(page, (await fetched(page, 'section', 'section-svg')).bytes.toString('utf8'));
      expect(file.words).toContain(text.wave.trough);
      expect(file.words).toContain(await caption(page, CREST).locator('.name').textContent());
      await page.getByRole('button', { name: text.sectionView.large }).click();
      await page.locator('dialog .cut-name').first().waitFor();
      const [right, left] = await rims(page);
      expect(left).toBeGreaterThan(1.5 * right);
    }));

  it.each(SCREENS)('shows both halves and no barrier at %i pixels, %s', (width, colorScheme) =>
    onWaves(
      async (page) => {
        expect(await caption(page, CREST).count()).toBe(1);
        expect(await caption(page, TROUGH).count()).toBe(1);
        expect(await rims(page)).toHaveLength(2);
        expect(await barriers(page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );
});

describe('the shims of a stack that waves', () => {
  it('have trough to crest round the mean, on the chart, in its table and at the cursor', () =>
    onWaves(async (page) => {
      const told = await Promise.all(
        [text.wave.at.trough, text.wave.at.crest].map((at) => figure(page, 'shim-0', at(words.rimLift))),
      );
      const [trough, crest] = told.map((each) => leading(each).toFixed(3));
      await showTab(page, 'shims');
      expect(await page.locator('.shim-bars [data-wave="1"]').textContent()).toBe(text.shims.fromTo(trough, crest));
      expect(await page.locator('.shim-bars thead').textContent()).toContain(text.shims.meanLift);
      expect(await page.locator('.shim-hint').textContent()).toContain(text.shims.wavesNote);
      await expect.poll(() => page.locator('.plot-board .ytitle').textContent()).toBe(text.shims.axisWaves('mm'));
      expect(await page.locator('.plot-board path.js-fill').count()).toBeGreaterThan(0);
      const [heads, ...lines] = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(heads).toContain(text.wave.trough.toLowerCase());
      expect(lines.at(-1)).toContain(crest.replace(/0+$/, ''));
      const picture = await readSvg(page, (await fetched(page, 'chart', 'shims-svg')).bytes.toString('utf8'));
      for (const told of [trough, crest, text.shims.meanLift]) expect(picture.words).toContain(told);
      await page.getByRole('button', { name: text.shims.quantityLong.stress }).click();
      await expect.poll(() => page.locator('.plot-board .ytitle').textContent()).toBe(text.shims.axis.stress('MPa'));
      expect(await page.locator('.plot-board path.js-fill').count()).toBe(0);
    }));
});
