/** The section as a drawing: its scales, shades, contacts, oil, and the numbers of its parts by pointer and by keys. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, cell, demoText, onBench, pressIn } from './bench-page.ts';

const words = text.sectionParts;
const demo = JSON.parse(demoText());
/** The build on show is the second of the demo. */
const valving = demo.builds[1].valves.pistonCompression;
const { ports } = demo.damper.valves.pistonCompression;

const heights = (page: Page, name: string) =>
  page.locator(`.section fieldset[aria-label="${text.section.axial}"]`).getByRole('button', { name });
const unfold = (page: Page) => page.getByRole('button', { name: text.sectionView.look, exact: true }).click();
const walk = (page: Page) => page.getByRole('listbox', { name: words.walk });
const readout = (page: Page) => page.locator('.part-readout');

/** Outer and inner corner of a shim of the right half as drawn [px]. */
const shimBox = (page: Page, shim: number) =>
  page
    .locator(`.drawing [data-part=shim-${shim}]`)
    .first()
    .evaluate((path) => {
      const points = [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)];
      const [first, last] = [points[0], points[points.length - 1]];
      return { rim: Math.max(...points.map(([, x]) => Number(x))), thick: Number(first[2]) - Number(last[2]) };
    });

/** A number of a part, out of the table that says all of them. */
const figure = (page: Page, part: string, name: string) =>
  page.locator(`.parts [data-of="${part}"] td span`).filter({ hasText: name }).locator('b').textContent();

const leading = (words: string | null): number => Number.parseFloat(words ?? '');

describe('the scale of the section', () => {
  it('is exaggerated or true as the drawing says, and as its shims measure', () =>
    onBench(async (page) => {
      const [face] = valving.shims;
      const stated = () => page.locator('.scale-words').last().textContent();
      const axial = async () => Number(await page.locator('.scale-mark').getAttribute('data-axial'));
      const measured = async () => {
        const { rim, thick } = await shimBox(page, 0);
        return thick / face.thickness_mm / (rim / (face.outerDiameter_mm / 2));
      };
      expect(await axial()).toBeGreaterThan(1);
      expect(await stated()).toBe(text.sectionView.heightsExaggerated(await axial()));
      expect((await measured()) / (await axial())).toBeCloseTo(1, 1);
      await unfold(page);
      await heights(page, text.sectionView.heightsWhy.true).click();
      expect(await stated()).toBe(text.sectionView.heightsTrue);
      expect(await measured()).toBeCloseTo(1, 1);
      expect(await page.locator('.title-block').textContent()).toContain('heights true');
      await heights(page, text.sectionView.heightsWhy.factor(10)).click();
      expect(await stated()).toBe(text.sectionView.heightsExaggerated(10));
    }));
});

describe('how the section is drawn', () => {
  it('is folded away in one row with its name, unfolds by keys, and Escape leads back to its button', () =>
    onBench(async (page) => {
      const header = page.locator('.sheet.section > header');
      const [row, button] = [await header.boundingBox(), await header.locator('button').first().boundingBox()];
      expect(row?.height).toBeLessThan(2 * (button?.height ?? Number.NaN));
      expect(await page.locator('#section-look').count()).toBe(0);
      const look = page.getByRole('button', { name: text.sectionView.look, exact: true });
      await look.focus();
      await page.keyboard.press('Enter');
      expect(await look.getAttribute('aria-expanded')).toBe('true');
      await page.keyboard.press('Tab');
      expect(
        await heights(page, text.sectionView.heightsWhy.fit).evaluate((each) => each === document.activeElement),
      ).toBe(true);
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('Escape');
      expect(await page.locator('#section-look').count()).toBe(0);
      expect(await look.evaluate((each) => each === document.activeElement)).toBe(true);
    }));
});

