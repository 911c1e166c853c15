import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { cell, force, kept, plotted, settled } from './bench-page.ts';
import { box, numberOf, onFork, place, reading, showTab, undo } from './fork-page.ts';

describe('chamber pressures', () => {
  it('stand against gas and air release; where a chamber is held it is marked, with the gas it would need', () =>
    onFork(async (page) => {
      await showTab(page, 'pressures');
      // One direction at a time: chosen at the chart, it is chosen in the drawing too.
      await page.getByRole('group', { name: text.chart.way }).getByRole('button', { name: text.way.rebound }).click();
      expect(await place(page, 'pistonRebound').getAttribute('aria-pressed')).toBe('true');
      await page.locator('[data-level=gas]').waitFor();
      await page.locator('[data-level=airRelease]').waitFor();
      expect(await page.locator('.onsets [data-mark]').count()).toBe(0);
      expect(await reading(page, 'margin', 'rebound').textContent()).toMatch(/^\d/);
      // Its air has no pressure of its own at full extension, as the notes of the demo say.
      await box(page, text.chart.position).fill('0');
      await page.locator('.onsets [data-mark^=compressionChamber]').first().waitFor();
      expect(await reading(page, 'margin', 'rebound').textContent()).toContain('held');
      expect(await numberOf(page, 'gas-needed', 'rebound')).toBeGreaterThan(0);
      expect(await numberOf(page, 'gas', 'rebound')).toBe(0);
      expect(await page.locator('.warnings').textContent()).toContain(text.chart.airMark);
      await box(page, text.chart.position).fill('');
      await expect.poll(() => page.locator('.onsets [data-mark]').count()).toBe(0);
    }));
});

describe('the force chart', () => {
  it('leaves the force of the gas out on request, in line and readout, and remembers it', () =>
    onFork(async (page) => {
      const [whole, gas] = [await numberOf(page, 'force'), await numberOf(page, 'gas-force')];
      const lines = await plotted(page);
      expect(gas).toBeGreaterThan(0);
      await page.getByRole('button', { name: text.chart.gasForceLong.subtracted }).click();
      await expect.poll(async () => Math.abs((await numberOf(page, 'force')) - (whole - gas))).toBeLessThanOrEqual(1);
      await expect.poll(() => plotted(page)).not.toEqual(lines);
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await page.locator('[data-row=force] th').first().textContent()).toContain(text.readout.forceWithoutGas);
    }));

  it('shows the band of the coefficients, solved apart and only when it is wanted', () =>
    onFork(async (page) => {
      const workers = page.workers().length;
      const plain = await plotted(page);
      await page.getByRole('button', { name: text.chart.bandLong.shown }).click();
      await expect.poll(async () => (await plotted(page)).length).toBe(plain.length + 4);
      expect(page.workers()).toHaveLength(workers + 1);
      // The areas lie under the lines, and the lines stay what they were.
      expect((await plotted(page)).slice(4)).toEqual(plain);
      const [low, high] = ((await reading(page, 'band').textContent()) ?? '').split(' to ').map(Number);
      const at = await numberOf(page, 'force');
      expect(low).toBeLessThan(at);
      expect(high).toBeGreaterThan(at);
      expect(Object.values(text.readout.coefficient)).toContain(await reading(page, 'band-from').textContent());
      await cell(page, 0, 'count').fill('4');
      await settled(page);
      await expect.poll(async () => (await plotted(page)).length).toBe(plain.length + 4);
      await page.getByRole('button', { name: text.chart.bandLong.hidden }).click();
      await expect.poll(async () => (await plotted(page)).length).toBe(plain.length);
    }));

  it('is solved at the oil temperature and at the place in the stroke that stand beside the speeds', () =>
    onFork(async (page) => {
      const [warm, gas] = [await force(page), await reading(page, 'gas').textContent()];
      await box(page, text.damper.temperature).fill('0');
      await expect.poll(() => force(page)).not.toBe(warm);
      await undo(page);
      await expect.poll(() => force(page)).toBe(warm);
      await box(page, text.chart.position).fill('200');
      await expect.poll(() => reading(page, 'gas').textContent()).not.toBe(gas);
      await box(page, text.chart.position).fill('241');
      await page.locator('.conditions .fault').waitFor();
      // The plunger of the stop is in its cup over the last 25 of 240 mm.
      expect(await page.locator('[data-row=stop]').count()).toBe(0);
      await box(page, text.chart.position).fill('235');
      await expect.poll(() => page.locator('[data-way=compression] [data-row=stop]').count()).toBe(1);
      expect(await numberOf(page, 'stop')).toBeGreaterThan(0);
    }));
});

