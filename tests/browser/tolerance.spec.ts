/** How the force scatters when the damper is built: the band, what it comes from, and tolerances of one's own. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { decodeProject } from '../../src/model/codec.ts';
import { toleranceForBuild } from '../../src/solver/index.ts';
import { speedsUpTo } from '../../src/ui/app/speeds.ts';
import { text } from '../../src/ui/text/en.ts';
import { barriers, cell, demoText, force, onBench, plotted, pressIn, SCREENS, settled } from './bench-page.ts';
import { choose, fetched, menu, pngSize, readSvg, rows } from './export-page.ts';
import { box, showTab } from './fork-page.ts';

const words = text.tolerance;
const SAMPLES = '32';

const state = (page: Page) => page.locator('.tolerance').getAttribute('data-tolerances');
const samplesDone = async (page: Page) =>
  Number.parseInt(/\d+/.exec((await page.locator('.tolerance-progress p').textContent()) ?? '')?.[0] ?? '-1', 10);
const verdict = (page: Page) => page.locator('.tolerance-verdict').textContent();
const names = (page: Page) => page.locator('.share-table tbody th').allTextContents();
const shareOf = async (page: Page, name: string, column = 'cursor') =>
  Number.parseFloat((await page.locator(`[data-row="${name}"] [data-share=${column}]`).textContent()) ?? '');
const field = (page: Page, name: keyof typeof words.names) =>
  page.getByLabel(words.label(words.names[name]), { exact: true });
const quick = (page: Page) => page.getByRole('button', { name: text.theoryShort['small-deflection'] }).click();
const solved = (page: Page) => expect.poll(() => state(page), { timeout: 60_000 }).toBe('solved');

/** Few samples of the quick theory: the page does not know how good its numbers are. */
async function opened(page: Page): Promise<void> {
  await quick(page);
  await settled(page);
  await showTab(page, 'tolerance');
  await page.getByLabel(words.samples, { exact: true }).selectOption(SAMPLES);
}

const onTolerance = (test: (page: Page) => Promise<void>, options = {}) =>
  onBench(async (page) => {
    await opened(page);
    await solved(page);
    await test(page);
  }, options);

/** As the command line has it, at the speeds of the page. */
function direct() {
  const read = decodeProject(demoText());
  if (!read.ok) throw new Error('the demo is no project');
  const speeds_m_s = speedsUpTo(2).filter((_, i) => i === 0 || i % 2 === 1);
  const question = { speeds_m_s, theory: 'small-deflection', seed: 1, samples: Number(SAMPLES) } as const;
  return toleranceForBuild(read.document, read.document.builds[1].id, question);
}

describe('the scatter of a built damper', () => {
  it('comes early, narrows down, can be stopped, and goes on where it was', () =>
    onBench(async (page) => {
      await showTab(page, 'tolerance');
      await expect.poll(() => page.locator('.share-table').count(), { timeout: 60_000 }).toBe(1);
      const button = (name: string) => page.locator('.tolerance').getByRole('button', { name });
      await button(words.stop).click();
      const stopped = await samplesDone(page);
      expect(stopped).toBeGreaterThan(0);
      expect(stopped).toBeLessThan(128);
      expect(await page.locator('.tolerance-progress').textContent()).toContain(words.stopped(stopped, 128));
      await page.getByLabel(words.samples, { exact: true }).selectOption(SAMPLES);
      expect(await state(page)).not.toBe('solving');
      if (stopped < Number(SAMPLES)) await button(words.goOn).click();
      await solved(page);
      expect(await samplesDone(page)).toBe(Number(SAMPLES));
    }));

  it('is that of the solver: the same samples from the same seed, however many workers there were', () =>
    onTolerance(async (page) => {
      const [heads, ...body] = (await rows((await fetched(page, 'chart', 'chart-csv')).bytes)).map((row) =>
        row.split(','),
      );
      const { speeds_m_s, spreads } = direct();
      // A head holds a comma of its own before its unit, in quotes; the first five columns have no other.
      expect(heads.join()).toContain(words.columns.deviation);
      const compression = body.filter(([v]) => Number(v) > 0);
      expect(compression).toHaveLength(speeds_m_s.length);
      compression.forEach(([, , p5, , p95], i) => {
        expect(Number(p5)).toBeCloseTo(spreads[i]?.p5 ?? Number.NaN, 1);
        expect(Number(p95)).toBeCloseTo(spreads[i]?.p95 ?? Number.NaN, 1);
      });
      await box(page, words.seed).fill('2');
      await solved(page);
      const other = await rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(other.length).toBe(body.length + 1);
      expect(other[1].split(',')[2]).not.toBe(body[0][2]);
    }));

  it('says which tolerance matters most, sorted at the cursor or over the range, in either direction', () =>
    onTolerance(async (page) => {
      const [most] = await names(page);
      expect(await verdict(page)).toContain(most);
      expect(await verdict(page)).toContain(words.where('0.50 m/s', text.chart.compression));
      await page.getByRole('button', { name: words.sorts.range }).click();
      const [first] = await names(page);
      expect(await verdict(page)).toContain(words.whereAll('2.00 m/s', text.chart.compression));
      expect(await verdict(page)).toContain(first);
      const own = await verdict(page);
      await page.locator('.charts').getByRole('button', { name: text.way.rebound, exact: true }).click();
      await expect.poll(() => verdict(page)).not.toBe(own);
      expect(await verdict(page)).toContain(text.chart.rebound);
      expect(await state(page)).toBe('solved');
    }));

  it('takes tolerances of one’s own, which are kept in the project and can be taken back', () =>
    onTolerance(async (page) => {
      expect(await shareOf(page, 'seat')).toBeGreaterThan(0);
      expect(await field(page, 'seat').getAttribute('placeholder')).toBe('0.01');
      const entry = page.locator('.tolerance-entry[data-tolerance=seat]');
      expect(await entry.textContent()).toContain(words.common);
      await field(page, 'seat').fill('0');
      await expect.poll(() => state(page)).toBe('stale');
      expect(await page.locator('.tolerance-answer').textContent()).toContain(words.stale);
      await solved(page);
      expect(await shareOf(page, 'seat')).toBe(0);
      expect(await entry.textContent()).toContain(words.own('0.01 mm'));
      await field(page, 'gas').fill('-1');
      await expect.poll(() => page.locator('.tolerance-form [role=alert]').count()).toBe(1);
      await pressIn(field(page, 'gas'), 'Escape');
      await page.keyboard.press('Control+z');
      await expect.poll(() => shareOf(page, 'seat')).toBeGreaterThan(0);
      expect(await field(page, 'seat').inputValue()).toBe('');
    }));

  it('lets an edit have its curve first, and is solved anew after it', () =>
    onBench(async (page) => {
      await showTab(page, 'tolerance');
      await expect.poll(() => page.locator('.share-table').count(), { timeout: 60_000 }).toBe(1);
      const before = await force(page);
      await cell(page, 0, 'thickness_mm').fill('0.3');
      await expect.poll(() => force(page)).not.toBe(before);
      // The band is of the build as it was until the samples are there again.
      expect(await state(page)).toBe('stale');
      await expect.poll(() => state(page), { timeout: 60_000 }).toBe('solving');
    }));
});

