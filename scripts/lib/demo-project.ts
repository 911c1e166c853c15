/** A demo as a person opens it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEMOS } from '../../src/demo/index.ts';
import { decodeProject } from '../../src/model/codec.ts';
import type { Project } from '../../src/model/project.ts';
import { ROOT } from './root.mjs';

/** @throws Error when there is none of this name or it does not read */
export function demoProject(wanted: string): Project {
  const demo = DEMOS.find(({ id }) => id === wanted);
  if (!demo) throw new Error(`there is no demo ${wanted}`);
  const decoded = decodeProject(readFileSync(join(ROOT, 'src/demo', demo.file), 'utf8'));
  if (!decoded.ok) throw new Error(`the demo ${wanted} does not read: ${JSON.stringify(decoded.faults)}`);
  return decoded.document;
}
