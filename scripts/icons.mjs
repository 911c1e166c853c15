/** Draws the icons of the installed bench, public/icon-*.png, from public/mark.svg. Run it when the mark changes. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { findChromium, NO_CHROMIUM } from './lib/chromium.mjs';
import { ROOT } from './lib/root.mjs';

/** `inset`: empty part of each side; a maskable icon may be cut to the circle of four fifths of its width. */
const ICONS = [
  { name: 'icon-192.png', size: 192, inset: 0 },
  { name: 'icon-512.png', size: 512, inset: 0 },
  { name: 'icon-maskable-512.png', size: 512, inset: 0.16 },
];

const executablePath = findChromium();
if (!executablePath) throw new Error(NO_CHROMIUM);
const mark = readFileSync(join(ROOT, 'public/mark.svg'), 'utf8');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
try {
  for (const { name, size, inset } of ICONS) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const sheet = inset > 0 ? '#fafbf8' : 'transparent';
    const body = `<body style="margin:0;padding:${inset * size}px;box-sizing:border-box;background:${sheet}">`;
    await page.setContent(`<!doctype html>${body}${mark}</body>`);
    writeFileSync(join(ROOT, 'public', name), await page.screenshot({ omitBackground: inset === 0 }));
    await page.close();
  }
} finally {
  await browser.close();
}
