import type { Locator, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, onBench } from './bench-page.ts';
import { onFork, place } from './fork-page.ts';

const group = (page: Page, name: string): Locator => page.locator(`[data-group="${name}"]`);
const openGroup = (page: Page, name: string): Promise<void> => group(page, name).locator('summary').first().click();
const mark = (form: Locator, id: string): Locator => form.locator(`[data-mark="${id}"]`);
const lit = (form: Locator): Promise<(string | null)[]> =>
  form.locator('.dimension.lit').evaluateAll((marks) => marks.map((each) => each.getAttribute('data-mark')));
const layout = (page: Page, name: keyof typeof text.damper.layoutName): Promise<string[]> =>
  page.getByLabel(text.damper.layout, { exact: true }).selectOption(name);

const names = (form: Locator, of: string): Promise<(string | null)[]> =>
  form.locator(`[data-${of}]`).evaluateAll((parts, key) => parts.map((part) => part.getAttribute(key)), `data-${of}`);

describe('a form with a sketch', () => {
  it('lights the dimension of the box in use, and says how it is measured', () =>
    onBench(async (page) => {
      const form = group(page, 'sizes');
      await openGroup(page, 'sizes');
      expect(await lit(form)).toEqual([]);
      const bore = page.getByLabel(text.damper.bore, { exact: true });
      await bore.focus();
      expect(await lit(form)).toEqual(['bore']);
      const note = form.locator('.measure-note');
      for (const words of [text.measures.bore.what, text.measures.bore.how, text.measures.bore.curve])
        expect(await note.textContent()).toContain(words);
      // The note belongs to the box for who does not see it.
      expect(await bore.getAttribute('aria-describedby')).toBe(await note.getAttribute('id'));
      await page.keyboard.press('Tab');
      expect(await lit(form)).toEqual(['rod']);
    }));

  it('takes the keyboard to the box of the dimension that is pressed', () =>
    onBench(async (page) => {
      const form = group(page, 'sizes');
      await openGroup(page, 'sizes');
      for (const id of ['travel', 'bore']) {
        await mark(form, id).locator('text').click();
        expect(await lit(form)).toEqual([id]);
        const at = await page.evaluate(() =>
          document.activeElement?.closest('[data-dimension]')?.getAttribute('data-dimension'),
        );
        expect(at).toBe(id);
      }
    }));

  it('has a letter in the sketch for each box, the same at both, in every layout', () =>
    onBench(async (page) => {
      await openGroup(page, 'sizes');
      for (const name of ['monotube', 'monotube-reservoir', 'twin-tube', 'cartridge'] as const) {
        await layout(page, name);
        for (const form of [group(page, 'sizes'), group(page, 'pistonCompression'), group(page, 'gas')]) {
          const [boxes, marks] = [await names(form, 'dimension'), await names(form, 'mark')];
          expect(boxes.length).toBeGreaterThan(2);
          for (const id of boxes) {
            expect(marks).toContain(id);
            const letter = await mark(form, id ?? '')
              .locator('text')
              .textContent();
            expect(await form.locator(`[data-dimension="${id}"] .letter`).getAttribute('data-letter')).toBe(letter);
          }
        }
      }
      expect(await names(group(page, 'sizes'), 'mark')).toContain('leg');
    }));

  it('reaches from the stack to the table of its shims', () =>
    onBench(async (page) => {
      const form = page.locator('.stack-form');
      await page.locator('[data-cell="1:thickness_mm"]').focus();
      expect(await lit(form)).toEqual(['shimThickness']);
      await mark(form, 'shimDiameter').locator('text').click();
      expect(await page.evaluate(() => document.activeElement?.getAttribute('data-cell'))).toBe('0:outerDiameter_mm');
    }));

  it('has them for springs, bleeds, needles, poppets and their adjusters', () =>
    onFork(async (page) => {
      await place(page, 'baseCompression').click();
      await page.getByRole('button', { name: text.stack.moreOf(1), exact: true }).click();
      await page.evaluate(() => {
        for (const each of document.querySelectorAll<HTMLDetailsElement>('.stack details')) each.open = true;
      });
      await page.getByRole('button', { name: text.parts.add(text.besides.poppet) }).click();
      await page.getByRole('button', { name: text.parts.add(text.besides.poppetAdjuster) }).click();
      const forms = await page.locator('.stack .measured').all();
      const sketches = await page
        .locator('.stack svg.sketch')
        .evaluateAll((all) => all.map((each) => each.getAttribute('data-sketch')));
      expect(sketches.toSorted()).toEqual(
        ['base-bleed', 'needle', 'poppet', 'shim-face', 'spring-adjuster', 'springs', 'stack-without-bleed'].toSorted(),
      );
      for (const form of forms) {
        const [boxes, marks] = [await names(form, 'dimension'), await names(form, 'mark')];
        expect(boxes.length).toBeGreaterThan(1);
        for (const id of boxes) expect(marks).toContain(id);
      }
    }));

  it('tells all of it as a list', () =>
    onBench(async (page) => {
      const form = group(page, 'gas');
      await openGroup(page, 'gas');
      await form.getByText(text.measure.all).click();
      const list = (): Promise<string | null> => form.locator('.measure-list').textContent();
      for (const id of ['gasPressure', 'gasVolume'] as const) await expect.poll(list).toContain(text.measures[id].how);
      expect(await form.textContent()).toContain(text.caution.gas);
    }));
});

describe('ports', () => {
  it('are round holes or of another shape, each with its sketch, and the same area', () =>
    onBench(async (page) => {
      await openGroup(page, 'pistonCompression');
      const form = group(page, 'pistonCompression');
      expect(await form.locator('[data-sketch=ports-shaped] .pencil').count()).toBe(1);
      await form.getByLabel(text.damper.portShape, { exact: true }).selectOption('round');
      // The demo's ports have 30 mm² each: a circle of 6.180 mm.
      expect(await form.getByLabel(text.damper.portDiameter, { exact: true }).inputValue()).toBe('6.18');
      expect(await form.locator('[data-sketch=ports-round]').count()).toBe(1);
      await page.keyboard.press('Control+z');
      expect(await form.getByLabel(text.damper.portArea, { exact: true }).inputValue()).toBe('30');
    }));
});

describe.each([390, 1024, 1440])('at %i pixels', (width) => {
  it('sketches are within the page and without barriers', () =>
    onBench(
      async (page) => {
        await page.evaluate(() => {
          for (const each of document.querySelectorAll('details')) each.open = true;
        });
        await page.getByLabel(text.damper.bore, { exact: true }).focus();
        // The bar that stays at the top would cover a part of what happens to lie below it.
        await page.evaluate(() => window.scrollTo(0, 0));
        expect(await barriers(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      },
      { viewport: { width, height: 900 }, reducedMotion: 'reduce' },
    ));
});