describe('the shades of stress', () => {
  it('are deepest where the shim bears most, and stand against the yield strength in the unit of the person', () =>
    onBench(async (page) => {
      const shades = await page
        .locator('#stress-0 stop')
        .evaluateAll((stops) => stops.map((stop) => Number(stop.getAttribute('data-stress'))));
      // The clamp holds what lies within it; at its edge bending is greatest (Roark, annular plates clamped inside).
      expect(shades[0]).toBe(0);
      expect(Math.max(...shades)).toBe(shades[1]);
      const most = Number(await page.locator('.legend .most-value').textContent());
      const ofShims = await Promise.all([0, 1, 2].map((n) => figure(page, `shim-${n}`, words.equivalentStress)));
      expect(most).toBe(Math.max(...ofShims.map(leading)));
      // Assumed for spring steel: 0.85 of 1500 MPa; a ksi is 6.894757 MPa (from memory, by definition of pound and inch).
      expect(await page.locator('.legend').textContent()).toContain(text.sectionView.legendYield('1275'));
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      expect(await page.locator('.legend').textContent()).toContain(text.sectionView.legendYield('184.9'));
      expect(await page.locator('.legend').textContent()).toContain(text.sectionView.legend('ksi'));
      expect(Number(await page.locator('.legend .most-value').textContent()) * 6.894757).toBeCloseTo(most, -1);
    }));

  it('can be left out', () =>
    onBench(async (page) => {
      const fill = () =>
        page
          .locator('.drawing .shim')
          .first()
          .evaluate((shim) => getComputedStyle(shim).fill);
      expect(await fill()).toContain('stress-0');
      await unfold(page);
      const toggle = page.getByRole('button', { name: text.sectionView.stress, exact: true });
      await toggle.click();
      expect(await toggle.getAttribute('aria-pressed')).toBe('false');
      expect(await fill()).not.toContain('url');
      expect(await page.locator('.legend').count()).toBe(0);
    }));
});

describe('contacts and gaps', () => {
  it('are marked where the rim of the smaller shim bears, and have their numbers', () =>
    onBench(async (page) => {
      const [face, second] = valving.shims;
      const { rim } = await shimBox(page, 0);
      const at = Number(await page.locator('[data-contact="0 1"]').first().getAttribute('cx'));
      expect(at / rim).toBeCloseTo(second.outerDiameter_mm / face.outerDiameter_mm, 2);
      expect(await figure(page, 'shim-0', words.touches)).toContain(`${second.outerDiameter_mm}.00 mm`);
      // Two clamp edges on either half.
      expect(await page.locator('[data-contact=clamp]').count()).toBe(4);
      const opening = await page
        .locator('.title-block div')
        .filter({ hasText: text.section.cells.opening })
        .locator('dd');
      expect(await page.locator('[data-dimension=opening] text').textContent()).toBe(await opening.textContent());
      expect(await page.locator('[data-part="gap-seat-0"]').count()).toBe(2);
    }));

  it('a backing plate that the stack comes up against is touched, and bears on it', () =>
    onBench(async (page) => {
      await page.getByLabel(text.stack.plateGap, { exact: true }).fill('0.02');
      await page.keyboard.press('Enter');
      await page.locator('[data-contact$=plate]').first().waitFor();
      expect(leading(await figure(page, 'plate', words.force))).toBeGreaterThan(0);
      expect(await figure(page, 'plate', words.gapAtRest)).toBe('0.02 mm');
    }));
});

