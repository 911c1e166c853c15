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
  return readDemo(demo.file);
}

/** @param file of the demo folder @throws Error when it does not read */
export function readDemo(file: string): Project {
  const decoded = decodeProject(readFileSync(join(ROOT, 'src/demo', file), 'utf8'));
  if (!decoded.ok) throw new Error(`the demo ${file} does not read: ${JSON.stringify(decoded.faults)}`);
  return decoded.document;
}
