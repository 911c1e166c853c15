/** The demo project: a file like a person's own, read the same way. */
import saved from '../../demo/larkspur-trail-rear.shimwright.json?raw';
import { decodeProject } from '../../model/codec.ts';
import type { Project } from '../../model/project.ts';

export function demoProject(): Project {
  const decoded = decodeProject(saved);
  if (!decoded.ok) throw new Error(`the demo project has faults: ${JSON.stringify(decoded.faults[0])}`);
  return decoded.document;
}
