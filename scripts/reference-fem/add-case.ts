/** Puts a new case into the folder of reference cases. */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CaseFiles } from './case-files.ts';

/** @returns the folder @throws Error when a case of this name is there already: evidence is not overwritten */
export function addCase(root: string, id: string, files: CaseFiles): string {
  const folder = join(root, 'stack', id);
  if (existsSync(folder)) throw new Error(`${folder} is there already`);
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}
