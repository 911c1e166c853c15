/** What damper and oil are called, and where their form stands. */
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { force, onBench } from './bench-page.ts';
import { box, group, undo } from './fork-page.ts';

describe('the form of the damper', () => {
  it('takes the names of damper and oil, which change no force, and gives them back', () =>
    onBench(async (page) => {
      const before = await force(page);
      await group(page, 'oil').click();
      const named = await box(page, text.damper.oilName).inputValue();
      await box(page, text.damper.oilName).fill('Mixed 60 to 40');
      await expect.poll(() => group(page, 'oil').textContent()).toContain('Mixed 60 to 40');
      await undo(page);
      await expect.poll(() => box(page, text.damper.oilName).inputValue()).toBe(named);
      await group(page, 'sizes').click();
      await box(page, text.damper.name).fill('The one\n from the shed');
      await expect.poll(() => page.locator('.damper > header').textContent()).toContain('The one from the shed');
      expect(await force(page)).toBe(before);
    }));

  it('stands under the shims on a tablet, and the readings beside both', () =>
    onBench(
      async (page) => {
        const boxOf = async (part: string) => {
          const found = await page.locator(part).boundingBox();
          if (!found) throw new Error(`${part} is not on the page`);
          return found;
        };
        const [middle, form, readings] = await Promise.all(
          ['.bench > .middle', '.side .damper', '.readout'].map(boxOf),
        );
        expect(form.x).toBe(middle.x);
        // A gap between sheets, and no more.
        expect(form.y - (middle.y + middle.height)).toBeGreaterThan(0);
        expect(form.y - (middle.y + middle.height)).toBeLessThan(24);
        expect(readings.x).toBeGreaterThan(form.x + form.width);
      },
      { viewport: { width: 1024, height: 800 } },
    ));
});
