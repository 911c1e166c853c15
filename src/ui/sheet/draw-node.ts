/** The plain data of a sheet as elements of the page. */
import { type ComponentChild, h } from 'preact';
import type { SheetChild } from '../../sheet/node.ts';

/** The page has its own first heading, so that of the sheet is a second one here. */
const tagHere = (tag: string): string => (tag === 'h1' ? 'h2' : tag);

export function drawNode(child: SheetChild): ComponentChild {
  if (typeof child === 'string') return child;
  return h(tagHere(child.tag), child.attributes, ...child.children.map(drawNode));
}
