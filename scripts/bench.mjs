/** `npm run -s bench -- --json`: times the named cases of tests/bench; each result is checked before its time counts. */
import { ensureInstalled } from './lib/install.mjs';
import { runTool } from './lib/run.mjs';

await ensureInstalled();
process.exitCode = await runTool('tsx/dist/cli.mjs', ['tests/bench/main.ts', ...process.argv.slice(2)]);