describe('the oil of the section', () => {
  it('flows as fast as continuity asks, and its streams are as wide as their shares', () =>
    onBench(async (page) => {
      const value = async (part: string, name: string) => leading(await figure(page, part, name));
      // L/min over mm2 is 1e3/60 m/s.
      const speed = ((await value('oil-ports', words.flow)) / (ports.count * ports.area_mm2)) * (1000 / 60);
      expect(await value('oil-ports', words.speed)).toBeCloseTo(speed, 0);
      const names = ['oil-ports', 'oil-bleed', 'oil-leakage'];
      const there = await Promise.all(names.map((name) => page.locator(`.parts [data-of=${name}]`).count()));
      const shares = await Promise.all(names.filter((_, i) => there[i]).map((name) => value(name, words.share)));
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(100, -0.5);
      const bands = await page
        .locator('.drawing .band')
        .evaluateAll((paths) =>
          paths.map((path) => [
            Number(path.getAttribute('data-share')),
            Number.parseFloat((path as SVGElement).style.strokeWidth),
          ]),
        );
      const byShare = [...bands].sort(([a], [b]) => a - b).map(([, width]) => width);
      expect(byShare.length).toBeGreaterThan(2);
      expect(byShare).toEqual([...byShare].sort((a, b) => a - b));
      expect(await page.locator('[data-oil=shims]').textContent()).toContain(
        await figure(page, 'oil-shims', words.speed),
      );
    }));

  it('runs faster through the ports as the cursor goes up', () =>
    onBench(async (page) => {
      const speed = async () => leading(await figure(page, 'oil-ports', words.speed));
      const before = await speed();
      await pressIn(page.getByRole('slider', { name: text.chart.cursor }), 'End');
      expect(await speed()).toBeGreaterThan(2 * before);
    }));
});

describe('the numbers of the parts', () => {
  it('stand under the pointer, in one place, without moving anything', () =>
    onBench(async (page) => {
      const height = () => page.locator('.sheet.section').evaluate((sheet) => sheet.clientHeight);
      const before = await height();
      expect(await readout(page).count()).toBe(0);
      await page.locator('.drawing [data-part=port]').first().hover();
      expect(await readout(page).textContent()).toContain(`${words.count}${ports.count}`);
      await page.locator('.drawing [data-part=seat]').first().hover();
      expect(await readout(page).getAttribute('data-reads')).toBe('seat');
      expect(await height()).toBe(before);
      await cell(page, 0, 'count').hover();
      expect(await readout(page).count()).toBe(0);
    }));

  it('are walked through by keys, said aloud as they are shown, and mark the row of the shim', () =>
    onBench(async (page) => {
      await walk(page).focus();
      const told = async () => {
        const id = await walk(page).getAttribute('aria-activedescendant');
        const option = page.locator(`[id="${id}"]`);
        expect(await option.getAttribute('aria-selected')).toBe('true');
        const spoken = (await option.textContent())?.replaceAll(/[:,\s]/g, '');
        expect((await readout(page).textContent())?.replaceAll(/[:,\s]/g, '')).toBe(spoken);
        return id;
      };
      expect(await told()).toBe('part-port');
      await page.keyboard.press('ArrowRight');
      expect(await told()).toBe('part-seat');
      await page.keyboard.press('ArrowDown');
      expect(await told()).toBe('part-shim-0');
      expect(await page.locator('.shims tr.active').textContent()).toContain(text.stack.roles.face);
      expect(await page.locator('.drawing .shim.active').count()).toBe(2);
      await page.keyboard.press('ArrowLeft');
      await page.keyboard.press('ArrowUp');
      await page.keyboard.press('ArrowUp');
      const last = await told();
      await page.keyboard.press('Home');
      expect(await told()).toBe('part-port');
      await page.keyboard.press('End');
      expect(await told()).toBe(last);
      await page.keyboard.press('Tab');
      expect(await readout(page).count()).toBe(0);
    }));

  it('has every part that the drawing shows in the walk and in the table', () =>
    onBench(async (page) => {
      const ids = (selector: string, attribute: string) =>
        page
          .locator(selector)
          .evaluateAll((all, name) => [...new Set(all.map((each) => each.getAttribute(name)))], attribute);
      const drawn = await ids('.drawing svg [data-part]', 'data-part');
      const walked = (await ids('[role=option]', 'id')).map((id) => id?.replace('part-', ''));
      const tabled = await ids('.parts [data-of]', 'data-of');
      expect(drawn.length).toBeGreaterThan(8);
      expect(walked).toEqual(tabled);
      for (const part of drawn) expect(walked).toContain(part);
    }));
});
