import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, onBench, paste, SCREENS } from './bench-page.ts';

const words = text.cycle.trace;
const written = (page: Page) => page.getByLabel(words.title, { exact: true });
const follow = (page: Page) => page.getByRole('button', { name: words.follow, exact: true });
const fault = (page: Page) => page.locator('.trace-form .fault');
const energy = (page: Page) =>
  page.locator('[data-cycle=done] .cycle-readings [data-row=work_J] td').nth(1).textContent();
const marked = (page: Page): Promise<string> =>
  written(page).evaluate((box) => {
    const { value, selectionStart, selectionEnd } = box as HTMLTextAreaElement;
    return value.slice(selectionStart, selectionEnd);
  });

/** One stroke there and back: half a sine of 40 mm, 10 ms a moment. */
const strokeOf = (seconds: number): string => {
  const moments = Array.from({ length: 101 }, (_, i) => i / 100);
  const rows = moments.map((part) => `${part * seconds},${10 + 20 * (1 - Math.cos(2 * Math.PI * part))}`);
  return ['time_s,position_mm', ...rows].join('\n');
};

const told = async (page: Page) => (await page.locator('.cycle .warnings').textContent()) ?? '';
const dropOf = (reason: string) => Number(/drop of ([\d.]+)/.exec(reason)?.[1]);

async function onTrace(page: Page): Promise<void> {
  await page.getByRole('button', { name: text.chart.tabs.cycle, exact: true }).click();
  await page.getByRole('button', { name: text.cycle.motionLong.trace, exact: true }).click();
}

async function followed(page: Page, name: string): Promise<string | null> {
  await page.locator('.trace-note strong', { hasText: name }).waitFor();
  await expect.poll(() => energy(page)).toMatch(/^\d+\.\d+$/);
  await expect.poll(() => page.locator('.cycle-readings .stale').count()).toBe(0);
  return energy(page);
}

