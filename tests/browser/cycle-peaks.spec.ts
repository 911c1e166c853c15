/** The peak-velocity plot: force at the peak speed of strokes from slow to fast. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { decodeProject } from '../../src/model/codec.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { text } from '../../src/ui/text/en.ts';
import { fetched, pngSize, readSvg, rows } from './export-page.ts';
import { box, FORK, onFork, showTab, undo } from './fork-page.ts';

const words = text.cycle.peaks;
const numberIn = (written: string | null): number => Number((written ?? '').replace('−', '-'));
const motion = (page: Page, which: keyof typeof text.cycle.motionLong) =>
  page.getByRole('button', { name: text.cycle.motionLong[which], exact: true }).click();
/** The cell of the build on show, the second of the demo's two. */
const peak = (page: Page, frequency: number, way: 'compression' | 'rebound') =>
  page.locator(`.cycle [data-way=${way}] [data-frequency="${frequency}"] td`).nth(1);
const done = async (page: Page, frequency: number): Promise<void> => {
  await peak(page, frequency, 'rebound').waitFor();
  await page.locator('[data-cycle=done]').waitFor();
};

/** The marks that the charts library was given, row by row. */
const forms = (page: Page): Promise<(string | undefined)[]> =>
  page
    .locator('[data-chart=cycle-peaks] .plot-board')
    .evaluate((board) =>
      (board as unknown as { data: { mode: string; marker?: { symbol: string } }[] }).data
        .filter(({ mode }) => mode === 'markers')
        .map(({ marker }) => marker?.symbol),
    );

/** The curve without lag, straight from the solver on this machine. */
function steady(speed_m_s: number): number {
  const read = decodeProject(FORK);
  if (!read.ok) throw new Error('the demo is no project');
  const curve = forceCurveForBuild(read.document, read.document.builds[1].id, {
    speeds_m_s: [speed_m_s],
    theory: 'auto',
  });
  const [point] = curve.points.filter(({ shaftSpeed_m_s }) => shaftSpeed_m_s > 0);
  if (point?.status !== 'converged') throw new Error('not solved');
  return point.force_N;
}

describe('the peaks of the cycle', () => {
  it('end at the peak of the stroke that is set, begin at the force without lag, and follow an edit', () =>
    onFork(async (page) => {
      await showTab(page, 'cycle');
      await page.locator('[data-row=compression-peak] td:not(.stale)').nth(1).waitFor();
      const set = await page.locator('[data-row=compression-peak] td').nth(1).textContent();
      await motion(page, 'peaks');
      await done(page, 2);
      expect(await peak(page, 2, 'compression').textContent()).toBe(set);
      expect(await page.locator('.cycle [data-way=rebound] [data-frequency]').count()).toBe(9);
      // 50 mm at 0.04 Hz: next to nothing to compress, so that only the sampling of the stroke is left.
      const slow = numberIn(await peak(page, 0.04, 'compression').textContent());
      expect(Math.abs(slow - steady(Math.PI * 0.05 * 0.04))).toBeLessThan(3);
      // Two lines and two rows of marks a build.
      await expect.poll(() => page.locator('[data-chart=cycle-peaks] .scatterlayer .trace').count()).toBe(8);
      // Each build by a form of its own, on the chart and at the head of its column.
      expect(await forms(page)).toEqual(['circle-open', 'circle-open', 'square-open', 'square-open']);
      const heads = page.locator('.cycle [data-way=rebound] thead .sample-mark');
      expect(new Set(await heads.evaluateAll((marks) => marks.map((mark) => mark.getAttribute('d')))).size).toBe(2);
      await box(page, text.cycle.frequency).fill('4');
      await done(page, 4);
      expect(numberIn(await peak(page, 4, 'rebound').textContent())).toBeLessThan(0);
      await undo(page);
    }));

  it('leave as SVG, PNG and CSV', () =>
    onFork(async (page) => {
      await showTab(page, 'cycle');
      await motion(page, 'peaks');
      await done(page, 2);
      const svg = await readSvg(page, (await fetched(page, 'chart', 'peaks-svg')).bytes.toString());
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      expect(svg.words.replaceAll('\u00a0', ' ')).toContain(words.axis('m/s'));
      expect(pngSize((await fetched(page, 'chart', 'peaks-png')).bytes)).toEqual([svg.width * 2, svg.height * 2]);
      const table = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(table).toHaveLength(10);
      expect(table[0]).toContain(words.axis('m/s'));
    }));
});
