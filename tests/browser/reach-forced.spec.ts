/**
 * Every view of `views.ts` in colours that the system lays over the page: what is chosen, what has the keyboard and every word is
 * still to be told, on a light palette and on a dark one.
 */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { onBench, paleWords } from './bench-page.ts';
import { fetched, readSvg } from './export-page.ts';
import { openView, partOf, VIEWS } from './views.ts';

/** What is chosen but looks like its neighbour that is not. */
const unmarked = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const CHOSEN =
      '[aria-pressed=true], [aria-selected=true], [aria-checked=true], [aria-current]:not([aria-current=false])';
    const found: string[] = [];
    const name = (each: Element): string => each.outerHTML.replaceAll(/<svg.*<\/svg>/g, '').slice(0, 120);
    /** Shadows and washes are taken away; what is left to tell a state by. */
    const lookOf = (each: Element): string => {
      const style = getComputedStyle(each);
      const mark = getComputedStyle(each, '::before');
      return [
        style.backgroundColor,
        style.borderInlineStartWidth,
        style.borderBlockStartWidth,
        style.borderBlockEndWidth,
        style.textDecorationLine,
        `${style.outlineStyle} ${style.outlineWidth}`,
        mark.content,
        mark.backgroundColor,
      ].join();
    };
    for (const chosen of document.querySelectorAll(CHOSEN)) {
      if (!chosen.checkVisibility({ visibilityProperty: true })) continue;
      const state = ['aria-pressed', 'aria-selected', 'aria-checked', 'aria-current'].find((each) =>
        chosen.hasAttribute(each),
      );
      const isOther = (each: Element): boolean =>
        state === 'aria-current' || each.matches(`[${state}]`) || !!each.querySelector(`[${state}]`);
      // A switch that stands alone has none to be compared with; builds differ by the frame of their row.
      let [here, other]: [Element, Element | undefined] = [chosen, undefined];
      for (let at = chosen; at.parentElement && !other; at = at.parentElement) {
        here = at;
        other = [...at.parentElement.children].find(
          (each) =>
            each !== at &&
            each.tagName === at.tagName &&
            isOther(each) &&
            !each.matches(CHOSEN) &&
            !each.querySelector(CHOSEN),
        );
      }
      const partner = other && (other.tagName === chosen.tagName ? other : other.querySelector(chosen.tagName));
      if (other && partner && lookOf(here) === lookOf(other) && lookOf(chosen) === lookOf(partner))
        found.push(`looks as if it were not chosen: ${name(chosen)}`);
    }
    return found;
  });

/** Words on a ground of ink without colours of their own: the system lays its own ground under them, which hides them. */
const hidden = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    /** What the system colours as a whole. */
    const NATIVE = ':disabled, option, select, input, button:not([aria-pressed], [aria-selected])';
    const probe = document.createElement('i');
    probe.style.cssText = 'background: Canvas; forced-color-adjust: none';
    document.body.append(probe);
    const canvas = getComputedStyle(probe).backgroundColor;
    probe.remove();
    for (const each of document.querySelectorAll<HTMLElement>('body *:not(svg, svg *)')) {
      const { backgroundColor, forcedColorAdjust } = getComputedStyle(each) as CSSStyleDeclaration & {
        forcedColorAdjust: string;
      };
      const isFilled = backgroundColor !== canvas && !/, 0\)$/.test(backgroundColor);
      const hasWords = [...each.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
      );
      // The system lays its own ground under words, which then are ground on ground.
      if (isFilled && hasWords && forcedColorAdjust !== 'none' && !each.matches(NATIVE))
        found.push(`words hidden by their ground ${backgroundColor}: ${each.outerHTML.slice(0, 120)}`);
    }
    return found;
  });

const STOPS = 20;

/** What takes the keyboard and shows no ring around it that stands out. */
async function unringed(page: Page): Promise<string[]> {
  const found: string[] = [];
  for (let stop = 0; stop < STOPS; stop++) {
    await page.keyboard.press('Tab');
    const lost = await page.evaluate(() => {
      // The paper of the sheet has a tree of its own.
      const each = document.activeElement?.shadowRoot?.activeElement ?? document.activeElement;
      // The parts of a date are ringed one by one, by the browser itself.
      if (!each || each === document.body || each.matches('input[type=date]')) return undefined;
      // A box may carry the ring for the input in it.
      const ringed = [each, each.parentElement].some((at) => {
        if (!at) return false;
        const { outlineStyle, outlineWidth, outlineColor, backgroundColor } = getComputedStyle(at);
        return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1 && outlineColor !== backgroundColor;
      });
      return ringed ? undefined : each.outerHTML.slice(0, 120);
    });
    if (lost) found.push(`no ring: ${lost}`);
  }
  return found;
}

describe('in the colours of the system', () => {
  it.each(VIEWS)(
    '$name',
    (view) =>
      onBench(
        async (page) => {
          await openView(page, view);
          const found: string[] = [];
          for (const colorScheme of ['light', 'dark'] as const) {
            await page.emulateMedia({ colorScheme });
            await expect.poll(() => page.evaluate(() => document.documentElement.dataset.theme)).toBe('forced');
            const all = [...(await unmarked(page)), ...(await hidden(page)), ...(await paleWords(page, partOf(view)))];
            found.push(...all.map((line) => `${colorScheme}: ${line}`));
          }
          found.push(...(await unringed(page)));
          expect(found).toEqual([]);
        },
        { reducedMotion: 'reduce', forcedColors: 'active' },
      ),
    60_000,
  );

  it('charts keep the colours of builds and a light grid, and what is saved is as on a light page', () =>
    onBench(
      async (page) => {
        const { lines, grid, ink } = await page.evaluate(() => ({
          lines: [...document.querySelectorAll('.plot-board path.js-line')].map(
            (each) => getComputedStyle(each).stroke,
          ),
          grid: getComputedStyle(document.querySelector('.plot-board .gridlayer path') as Element).stroke,
          ink: getComputedStyle(document.body).color,
        }));
        // Of `palette.ts`, on a dark ground.
        expect(new Set(lines)).toEqual(new Set(['rgb(98, 181, 240)', 'rgb(255, 148, 96)']));
        expect(ink).toBe('rgb(255, 255, 255)');
        expect(grid).not.toBe(ink);
        const forced = await fetched(page, 'chart', 'chart-svg');
        await page.emulateMedia({ colorScheme: 'light', forcedColors: 'none' });
        await page.locator(':root[data-theme=light]').waitFor({ state: 'attached' });
        const light = await fetched(page, 'chart', 'chart-svg');
        const [a, b] = [await readSvg(page, forced.bytes.toString()), await readSvg(page, light.bytes.toString())];
        expect(a.colours).toEqual(b.colours);
      },
      { colorScheme: 'dark', forcedColors: 'active' },
    ));
});
