import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { measuredWords as words } from '../../src/ui/text/measured.ts';
import { barriers, drop, kept, onBench, settled } from './bench-page.ts';
import { notice, rows } from './export-page.ts';

/** Invented: speeds in mm/s, forces in N with the gas in them, a decimal comma, one point far off. */
const SPEEDS = [-1200, -900, -600, -400, -250, -150, -80, 80, 150, 250, 400, 600, 900, 1200];
const forceAt = (speed: number): number => 280 + 60 * Math.sign(speed) + speed * 0.9 + (speed === 400 ? 500 : 0);
const written = (value: number): string => value.toFixed(1).replace('.', ',');
const FILE = `Invented bench;run 7\nNo;Shaft speed;Force\n;mm/s;N\n${SPEEDS.map(
  (speed, i) => `${i + 1};${written(speed)};${written(forceAt(speed))}`,
).join('\n')}\n`;

const give = (page: Page, content: string, name = 'run 7.csv'): Promise<void> =>
  page
    .locator('[data-measured-file]')
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(content, 'utf8') });

const dialog = (page: Page) => page.locator('.measured-view');
const keep = (page: Page) => dialog(page).locator('.primary');
const dots = (page: Page): Promise<number[]> =>
  page
    .locator('.plot-board')
    .evaluate((board) =>
      (board as unknown as { data: { mode: string; x: number[] }[] }).data
        .filter(({ mode }) => mode === 'markers')
        .map(({ x }) => x.length),
    );

