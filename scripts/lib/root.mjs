import { fileURLToPath } from 'node:url';

/** Absolute path of the repository, whatever folder a script is called from. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url)).replace(/[/\\]$/, '');
