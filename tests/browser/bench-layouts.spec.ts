import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, diameters, force, paste, plotted, settled } from './bench-page.ts';
import { box, group, numberOf, onFork, place, reading, showTab, undo } from './fork-page.ts';

describe('the base valve', () => {
  it('has its own table, drawing, opening and reserves, and is edited like any other stack', () =>
    onFork(async (page) => {
      const midValve = await diameters(page);
      await place(page, 'baseCompression').click();
      expect(await diameters(page)).not.toEqual(midValve);
      expect((await diameters(page))[0]).toBe('19');
      await settled(page);
      const title = page.locator('.title-block div').filter({ hasText: text.section.cells.opening }).locator('dd');
      expect(await title.textContent()).toContain((await reading(page, 'base-opening').textContent()) ?? 'none');
      await showTab(page, 'opening');
      await expect.poll(async () => (await plotted(page)).length).toBe(2);
      const lines = await plotted(page);
      const before = await numberOf(page, 'base-drop');
      await paste(page, '[data-cell="0:count"]', '8 x 19 x 0.15\n11 x 0.2');
      await expect.poll(() => numberOf(page, 'base-drop')).toBeGreaterThan(before);
      await settled(page);
      expect(await plotted(page)).not.toEqual(lines);
      await place(page, 'pistonCompression').click();
      expect(await diameters(page)).toEqual(midValve);
    }));

  it('shares its oil between its paths, and the piston between others', () =>
    onFork(async (page) => {
      await showTab(page, 'paths');
      await page.locator('.plot[data-chart=paths]').waitFor();
      await expect.poll(async () => (await plotted(page)).length).toBe(4);
      const piston = await plotted(page);
      await page.getByRole('button', { name: text.chart.valve.base, exact: true }).last().click();
      await expect.poll(() => plotted(page)).not.toEqual(piston);
      const shares = (await plotted(page)).map((y) => JSON.parse(y) as number[]);
      // Two builds with a stack and a bleed each: the shares of a build make up the whole at every speed.
      expect(shares).toHaveLength(4);
      for (let i = 0; i < shares[0].length; i++) expect(shares[0][i] + shares[1][i]).toBeCloseTo(100, 9);
      const cut = Number.parseFloat((await reading(page, 'base-bleed').textContent()) ?? '');
      expect(cut).toBeGreaterThan(0);
      expect(cut).toBeLessThan(100);
      await page.getByRole('button', { name: text.chart.valve.piston, exact: true }).click();
      await expect.poll(() => plotted(page)).toEqual(piston);
      await place(page, 'pistonRebound').click();
      expect(await reading(page, 'base-check', 'rebound').textContent()).toMatch(/^\d+ %$/);
    }));

  it('takes a poppet with an adjuster, whose clicks stand with the others', () =>
    onFork(async (page) => {
      await place(page, 'baseCompression').click();
      await group(page, 'base-besides').click();
      const before = await force(page);
      await page.getByRole('button', { name: text.parts.add(text.besides.poppet) }).click();
      await box(page, text.besides.preload).fill('2');
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await reading(page, 'base-poppet').textContent()).toMatch(/^[1-9]\d* %$/);
      expect(await page.locator('[data-adjuster=poppet]').count()).toBe(0);
      await page.getByRole('button', { name: text.parts.add(text.besides.poppetAdjuster) }).click();
      await page.locator('[data-adjuster=poppet]').waitFor();
      await page.getByRole('button', { name: text.parts.takeOut(text.besides.poppet), exact: true }).click();
      await expect.poll(() => force(page)).toBe(before);
    }));
});

describe('adjusters', () => {
  it('turn by one click and by typing, as one step of undo each', () =>
    onFork(async (page) => {
      const name = text.adjusterOf('cartridge', 'base-needle');
      const clicks = box(page, text.adjusters.clicks(name));
      const before = await force(page);
      expect(await clicks.inputValue()).toBe('7');
      await page.getByRole('button', { name: text.adjusters.closer(name) }).click();
      expect(await clicks.inputValue()).toBe('6');
      await expect.poll(() => force(page)).not.toBe(before);
      await clicks.fill('21');
      await page.locator('.adjusters .fault').waitFor();
      expect(await page.locator('.adjusters .fault').getAttribute('data-code')).toBe('adjuster.clicks');
      await clicks.fill('0');
      await clicks.blur();
      expect(await page.getByRole('button', { name: text.adjusters.closer(name) }).isDisabled()).toBe(true);
      await undo(page);
      await undo(page);
      expect(await clicks.inputValue()).toBe('7');
      await expect.poll(() => force(page)).toBe(before);
    }));
});

