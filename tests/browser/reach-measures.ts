/** Measures a page as it stands: words that are cut off, words that lie on each other, boxes too small for what is in them. */
import type { Page } from 'playwright-core';

/** Words for the ear alone, and words that end in dots where the whole stands nearby: notes in their editor, names in their box. */
const MAY_CUT = '.unseen, .build-notes, .build .difference, .fold-name, .bar .project, .skip';

/** Put into the page once: every line of words that is seen, with the element it belongs to and the elements around that. */
interface Words {
  readonly owner: Element;
  readonly boxes: readonly DOMRect[];
  readonly around: readonly Element[];
}

/** Into the page, for what measures there. Drawings, and what scrolls by itself, are left to look at. */
const gather = (page: Page): Promise<void> =>
  page.evaluate((mayCut) => {
    const isHidden = (element: Element): boolean => {
      const { clipPath } = getComputedStyle(element);
      return !element.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || clipPath === 'inset(50%)';
    };
    const scrolls = (element: Element): boolean =>
      /auto|scroll/.test(getComputedStyle(element).overflowX) && element.scrollWidth > element.clientWidth + 1;
    const around = (element: Element): Element[] => {
      const all: Element[] = [];
      for (let at: Element | null = element; at && at !== document.documentElement; at = at.parentElement) all.push(at);
      return all;
    };
    Object.assign(globalThis, {
      seenWords: (root: Element): Words[] => {
        const seen: Words[] = [];
        const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node; node = walker.nextNode()) {
          const owner = node.parentElement;
          if (!owner || !node.textContent?.trim()) continue;
          if (owner.closest(`svg, option, script, style, ${mayCut}`)) continue;
          const chain = around(owner);
          if (chain.some((each) => isHidden(each) || scrolls(each))) continue;
          const range = document.createRange();
          range.selectNodeContents(node);
          const boxes = [...range.getClientRects()].filter(({ width }) => width > 0);
          if (boxes.length > 0) seen.push({ owner, boxes, around: chain });
        }
        return seen;
      },
      nameOf: (element: Element): string =>
        `<${element.tagName.toLowerCase()} class="${element.getAttribute('class') ?? ''}"> ${(element.textContent ?? '').trim().slice(0, 60)}`,
    });
  }, MAY_CUT);

interface InPage {
  seenWords(root: Element): Words[];
  nameOf(element: Element): string;
}

/** Beyond the edge of the window, or beyond a box that cuts what it has no room for. */
const cutWords = (page: Page, part: string): Promise<string[]> =>
  page.evaluate((within) => {
    const { seenWords, nameOf } = globalThis as unknown as InPage;
    const SLACK = 1.5;
    const lost: string[] = [];
    for (const { owner, boxes, around } of seenWords(document.querySelector(within) ?? document.body)) {
      const beyond = (room: { left: number; right: number; top: number; bottom: number }): boolean =>
        boxes.some(
          ({ left, right, top, bottom }) =>
            left < room.left - SLACK ||
            right > room.right + SLACK ||
            top < room.top - SLACK ||
            bottom > room.bottom + SLACK,
        );
      if (beyond({ left: 0, right: innerWidth, top: Number.NEGATIVE_INFINITY, bottom: Number.POSITIVE_INFINITY }))
        lost.push(`beyond the edge: ${nameOf(owner)}`);
      const cutter = around.find(
        (each) => /hidden|clip/.test(getComputedStyle(each).overflow) && beyond(each.getBoundingClientRect()),
      );
      if (cutter) lost.push(`cut by ${nameOf(cutter).split('>')[0]}>: ${nameOf(owner)}`);
    }
    return lost;
  }, part);

/** Lines of two elements in one place, where neither is a sheet that lies over the page on purpose. */
const overlaidWords = (page: Page, part: string): Promise<string[]> =>
  page.evaluate((within) => {
    const { seenWords, nameOf } = globalThis as unknown as InPage;
    const floorOf = (around: readonly Element[]): Element | undefined =>
      around.find((each) => /fixed|sticky|absolute/.test(getComputedStyle(each).position) || each.tagName === 'DIALOG');
    const lines = seenWords(document.querySelector(within) ?? document.body).flatMap(({ owner, boxes, around }) =>
      boxes.map((box) => ({ owner, box, floor: floorOf(around) })),
    );
    return lines.flatMap((a, i) =>
      lines.slice(i + 1).flatMap((b) => {
        if (a.floor !== b.floor || a.owner === b.owner) return [];
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        // Lines set close share the room above their letters.
        const isOver = wide > 2 && high > 0.35 * Math.min(a.box.height, b.box.height);
        return isOver ? [`on each other: ${nameOf(a.owner)} | ${nameOf(b.owner)}`] : [];
      }),
    );
  }, part);

const smallBoxes = (page: Page, part: string): Promise<string[]> =>
  page.locator(part).evaluateAll(
    (all, mayCut) =>
      all
        .flatMap((root) => [...root.querySelectorAll<HTMLInputElement>('input')])
        .filter(({ type }) => ['text', 'number', 'search'].includes(type))
        .filter((each) => each.checkVisibility({ visibilityProperty: true }) && !each.closest(mayCut))
        .filter((each) => each.value !== '' && each.scrollWidth > each.clientWidth + 1)
        .map((each) => `a box too small: ${each.outerHTML.slice(0, 120)}`),
    MAY_CUT,
  );

/**
 * Where words are lost to the eye, one line each.
 * @param part a part of the page
 */
export async function lostWords(page: Page, part = 'body'): Promise<string[]> {
  await gather(page);
  const all = [await cutWords(page, part), await overlaidWords(page, part), await smallBoxes(page, part)];
  return [...new Set(all.flat())];
}

/** What a reader may set by WCAG 2.2, 1.4.12: nothing of the page may be lost by it. */
const SPACING = `
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
  p { margin-block-end: 2em !important; }`;

/** A style of the reader: the page's own policy refuses a style element. */
export const spaceWords = (page: Page): Promise<void> =>
  page.evaluate((style) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(style);
    document.adoptedStyleSheets = [sheet];
  }, SPACING);

export const unspaceWords = (page: Page): Promise<void> =>
  page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
