import { describe, expect, it } from 'vitest';
import { buildSheet } from '../../../src/sheet/build-sheet.ts';
import { htmlPage } from '../../../src/sheet/html.ts';
import { el } from '../../../src/sheet/node.ts';
import { sheetInput } from '../../helpers/sheets.ts';

const HOSTILE = `</title></style><script>alert(1)</script><img src=x onerror="alert(2)">'"&\u0000\u001b`;

function hostilePage(): string {
  const input = sheetInput({
    name: HOSTILE,
    assembly: { torqueSource: HOSTILE, threadLocker: HOSTILE, notes: HOSTILE },
  });
  const { project, build } = input;
  const baseline = { ...build, id: HOSTILE, name: HOSTILE };
  const named = {
    ...project,
    name: HOSTILE,
    damper: { ...project.damper, name: HOSTILE },
    fluid: { ...project.fluid, name: HOSTILE },
  };
  const failed = { status: 'failed', reason: HOSTILE } as const;
  const curves = { build: failed, baseline: failed };
  const link = { address: `https://bench.example/?${HOSTILE}`, isWhole: true };
  return htmlPage(HOSTILE, buildSheet({ ...input, project: named, baseline, curves, link }));
}

/** Every tag of a page with its attributes, as a reader of HTML takes them out of it. */
function tagsOf(page: string): string[] {
  return [...page.replace(/<style>.*?<\/style>/s, '').matchAll(/<([a-z0-9!]+)/gi)].map(([, tag]) => tag.toLowerCase());
}

describe('the file of a sheet', () => {
  it('is whole HTML without a script, an event, or anything from elsewhere', () => {
    const page = htmlPage('Sheet', buildSheet(sheetInput()));
    expect(page).toMatch(/^<!doctype html>\n<html lang="en"><head><meta charset="utf-8">/);
    expect(page).toMatch(/<\/body><\/html>\n$/);
    expect(tagsOf(page)).not.toEqual(expect.arrayContaining(['script']));
    for (const tag of ['link', 'img', 'iframe', 'object', 'form', 'base']) expect(tagsOf(page)).not.toContain(tag);
    expect(page).not.toMatch(/\son[a-z]+=|\bsrc=|url\(|@import/i);
    expect(page).toContain('content="default-src &#39;none&#39;');
  });

  it('closes every element in the order in which it was opened', () => {
    const open: string[] = [];
    const page = hostilePage().replace(/<style>.*?<\/style>/s, '');
    for (const [, slash, tag] of page.matchAll(/<(\/?)([a-z][a-z0-9]*)[^>]*>/gi)) {
      if (slash) expect(open.pop()).toBe(tag);
      else if (tag !== 'meta') open.push(tag);
    }
    expect(open).toEqual([]);
  });

  it('has no id twice', () => {
    const ids = [...htmlPage('Sheet', buildSheet(sheetInput())).matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids.length).toBeGreaterThan(8);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('takes hostile names as words, wherever they stand', () => {
    const page = hostilePage();
    const harmless = htmlPage('Sheet', buildSheet(sheetInput()));
    expect(page).not.toMatch(/<script|<img|onerror="|<\/style>.*<\/style>/s);
    // Machine, damper, build, oil, torque, thread-locker, notes, baseline, both reasons, the title.
    expect(page.split('&lt;script&gt;').length - 1).toBeGreaterThanOrEqual(11);
    expect(new Set(tagsOf(page))).toEqual(new Set([...tagsOf(harmless), 'a']));
    // biome-ignore lint/suspicious/noControlCharactersInRegex: HTML has none of them
    expect(page).not.toMatch(/[\u0000\u001b]/);
  });

  it('keeps a quote inside the value of an attribute', () => {
    expect(htmlPage('t', el('p', { title: `a"b'c<d` }))).toContain('<p title="a&quot;b&#39;c&lt;d"></p>');
  });
});
