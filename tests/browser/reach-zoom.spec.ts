/**
 * Every view of `views.ts` under zoom and with the spacing of its words set by the reader (WCAG 2.2, 1.4.4, 1.4.10, 1.4.12):
 * the page scrolls one way only, and no words are lost.
 */
import { describe, expect, it } from 'vitest';
import { onBench } from './bench-page.ts';
import { lostWords, spaceWords, unspaceWords } from './reach-measures.ts';
import { openView, partOf, VIEWS } from './views.ts';

/** A window of 1280 by 1024, 1440 by 900, and 1280 by 1024 pixels at 100, 200 and 400 per cent. */
const ZOOMS = [
  [1280, 1024],
  [720, 450],
  [320, 256],
] as const;

describe('no words are lost at 100, 200 and 400 per cent, with the words set as they are and apart', () => {
  it.each(VIEWS)(
    '$name',
    (view) =>
      onBench(
        async (page) => {
          await openView(page, view);
          const found: string[] = [];
          for (const [width, height] of ZOOMS) {
            await page.setViewportSize({ width, height });
            // Charts follow the width of the window in the next frame.
            const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
            await expect.poll(wide).toBe(width);
            found.push(...(await lostWords(page, partOf(view))).map((line) => `${width}: ${line}`));
            await spaceWords(page);
            await expect.poll(wide).toBe(width);
            found.push(...(await lostWords(page, partOf(view))).map((line) => `${width}, set apart: ${line}`));
            await unspaceWords(page);
          }
          expect(found).toEqual([]);
        },
        { reducedMotion: 'reduce' },
      ),
    120_000,
  );
});