describe('the cycle', () => {
  const cycle = (page: Page, row: string) => page.locator(`.cycle-readings [data-row="${row}"] td`).nth(1);
  const driven = (page: Page) => page.locator('[data-cycle=done]').waitFor();

  it('draws a loop over position and one over speed for each build, and reads energy and heat off it', () =>
    onFork(async (page) => {
      await showTab(page, 'cycle');
      await expect.poll(() => cycle(page, 'work_J').textContent()).toMatch(/^\d+\.\d+$/);
      await driven(page);
      const loops = page.locator('.plot.loop path.js-line');
      await expect.poll(() => loops.count()).toBe(4);
      // pi times 50 mm times 2 Hz.
      expect(await page.locator('.peak-speed').textContent()).toBe(text.cycle.peakSpeed('0.31 m/s'));
      const [work, heat] = await Promise.all(
        ['work_J', 'heat'].map(async (row) => Number(await cycle(page, row).textContent())),
      );
      // Twice a second all of the work becomes heat.
      expect(heat / work).toBeCloseTo(2, 1);
      // Half of what both ways reach; oil that compresses carries less while it speeds up.
      expect(await page.locator('[data-row=hysteresis-compression] th').textContent()).toBe(
        text.cycle.hysteresis.compression('0.16 m/s'),
      );
      expect(Number((await cycle(page, 'hysteresis-compression').textContent())?.replace('−', '-'))).toBeLessThan(0);
      for (const chamber of ['reservoir', 'compression', 'rebound']) {
        const [lowest, highest] = ((await cycle(page, `pressure-${chamber}`).textContent()) ?? '')
          .split(' to ')
          .map(Number);
        expect(highest).toBeGreaterThan(lowest);
      }
      // The integrator allows 100 Pa a step.
      const stepError_bar = Number(await cycle(page, 'step-error').textContent());
      expect(stepError_bar).toBeGreaterThan(0);
      expect(stepError_bar).toBeLessThanOrEqual(0.001);
      expect(Number(await cycle(page, 'unaccounted').textContent())).toBeLessThan(0.01 * work);
      expect(Number(await cycle(page, 'steps').textContent())).toBeGreaterThan(100);
      await box(page, text.cycle.frequency).fill('4');
      await expect.poll(async () => Number(await cycle(page, 'work_J').textContent())).toBeGreaterThan(work);
      await box(page, text.cycle.stroke).fill('300');
      await page.locator('.conditions .fault').waitFor();
      await showTab(page, 'force');
      await settled(page);
    }));

  it('follows an edit', () =>
    onFork(async (page) => {
      await showTab(page, 'cycle');
      await expect.poll(() => cycle(page, 'work_J').textContent()).toMatch(/^\d+\.\d+$/);
      const before = await cycle(page, 'work_J').textContent();
      const name = text.adjusterOf('cartridge', 'needle');
      await page.getByRole('button', { name: text.adjusters.closer(name) }).click();
      // Until the new run is there, the loops and numbers of the one before stay.
      expect(await page.locator('.plot.loop path.js-line').count()).toBe(4);
      expect(await cycle(page, 'work_J').textContent()).toMatch(/^\d+\.\d+$/);
      await expect.poll(() => cycle(page, 'work_J').textContent()).not.toBe(before);
      await expect.poll(() => page.locator('.cycle-readings .stale').count()).toBe(0);
    }));
});
