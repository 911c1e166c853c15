import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { force, onBench, plotted, pressIn } from './bench-page.ts';
import { onFork } from './fork-page.ts';

const { damper, stack, besides, material } = text;
const openAll = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const each of document.querySelectorAll<HTMLDetailsElement>('details.group-of-fields')) each.open = true;
  });

/**
 * One box of each kind: what is typed, and what it comes to in the unit of the box. By hand: 1 in = 25.4 mm,
 * 1 lbf = 4.448 N, 1 psi = 0.06895 bar, 50 °F = 10 °C, 1 g/mL = 1000 kg/m³, 1 lbf/in = 0.17513 N/mm, 1 lb = 0.45359 kg.
 */
const TYPED: readonly (readonly [string, string, string, number])[] = [
  ['length', damper.travel, '3 in', 76.2],
  ['area', damper.portArea, '15 + 14.5', 29.5],
  ['count', damper.ports, '2*2', 4],
  ['force', damper.friction, '5 lbf', 22.241],
  ['gas pressure', damper.gasPressure, '200 psi', 13.79],
  ['volume', damper.gasVolume, '0.07 L', 70],
  ['density', damper.density, '0.85 g/mL', 850],
  ['viscosity', damper.pointViscosity(1), '15 mm2/s', 15],
  ['temperature', damper.pointTemperature(1), '104 °F', 40],
  ['percent', damper.entrainedAir, '1/2', 0.5],
  ['modulus', damper.bulkModulus, '1500 MPa', 1.5],
  ['mass', damper.heatedMass, '2 lb', 0.90718],
  ['plain', damper.exponent, '1 + 0.3', 1.3],
];

async function typed(page: Page, label: string, entry: string): Promise<number> {
  const box = page.getByLabel(label, { exact: true }).first();
  await box.fill(entry);
  await box.blur();
  return Number(await box.inputValue());
}

describe('a box of each kind', () => {
  it('takes sums and units', () =>
    onBench(async (page) => {
      await openAll(page);
      for (const [kind, label, entry, value] of TYPED) {
        const read = await typed(page, label, entry);
        expect([kind, Math.abs(read / value - 1) < 1e-4 ? value : read]).toEqual([kind, value]);
      }
      expect(await page.locator('.fault').count()).toBe(0);
    }));

  it('takes them in the forms of stack, springs and adjusters, too', () =>
    onBench(async (page) => {
      await openAll(page);
      expect(await typed(page, stack.seatHeight, '0.006 in')).toBeCloseTo(0.1524, 6);
      await page.getByRole('button', { name: text.parts.add(besides.needle) }).click();
      expect(await typed(page, besides.coneAngle, '15 + 5')).toBe(20);
      await page.getByRole('button', { name: text.parts.add(damper.frictionLaw) }).click();
      expect(await typed(page, damper.stribeckSpeed, '20 mm/s')).toBeCloseTo(0.02, 9);
      expect(await typed(page, damper.viscous, '2*5')).toBe(10);
      await page.getByRole('button', { name: text.parts.add(material.ofStack) }).click();
      // A newton per square millimetre is a megapascal.
      expect(await typed(page, material.youngsModulus, '206000 MPa')).toBeCloseTo(206, 9);
      expect(await typed(page, material.yieldStrength, '1.2 GPa')).toBeCloseTo(1200, 9);
      expect(await page.locator('.fault').count()).toBe(0);
    }));

  it('takes a spring rate, and refuses what is none of it while the last good curve stays', () =>
    onFork(async (page) => {
      await openAll(page);
      expect(await typed(page, damper.checkRate, '10 lbf/in')).toBeCloseTo(1.7513, 3);
      await expect.poll(() => page.locator('.plot.stale').count()).toBe(0);
      const [before, lines] = [await force(page), await plotted(page)];
      const rate = page.getByLabel(damper.checkRate, { exact: true });
      await rate.fill('3 kg');
      const fault = page.locator('[data-group=refill] .fault');
      await fault.waitFor();
      expect(await rate.getAttribute('aria-invalid')).toBe('true');
      expect((await rate.getAttribute('aria-describedby'))?.split(' ')).toContain(await fault.getAttribute('id'));
      expect([await force(page), await plotted(page)]).toEqual([before, lines]);
    }));
});

describe('the material of a stack', () => {
  it('is spring steel until another is given, says what it assumes, and changes the curve', () =>
    onBench(async (page) => {
      await openAll(page);
      const form = page.locator('[data-group=material]');
      expect(await form.locator('summary').textContent()).toContain(material.springSteel);
      expect(await form.textContent()).toContain(material.defaults(true));
      const before = await force(page);
      await page.getByRole('button', { name: text.parts.add(material.ofStack) }).click();
      const modulus = page.getByLabel(material.youngsModulus, { exact: true });
      expect(await modulus.inputValue()).toBe('206');
      const endurance = page.getByLabel(material.enduranceLimit, { exact: true });
      expect(await endurance.getAttribute('placeholder')).toBe(material.assumed);
      await modulus.fill('110');
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await endurance.getAttribute('placeholder')).toBe(material.unknown);
      await page.getByLabel(material.tensileStrength, { exact: true }).fill('500');
      await endurance.fill('600');
      await form.locator('.fault').waitFor();
      expect(await form.locator('.fault').getAttribute('data-code')).toBe('stack.material.endurance-above-tensile');
      await pressIn(endurance, 'Escape');
      await page.getByRole('button', { name: text.parts.takeOut(material.ofStack) }).click();
      await expect.poll(() => force(page)).toBe(before);
    }));
});