describe('the band of the tolerances on the force chart', () => {
  const hatched = (page: Page) =>
    page
      .locator('.plot-board')
      .evaluate((board) =>
        (board as unknown as { data: { fillpattern?: { shape: string } }[] }).data.map((t) => t.fillpattern?.shape),
      );
  const showBand = (page: Page, which: 'shown' | 'tolerance' | 'hidden') =>
    page.locator('.charts').getByRole('button', { name: text.chart.bandLong[which] }).click();

  it('is hatched beside the tinted one of the coefficients, says so in words, and leads to what it comes from', () =>
    onTolerance(async (page) => {
      await showTab(page, 'force');
      await showBand(page, 'tolerance');
      await expect.poll(async () => (await hatched(page)).filter((shape) => shape === '/').length).toBe(2);
      expect(await page.locator('.hatch-note').textContent()).toContain(words.samplesOf(32));
      const [heads] = await rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(heads).toContain(words.columns.bandHigh);
      await choose(page, 'chart', 'chart-svg');
      await showBand(page, 'shown');
      await expect.poll(async () => (await hatched(page)).filter((shape) => shape === '/').length).toBe(0);
      expect(await page.locator('.hatch-note').count()).toBe(0);
      await showBand(page, 'tolerance');
      await page.getByRole('button', { name: words.open }).click();
      expect(await page.locator('.share-table').count()).toBe(1);
    }));

  it('stays with the chosen build, and is not drawn for one that is hidden', () =>
    onTolerance(async (page) => {
      await showTab(page, 'force');
      await showBand(page, 'tolerance');
      await expect.poll(async () => (await plotted(page)).length).toBe(6);
      await page.getByRole('switch', { name: text.builds.show('Softer on square edges') }).click();
      await expect.poll(async () => (await hatched(page)).filter(Boolean).length).toBe(0);
    }));
});

describe('the tolerances on paper, on every screen and by keys', () => {
  it('are saved as pictures', () =>
    onTolerance(async (page) => {
      const svg = await readSvg(page, (await fetched(page, 'chart', 'tolerance-svg')).bytes.toString('utf8'));
      const [most] = await names(page);
      expect(svg.words).toContain(most);
      expect(svg.words).toContain(words.pictureAxis);
      expect(svg.acting).toBe(0);
      expect(svg.outside).toEqual([]);
      const [width, height] = pngSize((await fetched(page, 'chart', 'tolerance-png')).bytes);
      expect(width).toBe(2000);
      expect(height).toBeGreaterThan(600);
      await menu(page, 'chart').click();
    }));

  it.each(SCREENS)('have no barriers at %s px, %s', (width, colorScheme) =>
    onTolerance(
      async (page) => {
        expect(await barriers(page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );

  it('are set and read by the keyboard alone', () =>
    onTolerance(async (page) => {
      await field(page, 'thickness').focus();
      await page.keyboard.type('0.02');
      await solved(page);
      expect(await field(page, 'thickness').inputValue()).toBe('0.02');
      await expect.poll(async () => (await names(page))[0]).toBe(words.names.thickness);
      await page.getByRole('slider', { name: text.chart.cursor }).focus();
      const before = await page.locator('.share-table').textContent();
      await page.keyboard.press('Home');
      for (let n = 0; n < 20; n++) await page.keyboard.press('ArrowRight');
      await expect.poll(() => page.locator('.share-table').textContent()).not.toBe(before);
    }));
});
