/** The demos as documents. */
import { readFileSync } from 'node:fs';
import { DEMOS } from '../../../../src/demo/index.ts';
import { decodeProject } from '../../../../src/model/codec.ts';
import type { Project } from '../../../../src/model/project.ts';

export function readDemo(file: string): Project {
  const decoded = decodeProject(readFileSync(`src/demo/${file}`, 'utf8'));
  if (!decoded.ok) throw new Error(`${file}: ${JSON.stringify(decoded.faults[0])}`);
  return decoded.document;
}

export const demos = (): [string, Project][] => DEMOS.map(({ id, file }) => [id, readDemo(file)]);

export const FORK = 'larkspur-trail-fork.shimwright.json';
export const REAR = 'larkspur-trail-rear.shimwright.json';
export const RESERVOIR = 'dunnock-mountain-bike-rear.shimwright.json';
