/** `npm run build`: the bench into dist/bench and the command line into dist/cli. */
import { buildBench, buildCli } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';

await ensureInstalled();
await buildBench();
await buildCli();
