/** `npm run what-matters`: writes the tables of what matters most for force into their page. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { withBlocks } from './lib/blocks.ts';
import { ROOT } from './lib/root.mjs';
import { matterCases } from './lib/what-matters/cases.ts';
import { effectsOf } from './lib/what-matters/effects.ts';
import { tablesOf } from './lib/what-matters/table.ts';

const PAGE = join(ROOT, 'docs/what-matters.md');

const tables = tablesOf(matterCases().map(effectsOf));
writeFileSync(PAGE, withBlocks(readFileSync(PAGE, 'utf8'), { 'what-matters': tables }));
console.error('the tables are in docs/what-matters.md');
