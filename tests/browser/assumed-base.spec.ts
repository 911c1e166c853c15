import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, force, onBench } from './bench-page.ts';

const { assumed } = text.damper;

describe('a base valve that nobody has measured', () => {
  it('is marked as an assumption at its form, its check and its stack until a person says that it is measured', () =>
    onBench(async (page) => {
      const before = await force(page);
      await page.locator('[data-group=sizes] > summary').click();
      await page.getByLabel(text.damper.layout, { exact: true }).selectOption('monotube-reservoir');
      await page.getByText(text.damper.baseAdded).waitFor();
      const base = page.locator('[data-group=baseCompression]');
      await base.locator('summary').first().click();
      expect(await base.textContent()).toContain(assumed.why.baseCompression);
      const { name } = text.placeOf('monotube-reservoir', 'baseCompression');
      await page.getByRole('button', { name, exact: true }).click();
      const marks = page.locator('[data-assumed=baseCompression]');
      expect(await marks.count()).toBe(2);
      await expect.poll(() => page.locator('.plot.stale').count()).toBe(0);
      expect(await force(page)).not.toBe(before);
      expect(await barriers(page)).toEqual([]);
      await page.getByRole('button', { name: assumed.measuredLabel.baseCompression }).first().click();
      await expect.poll(() => marks.count()).toBe(0);
      expect(await page.locator('[data-assumed=refillCheck]').count()).toBe(1);
      await page.keyboard.press('Control+z');
      await expect.poll(() => marks.count()).toBe(2);
    }));
});