describe('the cycle along a trace', () => {
  it('is pasted, driven, and told to stay no longer than the page; the sine is still there', () =>
    onBench(async (page) => {
      await onTrace(page);
      expect(await page.locator('.trace-note').textContent()).toBe(words.none);
      await written(page).fill(strokeOf(0.5));
      await follow(page).click();
      const slow = await followed(page, words.pasted);
      expect(await page.locator('.trace-note').textContent()).toContain(
        words.summary(101, '0.50', '10.0 mm', '50.0 mm'),
      );
      expect(await page.locator('.trace-note').textContent()).toContain(words.visit);
      expect(await page.locator('.cycle-readings thead').textContent()).toContain(text.cycle.wholeTrace);
      for (const chart of ['time', 'position', 'speed'])
        await page.locator(`[data-chart=cycle-${chart}] .scatterlayer .trace`).nth(1).waitFor();
      await page.getByRole('button', { name: words.another, exact: true }).click();
      await written(page).fill(strokeOf(0.25));
      await follow(page).click();
      await page.locator('.trace-note', { hasText: '0.25 s' }).waitFor();
      // Twice as fast takes more work.
      await expect.poll(async () => Number(await energy(page))).toBeGreaterThan(Number(slow));
      await page.getByRole('button', { name: text.cycle.motionLong.sine, exact: true }).click();
      await page.getByLabel(text.cycle.frequency, { exact: true }).waitFor();
      expect(await page.locator('[data-chart=cycle-time]').count()).toBe(0);
      await expect.poll(() => page.locator('.cycle-readings thead').textContent()).toContain(text.cycle.lastCycle);
    }));

  it('that cannot be driven says why, and the run before stays, marked as such', () =>
    onBench(async (page) => {
      await onTrace(page);
      await written(page).fill(strokeOf(0.5));
      await follow(page).click();
      const good = await followed(page, words.pasted);
      await page.getByRole('button', { name: words.another, exact: true }).click();
      // 55 mm in a millisecond: no oil goes through a piston like that.
      await written(page).fill('time_s,position_mm\n0,5\n0.001,60\n0.002,5\n0.1,5');
      await follow(page).click();
      await page.locator('.cycle .warnings li').first().waitFor();
      expect(await page.locator('.cycle .warnings').textContent()).toContain('run before');
      expect(await page.locator('.cycle-readings [data-row=work_J] td.stale').count()).toBe(2);
      expect(await page.locator('.cycle-readings [data-row=work_J] td').nth(1).textContent()).toBe(good);
      await expect.poll(() => page.locator('[data-chart=cycle-speed] path.js-line').count()).toBe(2);
      await expect.poll(() => told(page)).toMatch(/ends at a drop of [\d.]+ bar.*absolute pressures there: .* bar/);
      expect(await told(page)).not.toContain('MPa');
      const inBars = dropOf(await told(page));
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      await expect.poll(() => told(page)).toMatch(/ends at a drop of [\d.]+ psi/);
      // Source: 1 bar = 14.50377 psi (NIST SP 811); four digits are told.
      expect(dropOf(await told(page)) / inBars / 14.50377).toBeCloseTo(1, 3);
      expect(await told(page)).not.toMatch(/\b(bar|MPa)\b/);
    }));

  it('that goes one way has no peak the other way', () =>
    onBench(async (page) => {
      await onTrace(page);
      await written(page).fill('time_s,position_mm\n0,10\n0.1,20\n0.2,35\n0.3,45');
      await follow(page).click();
      await followed(page, words.pasted);
      const peak = (way: string) => page.locator(`[data-row=${way}-peak] td`).nth(1).textContent();
      expect(Number(await peak('compression'))).toBeGreaterThan(0);
      expect(await peak('rebound')).toBe(text.readout.none);
      expect(await page.locator('[data-row^=hysteresis]').count()).toBe(0);
      // Gas is pressed together and stays so.
      expect(Number(await page.locator('[data-row=stored_J] td').nth(1).textContent())).toBeGreaterThan(0);
    }));

  it('comes out of a file, and a faulty one is told by line and column and marked in the text', () =>
    onBench(async (page) => {
      await onTrace(page);
      const file = (name: string, content: string) =>
        page
          .locator('[data-trace-file]')
          .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content, 'utf8') });
      await file('gravel.csv', 'time_s;position_mm\n0;12\n0,01;far\n0,02;13');
      await expect.poll(() => fault(page).textContent()).toContain('line 3, position_mm');
      expect(await marked(page)).toBe('0,01;far');
      await written(page).fill('time_s;position_mm\n0;12\n0,01;12,5\n0,01;13');
      expect(await fault(page).count()).toBe(0);
      await follow(page).click();
      await expect.poll(() => fault(page).textContent()).toContain('line 4, time_s');
      expect(await marked(page)).toBe('0,01;13');
      await written(page).fill('time;position\n0;12');
      await follow(page).click();
      await expect.poll(() => fault(page).textContent()).toContain('time_s or time_ms');
      await file('gravel.csv', strokeOf(0.4));
      await followed(page, 'gravel.csv');
      await page.getByRole('button', { name: words.another, exact: true }).click();
      await page.locator('.trace-form').evaluate((form, content) => {
        const files = new DataTransfer();
        files.items.add(new File([content], 'let-go.csv', { type: 'text/csv' }));
        for (const type of ['dragover', 'drop'])
          form.dispatchEvent(new DragEvent(type, { dataTransfer: files, bubbles: true, cancelable: true }));
      }, strokeOf(0.6));
      await followed(page, 'let-go.csv');
      expect(await page.locator('.drop-veil').count()).toBe(0);
      expect(await page.locator('dialog[open]').count()).toBe(0);
      await page.getByRole('button', { name: words.another, exact: true }).click();
      await written(page).fill('nothing of use');
      await follow(page).click();
      await fault(page).waitFor();
      expect(await page.locator('.trace-note strong').textContent()).toBe('let-go.csv');
      await page.getByRole('button', { name: words.cancel, exact: true }).click();
      expect(await written(page).count()).toBe(0);
    }));

  it('of 20,000 lines is told in place of filling the box, a fault by its line, and drawn with as many points as a chart can show', () =>
    onBench(async (page) => {
      // Beats of two sines, 5 ms a moment.
      const rows = Array.from({ length: 20_000 }, (_, i) => {
        const t = i / 200;
        return `${t.toFixed(3)},${(40 + 12 * Math.sin(7 * t) + 8 * Math.sin(17 * t)).toFixed(4)}`;
      });
      const lines = ['time_s,position_mm', ...rows];
      await onTrace(page);
      await paste(page, '.trace-form textarea', lines.with(14_999, '74.990,far').join('\n'));
      await expect.poll(() => page.locator('.long-trace p').textContent()).toBe(words.long(20_001));
      expect(await written(page).inputValue()).toBe('');
      expect(await written(page).isVisible()).toBe(false);
      await follow(page).click();
      await expect.poll(() => fault(page).textContent()).toContain('line 15000, position_mm');
      expect(await page.locator('.long-trace .faulty').textContent()).toBe('74.990,far');
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('button', { name: words.clear, exact: true }).click();
      await written(page).waitFor();
      await expect.poll(() => written(page).evaluate((box) => box === document.activeElement)).toBe(true);
      await paste(page, '.trace-form textarea', lines.join('\n'));
      await follow(page).click();
      await page.locator('.trace-note', { hasText: '20000 moments' }).waitFor();
      await expect.poll(() => energy(page), { timeout: 60_000 }).toMatch(/^\d+\.\d+$/);
      await page.locator('[data-chart=cycle-time] path.js-line').nth(1).waitFor();
      const drawn = await page
        .locator('[data-chart=cycle-time] .plot-board')
        .evaluate((board) =>
          (board as unknown as { data: { x: number[]; y: number[] }[] }).data.map(({ x, y }) => [
            x.length,
            Math.max(...y),
          ]),
        );
      expect(drawn).toHaveLength(2);
      for (const [points] of drawn) expect(points).toBeLessThanOrEqual(3000);
      // No peak is lost by it.
      const largest = Number(await page.locator('[data-row=largest] td').nth(1).textContent());
      expect(Math.abs(drawn[1][1] - largest)).toBeLessThanOrEqual(0.5);
    }));

  it.each(SCREENS)('is without barriers and keeps to the page at %i (%s)', (width, colorScheme) =>
    onBench(
      async (page) => {
        await onTrace(page);
        await written(page).fill('time_s,position_mm\n0,12\n0.01,x');
        await follow(page).click();
        await fault(page).waitFor();
        expect(await barriers(page)).toEqual([]);
        await written(page).fill(strokeOf(0.4));
        await follow(page).click();
        await followed(page, words.pasted);
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
    ),
  );
});
