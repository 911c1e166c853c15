/** `npm run hand-calculation`: writes the tables of the calculation by hand into their pages, and the summary into the theory. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withBlocks } from './lib/blocks.ts';
import { handDemos } from './lib/hand-calculation/demos.ts';
import { handPages } from './lib/hand-calculation/page.ts';
import { ROOT } from './lib/root.mjs';

const pages = handPages(handDemos());
for (const [name, blocks] of Object.entries(pages)) {
  const page = join(ROOT, 'docs', name);
  writeFileSync(page, withBlocks(readFileSync(page, 'utf8'), blocks));
}
console.error(`the tables are in docs: ${Object.keys(pages).join(', ')}`);
