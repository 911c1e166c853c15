/** Pieces that several sections of the sheet are made of. */
import { el, name, type SheetChild, type SheetNode } from './node.ts';

export const box = (): SheetNode => el('span', { class: 'box' });

/** One tick box for each, up to a handful; a single one for more. */
export const boxes = (count: number): SheetNode[] => Array.from({ length: count <= 8 ? count : 1 }, box);

export interface Fact {
  readonly label: string;
  /** What is known, or nothing: then a line is left to write on. */
  readonly value?: SheetChild;
  /** In front of the line. */
  readonly hint?: string;
}

export const facts = (each: readonly Fact[]): SheetNode =>
  el(
    'dl',
    { class: 'facts' },
    ...each.map(({ label, value, hint = '' }) => {
      const said = value === undefined ? el('dd', { class: 'blank' }, hint) : el('dd', {}, value);
      return el('div', {}, el('dt', {}, label), said);
    }),
  );

export interface Column {
  readonly head: string;
  readonly isNumber?: boolean;
}

export type Cell = SheetChild | readonly SheetChild[] | { readonly write: true };

const isBlank = (cell: Cell): cell is { readonly write: true } => typeof cell === 'object' && 'write' in cell;

function cellOf(cell: Cell, { isNumber }: Column): SheetNode {
  if (isBlank(cell)) return el('td', { class: 'write' });
  return el('td', isNumber ? { class: 'number' } : {}, cell);
}

/** More rows or lines than that may go on over the end of a page; half of one has room for so many beside a drawing. */
export const LONG = 24;

const lines = (child: SheetChild): number =>
  typeof child === 'string'
    ? 0
    : child.children.reduce((sum, each) => sum + lines(each), child.tag === 'tr' || child.tag === 'li' ? 1 : 0);

/** @param foot under all columns */
export function table(columns: readonly Column[], rows: readonly (readonly Cell[])[], foot?: string): SheetNode {
  const head = columns.map(({ head: said, isNumber }) =>
    el('th', { scope: 'col', ...(isNumber && { class: 'number' }) }, said),
  );
  return el(
    'table',
    rows.length > LONG ? { class: 'long' } : {},
    el('thead', {}, el('tr', {}, head)),
    el('tbody', {}, ...rows.map((row) => el('tr', {}, ...row.map((cell, i) => cellOf(cell, columns[i]))))),
    ...(foot === undefined ? [] : [el('tfoot', {}, el('tr', {}, el('td', { colspan: columns.length }, foot)))]),
  );
}

export const hint = (words: string): SheetNode => el('p', { class: 'hint' }, words);

/** Steps, each with a box to tick. */
export const checklist = (steps: readonly string[]): SheetNode =>
  el('ul', {}, ...steps.map((step) => el('li', {}, box(), step)));

/** A section that stays on one page unless it is long. @param tag small, behind its title */
export function section(id: string, title: SheetChild, tag: string, ...children: readonly SheetChild[]): SheetNode {
  const long = children.reduce((sum, child) => sum + lines(child), 0) > LONG ? ' long' : '';
  return el(
    'section',
    { class: `whole ${id}${long}`, 'aria-labelledby': `sheet-${id}` },
    el('h2', { id: `sheet-${id}` }, title, ...(tag === '' ? [] : [' ', el('span', { class: 'tag' }, tag)])),
    ...children,
  );
}

export const named = (said: string, otherwise: string): SheetNode => name(said.trim() === '' ? otherwise : said);
