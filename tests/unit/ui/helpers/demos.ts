/** The demos as documents. */
import { readDemo } from '../../../../scripts/lib/demo-project.ts';
import { DEMOS } from '../../../../src/demo/index.ts';
import type { Project } from '../../../../src/model/project.ts';

export { readDemo };

export const demos = (): [string, Project][] => DEMOS.map(({ id, file }) => [id, readDemo(file)]);

export const FORK = 'larkspur-trail-fork.shimwright.json';
export const REAR = 'larkspur-trail-rear.shimwright.json';
export const RESERVOIR = 'dunnock-mountain-bike-rear.shimwright.json';
