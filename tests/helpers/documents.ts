/** Sound documents for tests that break one thing in them. */
import { readFileSync } from 'node:fs';
import type { Project, StackFile } from '../../src/model/project.ts';

export const fixturePath = (name: string): string => new URL(`../fixtures/${name}`, import.meta.url).pathname;
export const fixtureText = (name: string): string => readFileSync(fixturePath(name), 'utf8');

export const PROJECT_FIXTURE = 'project-v1.shimwright.json';
export const STACK_FIXTURE = 'stack-v1.json';
/** A fork cartridge that has every part a damper may have. */
export const CARTRIDGE_FIXTURE = 'cartridge-v1.shimwright.json';

export const soundProject = (): Project => JSON.parse(fixtureText(PROJECT_FIXTURE));
export const soundCartridge = (): Project => JSON.parse(fixtureText(CARTRIDGE_FIXTURE));
export const soundStack = (): StackFile => JSON.parse(fixtureText(STACK_FIXTURE));

/** Sets one value deep in a document by its path, such as `builds[0].bleed.count`; undefined removes the key. */
export function withValue<Document>(document: Document, path: string, value: unknown): Document {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() ?? '';
  const holder = keys.reduce((at, key) => at[key] as Record<string, unknown>, document as Record<string, unknown>);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return document;
}