describe('the damper form', () => {
  it('changes the layout: parts come and go with it, and nothing is lost', () =>
    onFork(async (page) => {
      const before = await force(page);
      await place(page, 'baseCompression').click();
      await group(page, 'sizes').click();
      const layout = page.getByLabel(text.damper.layout, { exact: true });
      await layout.selectOption({ label: text.damper.layoutName.monotube });
      await page.getByText(text.damper.baseLaidAside).waitFor();
      expect(await place(page, 'baseCompression').count()).toBe(0);
      expect(await page.locator('[data-group=refill]').count()).toBe(0);
      await expect.poll(() => force(page)).not.toBe(before);
      expect(await page.locator('[data-row^=base]').count()).toBe(0);
      await layout.selectOption({ label: text.damper.layoutName.cartridge });
      await expect.poll(() => force(page)).toBe(before);
      await undo(page);
      await undo(page);
      await expect.poll(() => force(page)).toBe(before);
      expect((await diameters(page))[0]).toBe('19');
    }));

  it('puts parts in with values that work, and takes them out as one step each', () =>
    onFork(async (page) => {
      const before = await force(page);
      await group(page, 'piston').click();
      await page.getByRole('button', { name: text.parts.add(text.damper.band) }).click();
      await expect.poll(() => reading(page, 'piston-leakage').count()).toBe(1);
      await box(page, text.damper.clearance).fill('0.05');
      await expect.poll(() => force(page)).not.toBe(before);
      await box(page, text.damper.clearance).fill('5');
      await page.locator('.damper .fault').waitFor();
      expect(await page.locator('.damper .fault').getAttribute('data-code')).toBe('damper.piston-band.too-loose');
      await page.getByRole('button', { name: text.parts.takeOut(text.damper.band) }).click();
      await expect.poll(() => force(page)).toBe(before);
      await undo(page);
      await expect.poll(() => box(page, text.damper.clearance).inputValue()).toBe('0.05');
    }));

  it('says at the box that ports have no room in the piston, and goes on with those that had', () =>
    onFork(async (page) => {
      const before = await force(page);
      await group(page, 'pistonCompression').click();
      await page.locator('[data-group=pistonCompression]').getByLabel(text.damper.ports, { exact: true }).fill('90');
      const fault = page.locator('[data-group=pistonCompression] .fault');
      await fault.waitFor();
      expect(await fault.getAttribute('data-code')).toBe('damper.port.beyond-face');
      expect(await fault.textContent()).toMatch(/\d mm² does not fit: wanted .*beside the rod, \d.* mm²/);
      expect(await force(page)).toBe(before);
    }));

  it('shows over which viscosities one weight number is sold', () =>
    onFork(async (page) => {
      await group(page, 'oil').click();
      await page.getByText(text.damper.weights, { exact: true }).click();
      const five = page.locator('[data-weight="5"]');
      await five.waitFor();
      // Spreads at 40 °C as data sheets print them (common practice, from memory): neighbours overlap.
      expect(await five.textContent()).toContain('15 to 27 cSt');
      expect(await page.locator('[data-weight="7.5"]').textContent()).toContain('21 to 43 cSt');
    }));

  it('says where the oil is used outside the temperatures of its data sheet, and where an index cannot be meant', () =>
    onFork(async (page) => {
      await group(page, 'oil').click();
      const hint = (name: string) => page.locator(`[data-hint="${name}"]`);
      await box(page, text.damper.temperature).fill('-10');
      await hint('extrapolated').waitFor();
      expect(await hint('extrapolated').textContent()).toMatch(/-10 °C .* from 40 to 100 °C/);
      await box(page, text.damper.temperature).fill('40');
      await expect.poll(() => hint('extrapolated').count()).toBe(0);
      const by = page.getByLabel(text.damper.viscosityBy, { exact: true });
      await by.selectOption({ label: text.damper.viscosityKind['viscosity-index'] });
      expect(await hint('unusual-index').count()).toBe(0);
      await box(page, text.damper.viscosityIndex).fill('900');
      await hint('unusual-index').waitFor();
    }));

  it('takes oil by grade or data sheet and air by level or volume', () =>
    onFork(async (page) => {
      const before = await force(page);
      await group(page, 'oil').click();
      const by = page.getByLabel(text.damper.viscosityBy, { exact: true });
      await by.selectOption({ label: text.damper.viscosityKind['iso-grade'] });
      await page.getByLabel(text.damper.isoGrade, { exact: true }).selectOption('100');
      await expect.poll(() => force(page)).not.toBe(before);
      await by.selectOption({ label: text.damper.viscosityKind['viscosity-index'] });
      await expect.poll(() => force(page)).toBe(before);
      await group(page, 'gas').click();
      const measure = page.getByLabel(text.damper.gasMeasure, { exact: true });
      await measure.selectOption({ label: text.damper.gasMeasures.volume });
      // By hand: 147.4 mL of air gap, less 30.0 mL, and 348.5 mL that the leg leaves over the travel.
      expect(await box(page, text.damper.gasVolume).inputValue()).toBe('466');
      expect(await force(page)).toBe(before);
    }));
});

describe.each([390, 1440])('at %i pixels', (width) => {
  it('every field of a cartridge is within the page and without barriers', () =>
    onFork(
      async (page) => {
        await place(page, 'baseCompression').click();
        await page.getByRole('button', { name: text.chart.bandLong.shown }).click();
        await page.evaluate(() => {
          for (const each of document.querySelectorAll('details')) each.open = true;
        });
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        await showTab(page, 'cycle');
        await page.locator('.cycle-readings').waitFor();
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, reducedMotion: 'reduce' },
    ));
});
