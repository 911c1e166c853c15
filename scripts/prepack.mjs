/** Before `npm pack`: the tarball holds the command line as one bundle and needs no other package. */
import { buildCli } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';

await ensureInstalled();
await buildCli();
