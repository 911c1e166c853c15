/** On a phone the drawing has room for one half: scale, legend and the numbers of the oil share it without meeting. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { drop, fromMenu, onBench, settled } from './bench-page.ts';

const DEMOS = ['dunnock-mountain-bike-rear', 'larkspur-trail-fork', 'larkspur-trail-rear', 'wagtail-hill-climb-rear'];

/** Pairs of writings, bars and metal whose boxes cut each other by more than a pixel. */
const meetings = (page: Page): Promise<string[]> =>
  page.locator('.section .drawing svg[role=img]').evaluate((svg) => {
    const boxes = (selector: string) =>
      [...svg.querySelectorAll(selector)].map((e) => ({
        name: e.textContent || selector,
        box: e.getBoundingClientRect(),
      }));
    const words = boxes('.scale-mark text, .legend text, .oil-number');
    const others = [...words, ...boxes('.legend rect')];
    const metal = boxes('.shim, .post');
    const cut = (a: DOMRect, b: DOMRect): boolean =>
      Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 &&
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1;
    // The bars stand at a right angle, with their lengths between them.
    const bars = boxes('.scale-mark path');
    const legend = boxes('.legend text, .legend rect');
    const scale = boxes('.scale-mark text, .legend text');
    return [
      ...words.flatMap((a, i) =>
        others
          .slice(i + 1)
          .filter((b) => cut(a.box, b.box))
          .map((b) => `${a.name} | ${b.name}`),
      ),
      ...bars.flatMap((a) => legend.filter((b) => cut(a.box, b.box)).map((b) => `${a.name} | ${b.name}`)),
      ...scale.flatMap((a) => metal.filter((b) => cut(a.box, b.box)).map((b) => `${a.name} | ${b.name}`)),
    ];
  });

describe('the section on a phone', () => {
  it.each(DEMOS)('has no writing over another, nor over metal: %s', (demo) =>
    onBench(
      async (page) => {
        const written = readFileSync(`src/demo/${demo}.shimwright.json`, 'utf8');
        await drop(page, 'demo.json', written);
        await expect.poll(() => page.title()).toContain(JSON.parse(written).name);
        await settled(page);
        expect(await meetings(page)).toEqual([]);
        await fromMenu(page, text.bar.familyLong.imperial);
        await page.keyboard.press('Escape');
        await expect.poll(() => page.locator('.legend text').first().textContent()).toContain('ksi');
        expect(await meetings(page)).toEqual([]);
      },
      { viewport: { width: 390, height: 844 } },
    ),
  );
});
