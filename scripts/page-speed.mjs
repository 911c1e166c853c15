/**
 * `npm run -s page-speed -- [--json] [--edits N]`: how fast the built bench is under the hand, in Chromium. A benchmark and no test:
 * its figures are those of this machine at this moment, so the load of the machine stands beside them.
 */
import { loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { ensureBench } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';

const { values } = parseArgs({ options: { json: { type: 'boolean' }, edits: { type: 'string', default: '60' } } });

try {
  const edits = editsWanted(values.edits);
  await ensureInstalled();
  await ensureBench();
  const { measurePage } = await import('./page-speed/measure-page.mjs');
  const { tableOf } = await import('./page-speed/table.mjs');
  const figures = { format: 'shimwright/page-speed', version: 1, load: loadavg()[0], ...(await measurePage(edits)) };
  console.log(values.json ? JSON.stringify(figures, null, 2) : tableOf(figures));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** @param {string} text */
function editsWanted(text) {
  const count = Number(text);
  if (Number.isInteger(count) && count >= 2) return count;
  throw new Error(`--edits: got ${text}, wanted a whole number from 2`);
}
