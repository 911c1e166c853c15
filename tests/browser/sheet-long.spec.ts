import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { ShimRow } from '../../src/model/project.ts';
import { buildSheet } from '../../src/sheet/build-sheet.ts';
import { htmlPage } from '../../src/sheet/html.ts';
import { sheetInput } from '../helpers/sheets.ts';
import { withPage } from './harness.ts';

/** A stack of that many different rows on both sides of the piston. */
function longSheet(rows: number): string {
  const shims = Array.from(
    { length: rows },
    (_, i): ShimRow => ({
      outerDiameter_mm: Number((34 - (16 * i) / rows).toFixed(2)),
      thickness_mm: [0.1, 0.15, 0.2][i % 3],
      count: 1 + (i % 4),
    }),
  );
  const { build } = sheetInput();
  const valving = { clampDiameter_mm: 12, seatHeight_mm: 0, shims };
  const valves = { ...build.valves, pistonCompression: valving, pistonRebound: valving };
  return htmlPage('long', buildSheet(sheetInput({ valves }, { baseline: build })));
}

const onPaper = (rows: number, test: (page: Page) => Promise<void>): Promise<void> =>
  withPage(
    async (page) => {
      await page.goto('about:blank');
      await page.setContent(longSheet(rows));
      await test(page);
    },
    { path: 'mark.svg', expected: [/status of 404/, /favicon\.ico/] },
  );

async function pages(page: Page, format: 'A4' | 'Letter'): Promise<number | undefined> {
  const pdf = (await page.pdf({ format })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b/g)?.length;
}

describe('the sheet of long stacks', () => {
  it.each([
    [8, 2, 2],
    [20, 3, 3],
    [40, 5, 6],
    [100, 9, 9],
  ])('of %i rows prints on %i pages of A4 and %i of Letter', (rows, ...wanted) =>
    onPaper(rows, async (page) => {
      expect([await pages(page, 'A4'), await pages(page, 'Letter')]).toEqual(wanted);
    }),
  );

  it('cuts no row, says its columns anew on every page and its total once, and no drawing is higher than a page', () =>
    onPaper(100, async (page) => {
      await page.emulateMedia({ media: 'print' });
      const found = await page.evaluate(() => {
        const styles = (selector: string, read: (style: CSSStyleDeclaration) => string): string[] => [
          ...new Set([...document.querySelectorAll(selector)].map((each) => read(getComputedStyle(each)))),
        ];
        const heights = [...document.querySelectorAll('tr, figure')].map((each) => each.getBoundingClientRect().height);
        return {
          rows: styles('tr, figure, li', ({ breakInside }) => breakInside),
          long: styles('.pistonCompression, .pistonCompression table', ({ breakInside }) => breakInside),
          heads: styles('.pistonCompression thead', ({ display }) => display),
          totals: styles('.pistonCompression tfoot', ({ display }) => display),
          highest: Math.max(...heights),
        };
      });
      expect(found).toMatchObject({
        rows: ['avoid'],
        long: ['auto'],
        heads: ['table-header-group'],
        totals: ['table-row-group'],
      });
      // Letter between margins of 12 mm: 255 mm, at 96 pixels an inch.
      expect(found.highest).toBeLessThan((255 / 25.4) * 96);
    }));

  it('keeps a short table whole on its page', () =>
    onPaper(8, async (page) => {
      const kept = await page
        .locator('.pistonCompression, .pistonCompression table')
        .evaluateAll((all) => all.map((each) => getComputedStyle(each).breakInside));
      expect(kept).toEqual(['avoid', 'avoid']);
    }));
});
