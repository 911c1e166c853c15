/** Installs what is missing; says nothing when nothing is. */
import { ensureInstalled } from './lib/install.mjs';

try {
  await ensureInstalled();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
