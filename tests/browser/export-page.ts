/** What the tests of exports do again and again: choose from a menu, take what arrives, and read it. */
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { text } from '../../src/ui/text/en.ts';

const words = text.export;

export type SheetName = keyof typeof words.sheets;
const folder = mkdtempSync(join(tmpdir(), 'shimwright-'));

export const menu = (page: Page, sheet: SheetName) => page.getByRole('button', { name: words.of(words.sheets[sheet]) });

export async function choose(page: Page, sheet: SheetName, choice: string): Promise<void> {
  await menu(page, sheet).click();
  await page.locator(`[data-export=${choice}]`).click();
}

/** What arrives among the downloads. */
export async function fetched(page: Page, sheet: SheetName, choice: string) {
  const arriving = page.waitForEvent('download');
  await choose(page, sheet, choice);
  const download = await arriving;
  const path = join(folder, download.suggestedFilename());
  await download.saveAs(path);
  return { name: download.suggestedFilename(), bytes: readFileSync(path) };
}

/** The picture as the browser reads it: a document that must parse, and nothing in it that acts or fetches. */
export const readSvg = (page: Page, source: string) =>
  page.evaluate((written) => {
    const parsed = new DOMParser().parseFromString(written, 'image/svg+xml');
    const all = [...parsed.querySelectorAll('*')];
    const attributes = all.flatMap((each) => [...each.attributes].map(({ name, value }) => ({ name, value })));
    return {
      root: parsed.documentElement.localName,
      width: Number(parsed.documentElement.getAttribute('width')),
      height: Number(parsed.documentElement.getAttribute('height')),
      words: parsed.documentElement.textContent ?? '',
      acting: all.filter(({ localName }) =>
        ['script', 'foreignObject', 'image', 'a', 'style', 'use'].includes(localName),
      ).length,
      outside: attributes
        .filter(({ name, value }) => /^on/.test(name) || /(href|src)$/.test(name) || /url\((?!["']?#)/.test(value))
        .map(({ name, value }) => `${name}=${value}`),
      colours: attributes.filter(({ name }) => ['style', 'fill', 'stroke'].includes(name)).map(({ value }) => value),
    };
  }, source);

/** Width and height from the head of a PNG file (ISO/IEC 15948, IHDR). */
export function pngSize(bytes: Buffer): [number, number] {
  expect([...bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

export const rows = (bytes: Buffer): string[] => bytes.toString('utf8').replace('\uFEFF', '').trim().split('\r\n');

export const notice = (page: Page) => page.locator('.notice').first();
