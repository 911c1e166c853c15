/**
 * `npm run -s cli -- …`: the command line out of the sources. The bundle is made anew when a source is newer; what the
 * making prints goes to stderr, so that stdout holds the result alone.
 */
import { pathToFileURL } from 'node:url';
import { CLI_BUNDLE, ensureCli } from './lib/build.mjs';
import { ensureInstalled } from './lib/install.mjs';

try {
  await ensureInstalled();
  await ensureCli();
  await import(pathToFileURL(CLI_BUNDLE).href);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
