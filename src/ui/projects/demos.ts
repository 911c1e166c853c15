/** The demo projects to start from. The first is part of the page; the others are fetched when they are wanted. */
import { DEMOS, type Demo } from '../../demo/index.ts';
import { decodeProject } from '../../model/codec.ts';
import type { Project } from '../../model/project.ts';
import { demoProject } from '../app/demo.ts';

/** A demo without a fault: a test of the demos holds them to it. */
function decoded({ default: saved }: { readonly default: string }): Project {
  const read = decodeProject(saved);
  if (!read.ok) throw new Error(`a demo has faults: ${JSON.stringify(read.faults[0])}`);
  return read.document;
}

const READERS: Readonly<Partial<Record<string, () => Promise<Project>>>> = {
  'larkspur-trail-rear': async () => demoProject(),
  'larkspur-trail-fork': () => import('../../demo/larkspur-trail-fork.shimwright.json?raw').then(decoded),
  'wagtail-hill-climb-rear': () => import('../../demo/wagtail-hill-climb-rear.shimwright.json?raw').then(decoded),
  'dunnock-mountain-bike-rear': () => import('../../demo/dunnock-mountain-bike-rear.shimwright.json?raw').then(decoded),
};

export interface DemoEntry extends Demo {
  /** @throws Error when it could not be fetched */
  readonly read: () => Promise<Project>;
}

export const demoEntries: readonly DemoEntry[] = DEMOS.flatMap((demo) => {
  const read = READERS[demo.id];
  return read ? [{ ...demo, read }] : [];
});
