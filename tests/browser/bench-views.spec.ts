import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, diameters, drawnLines, force, onBench } from './bench-page.ts';

const titleBlock = (page: Page) => page.locator('.title-block').textContent();
const face = (page: Page) => page.locator('.drawing [data-row="0"]').first().getAttribute('d');

describe('the speed cursor', () => {
  it('moves readout, drawing and title block together, by keys', () =>
    onBench(async (page) => {
      const [before, bent] = [await force(page), await face(page)];
      await page.getByRole('slider').focus();
      await page.keyboard.press('Shift+ArrowRight');
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await face(page)).not.toBe(bent);
      const speed = (await page.getByRole('slider').getAttribute('aria-valuetext')) as string;
      expect(await titleBlock(page)).toContain(speed);
      expect(await page.locator('.readout h2').textContent()).toContain(speed);
    }));

  it('follows the pointer over the chart and the number in its box', () =>
    onBench(async (page) => {
      const box = await page.locator('.cursor-layer').boundingBox();
      if (!box) throw new Error('no chart');
      await page.mouse.click(box.x + box.width * 0.8, box.y + box.height / 2);
      const at = Number(await page.getByRole('slider').getAttribute('aria-valuenow'));
      expect(at).toBeGreaterThan(1.3);
      expect(at).toBeLessThan(1.7);
      await page.getByLabel(text.chart.cursor).first().fill('300 mm/s');
      await expect.poll(() => page.getByRole('slider').getAttribute('aria-valuenow')).toBe('0.3');
    }));

  it('a faster shaft bends the stack further', () =>
    onBench(async (page) => {
      const cells = page.locator('.title-block div').filter({ hasText: text.section.cells.lift });
      const lift = async (): Promise<number> => Number.parseFloat((await cells.locator('dd').textContent()) ?? '');
      const slow = await lift();
      await page.getByLabel(text.chart.cursor).first().fill('1.5');
      await expect.poll(lift).toBeGreaterThan(slow);
    }));
});

describe('views', () => {
  it('rebound has its own stack, drawing and table', () =>
    onBench(async (page) => {
      const [start, drawn] = [await diameters(page), await face(page)];
      await page.getByRole('button', { name: text.placeOf('monotube', 'pistonRebound').name, exact: true }).click();
      await expect.poll(() => diameters(page)).not.toEqual(start);
      expect(await face(page)).not.toBe(drawn);
      await page.locator('svg[data-state=bent]').waitFor();
    }));

  it('each chart draws lines of its own', () =>
    onBench(async (page) => {
      const seen = new Set<string>();
      const { cycle: _driven, temperature: _warmed, clicks: _turned, effects: _changed, ...others } = text.chart.tabs;
      const { tolerance: _scattered, position: _moved, ...tabs } = others;
      for (const name of Object.values(tabs)) {
        await page.getByRole('button', { name, exact: true }).click();
        await expect.poll(async () => seen.has((await drawnLines(page)).join())).toBe(false);
        seen.add((await drawnLines(page)).join());
      }
      expect(seen.size).toBe(5);
    }));

  it('a shim and its row are marked together', () =>
    onBench(async (page) => {
      await cell(page, 1, 'count').focus();
      expect(await page.locator('.shim.active').first().getAttribute('data-row')).toBe('1');
      const shim = page.locator('.drawing [data-row="0"]').first();
      const box = await shim.boundingBox();
      if (!box) throw new Error('no shim');
      // A bent shim does not fill its box: its clamped end is at the lower left.
      await shim.hover({ position: { x: 8, y: box.height - 5 } });
      expect(await page.locator('.shims tr.active').textContent()).toContain(text.stack.roles.face);
    }));

  it('imperial units reach boxes, axes and readout, and leave the numbers as they were', () =>
    onBench(async (page) => {
      const metric = await force(page);
      const before = Number(await cell(page, 0, 'outerDiameter_mm').inputValue());
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      // One inch is 25.4 mm by definition.
      expect(Number(await cell(page, 0, 'outerDiameter_mm').inputValue()) * 25.4).toBeCloseTo(before, 2);
      expect(await page.locator('.plot-board').textContent()).toMatch(/lbf[\s\S]*in\/s|in\/s[\s\S]*lbf/);
      // One pound-force is 4.4482216 N (from memory, by definition of the pound and standard gravity).
      expect(Number(await force(page)) * 4.4482216).toBeCloseTo(Number(metric), -1);
      await cell(page, 0, 'outerDiameter_mm').fill('0.2');
      expect(await page.locator('.shims .fault').textContent()).toMatch(/clamp diameter 0\.\d+ in/);
      await page.getByRole('button', { name: text.bar.familyLong.metric }).click();
      expect(await cell(page, 0, 'outerDiameter_mm').inputValue()).toBe(String(before));
      expect(await force(page)).toBe(metric);
    }));

  it('light and dark are chosen by hand and remembered', () =>
    onBench(async (page) => {
      const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
      const before = await ground();
      await page.locator('.bar .icon').last().click();
      expect(await ground()).not.toBe(before);
      const chosen = await ground();
      await page.reload();
      await page.getByRole('main').waitFor();
      expect(await ground()).toBe(chosen);
    }));

  it.each([390, 768, 1024, 1440])('nothing hangs over the edge at %i pixels', (width) =>
    onBench(
      async (page) => {
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 } },
    ),
  );

  it.each([1181, 1280, 1400, 1440])(
    'the shim table keeps to its sheet and shows its numbers whole, at %i pixels',
    (width) =>
      onBench(
        async (page) => {
          const table = page.locator('table.shims');
          const { sheet, wide, cut } = await table.evaluate((each) => ({
            sheet: each.closest('section')?.clientWidth,
            wide: each.scrollWidth,
            cut: [...each.querySelectorAll('input')].filter((box) => box.scrollWidth > box.clientWidth).length,
          }));
          expect({ wide, cut }).toEqual({ wide: sheet, cut: 0 });
        },
        { viewport: { width, height: 800 } },
      ),
  );
});