describe('a file of a test bench', () => {
  it('is read, kept with the build, drawn with its outlier, undone, and there after a reload', () =>
    onBench(async (page) => {
      await give(page, FILE);
      expect(await dialog(page).locator('[data-holds="1"]').inputValue()).toBe('speed');
      expect(await dialog(page).locator('[data-unit="1"]').inputValue()).toBe('mm/s');
      expect(await dialog(page).locator('[data-outliers]').getAttribute('data-outliers')).toBe('1');
      expect(await barriers(page)).toEqual([]);
      await keep(page).click();
      await dialog(page).waitFor({ state: 'detached' });
      await expect.poll(() => dots(page)).toEqual([13, 1]);
      expect(await page.locator('[data-rms=compression]').textContent()).toMatch(/^\d+ N \(\d+ %\)$/);
      expect(await barriers(page)).toEqual([]);
      await notice(page).getByRole('button').first().click();
      await expect.poll(() => dots(page)).toEqual([]);
      await page.keyboard.press('Control+Shift+Z');
      await expect.poll(() => dots(page)).toEqual([13, 1]);
      await kept(page);
      await page.reload();
      await settled(page);
      await expect.poll(() => dots(page)).toEqual([13, 1]);
    }));

  it('is hidden and shown on the chart, and goes out as a table with residuals', () =>
    onBench(async (page) => {
      await give(page, FILE);
      await keep(page).click();
      await expect.poll(() => dots(page)).toEqual([13, 1]);
      await page.getByRole('button', { name: words.shownLong.hidden }).click();
      await expect.poll(() => dots(page)).toEqual([]);
      await page.getByRole('button', { name: `Export: ${words.export}` }).click();
      const arriving = page.waitForEvent('download');
      await page.locator('[data-export=measured-csv]').click();
      const stream = await (await arriving).createReadStream();
      const chunks: Buffer[] = [];
      for await (const chunk of stream) chunks.push(chunk as Buffer);
      const [head, first, ...rest] = rows(Buffer.concat(chunks));
      expect(head).toContain(words.csv.residual);
      expect(rest).toHaveLength(13);
      const [, speed, measured, build, residual] = first.split(',').map(Number);
      expect([speed, measured]).toEqual([-1.2, -860]);
      expect(residual).toBeCloseTo(measured - build, 2);
    }));

  it('stands beside the build at the speed cursor, and goes where its points go', () =>
    onBench(async (page) => {
      await give(page, FILE);
      await keep(page).click();
      const group = (way: string) => page.locator(`[data-way=${way}] tbody[data-group^=measured]`);
      await group('rebound').waitFor();
      const read = async (way: string, row: string): Promise<string> =>
        (await group(way).locator(`[data-row=${row}] td`).nth(1).textContent()) ?? '';
      const newtons = async (way: string, row: string): Promise<number> =>
        Number((await read(way, row)).replace('−', '-'));
      // The file is straight between 400 and 600 mm/s in rebound, and the cursor stands at 500.
      const measured = await newtons('rebound', 'measured');
      expect(Math.abs(measured - forceAt(-500))).toBeLessThan(8);
      const computed = await newtons('rebound', 'computed');
      expect(await page.locator('[data-way=rebound] [data-row=force] td').nth(1).textContent()).toBe(
        await read('rebound', 'computed'),
      );
      expect(Math.abs((await newtons('rebound', 'residual')) - (measured - computed))).toBeLessThanOrEqual(1);
      const percent = Number.parseFloat((await read('rebound', 'residual-share')).replace('−', '-'));
      expect(Math.abs(percent - (100 * (measured - computed)) / Math.abs(computed))).toBeLessThan(2);
      // The other build was not measured.
      expect(await group('rebound').locator('[data-row=measured] td').first().textContent()).toBe('–');
      expect(await barriers(page, '.readout')).toEqual([]);
      await page.getByRole('slider', { name: text.chart.cursor }).focus();
      await page.keyboard.press('Home');
      await expect.poll(() => read('rebound', 'measured')).toBe(words.readout.notMeasured);
      await page.getByRole('button', { name: words.shownLong.hidden }).click();
      await group('rebound').waitFor({ state: 'detached' });
    }));

  it('says what is wrong with it at line and column, and what it wants to be told', () =>
    onBench(async (page) => {
      await give(page, 'speed;force [N]\n0,1;200\n0,2;300\n0,3;high\n0,4;500\n');
      await dialog(page).locator('[data-code="measured.unit"]').waitFor();
      expect(await keep(page).isDisabled()).toBe(true);
      await dialog(page).locator('[data-unit="0"]').selectOption('m/s');
      const fault = dialog(page).locator('[data-code="measured.number"]');
      expect(await fault.textContent()).toContain('line 4, column 2 (force)');
      expect(await keep(page).isDisabled()).toBe(true);
      await page.keyboard.press('Escape');
      await dialog(page).waitFor({ state: 'detached' });
    }));

  it('is suspected while a sign is the wrong way round, by drop as well', () =>
    onBench(async (page) => {
      await drop(page, 'run 8.csv', FILE);
      await dialog(page).waitFor();
      expect(await dialog(page).locator('[data-suspicion]').count()).toBe(0);
      await dialog(page).getByLabel(words.dialog.forceSign).selectOption('rebound');
      await dialog(page).locator('[data-suspicion=drives]').waitFor();
      expect(await keep(page).isDisabled()).toBe(false);
      await dialog(page).getByLabel(words.dialog.speedSign).selectOption('rebound');
      await expect.poll(() => dialog(page).locator('[data-suspicion]').count()).toBe(0);
    }));

  it('gives its speed by position over time', () =>
    onBench(async (page) => {
      const samples = Array.from({ length: 400 }, (_, i) => i / 200);
      const x = (t: number): number => 25 * Math.sin(2 * Math.PI * t);
      const F = (t: number): number => 280 + 900 * 0.025 * 2 * Math.PI * Math.cos(2 * Math.PI * t);
      const lines = samples.map((t) => `${t},${x(t).toFixed(4)},${F(t).toFixed(2)}`);
      await give(page, `time [s],displacement [mm],load [N]\n${lines.join('\n')}\n`);
      await dialog(page).getByLabel('Points', { exact: true }).selectOption('peaks');
      expect(await dialog(page).locator('.reading-result').textContent()).toContain(words.steps['peak-points']);
      await keep(page).click();
      await expect.poll(async () => (await dots(page)).length).toBeGreaterThan(0);
      expect((await dots(page))[0]).toBeLessThanOrEqual(6);
    }));

  it.each([
    [390, 'light'],
    [1024, 'dark'],
  ] as const)('breaks no rule of reach at %s pixels, %s', (width, colorScheme) =>
    onBench(
      async (page) => {
        await give(page, FILE);
        await dialog(page).waitFor();
        expect(await barriers(page)).toEqual([]);
      },
      { viewport: { width, height: 844 }, colorScheme },
    ),
  );
});
