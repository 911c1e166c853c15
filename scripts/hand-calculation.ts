/** `npm run hand-calculation`: writes the tables of the calculation by hand into their page, and the summary into the theory. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withBlocks } from './lib/blocks.ts';
import { demoProject } from './lib/demo-project.ts';
import { handBlocks } from './lib/hand-calculation/page.ts';
import { ROOT } from './lib/root.mjs';

const write = (path: string, blocks: Readonly<Record<string, string>>): void => {
  const page = join(ROOT, path);
  writeFileSync(page, withBlocks(readFileSync(page, 'utf8'), blocks));
};

const { summary, ...blocks } = handBlocks(demoProject('larkspur-trail-rear'), demoProject('larkspur-trail-fork'));
write('docs/hand-calculation.md', blocks);
write('docs/theory.md', { summary });
console.error('the tables are in docs/hand-calculation.md, the summary in docs/theory.md');
