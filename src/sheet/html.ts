/** A sheet as one HTML file that needs nothing else: no script, no picture or font from elsewhere. */
import { el, type SheetChild, type SheetNode } from './node.ts';
import { SHEET_STYLE } from './style.ts';
import { sheetWords as words } from './text/en.ts';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** HTML knows no control characters but tab and line ends. */
const escaped = (text: string): string =>
  text.replace(/(?![\t\n\r])\p{Cc}/gu, '\ufffd').replace(/[&<>"']/g, (sign) => ESCAPES[sign]);

const VOID = new Set(['br', 'meta']);

const htmlOf = (child: SheetChild): string => (typeof child === 'string' ? escaped(child) : elementOf(child));

function elementOf({ tag, attributes, children }: SheetNode): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`);
  const open = `<${tag}${written.join('')}>`;
  return VOID.has(tag) ? open : `${open}${children.map(htmlOf).join('')}</${tag}>`;
}

/** Nothing may be loaded or run, whatever the names say. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** @param title of the window, and of the PDF that the print dialog makes */
export function htmlPage(title: string, sheet: SheetNode): string {
  const head = [
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('title', {}, title),
  ];
  // The style is the program's own and must not be escaped.
  const style = `<style>${SHEET_STYLE}</style>`;
  const body = htmlOf(el('body', { class: 'sheet-page' }, el('main', {}, sheet)));
  return `<!doctype html>\n<html lang="${words.language}"><head>${head.map(htmlOf).join('')}${style}</head>${body}</html>\n`;
}
