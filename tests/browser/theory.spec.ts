import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { onBench, plotted, settled } from './bench-page.ts';

describe('the plate theory', () => {
  it('may follow the waves of the rim: other curves, and its name on the section', () =>
    onBench(async (page) => {
      const before = await plotted(page);
      await page.getByRole('button', { name: text.theoryShort['port-periodic'] }).click();
      await expect.poll(() => page.locator('.title-block').textContent()).toContain(text.theory['port-periodic']);
      await settled(page);
      await expect.poll(() => plotted(page)).not.toEqual(before);
    }));
});
