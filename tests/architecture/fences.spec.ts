import { describe, expect, it } from 'vitest';
import { breachesOf, leaksOf } from './fences.ts';
import { buildGraph, cyclesOf, importsOf, readSources } from './import-graph.ts';

const graph = buildGraph(readSources('src', 'workers'));

describe('the sources', () => {
  it('are read: the walk sees the solver, its worker and the page', () => {
    const files = [
      'src/solver/index.ts',
      'workers/solver.worker.ts',
      'workers/client.ts',
      'src/ui/main.tsx',
      'src/cli/main.ts',
    ];
    expect(files.filter((file) => !graph.has(file))).toEqual([]);
  });

  it('import one way', () => expect(breachesOf(graph)).toEqual([]));
  it('leak nothing on a long way', () => expect(leaksOf(graph)).toEqual([]));
  it('import in no circle', () => expect(cyclesOf(graph)).toEqual([]));
});

describe('a planted breach', () => {
  const breaches = (path: string, text: string) => breachesOf(buildGraph(new Map([[path, text]])));

  it.each([
    ['src/units/a.ts', "import { x } from '../model/project.ts';"],
    ['src/model/a.ts', "import type { x } from '../solver/types.ts';"],
    ['src/solver/plate/a.ts', "import { x } from '../../model/project.ts';"],
    ['src/solver/plate/a.ts', "import type { Project } from '../../model/project.ts';"],
    ['src/solver/plate/a.ts', "import { create } from 'mathjs';"],
    ['src/solver/plate/a.ts', "import { parseLength } from '../../units/parse.ts';"],
    ['src/solver/plate/a.ts', "import { readFileSync } from 'node:fs';"],
    ['src/solver/plate/a.ts', "export * from '../index.ts';"],
    ['src/ui/a.tsx', "import { solveLift } from '../solver/index.ts';"],
    ['src/ui/a.tsx', "import type { ForceCurve } from '../solver/damper/types.ts';"],
    ['src/ui/a.tsx', "const solver = await import('../solver/index.ts');"],
    ['src/ui/a.tsx', "type Curve = import('../solver/index.ts').ForceCurve;"],
    ['src/ui/a.tsx', "import { PROTOCOL_VERSION } from '../../workers/protocol.ts';"],
    ['src/ui/a.tsx', "import { Dispatcher } from '../../workers/dispatcher.ts';"],
    ['src/ui/a.tsx', "new Worker(new URL('../../workers/solver.worker.ts', import.meta.url));"],
    ['src/ui/a.tsx', 'const anything = await import(name);'],
    ['src/ui/a.tsx', "import { evaluateCase } from '../proof/registry.ts';"],
    ['src/ui/a.tsx', "import { proofCases } from '../../workers/proof-cases.ts';"],
    ['workers/proof-client.ts', "import { reportOn } from '../src/proof/report.ts';"],
    ['workers/client.ts', "import { runProof } from './proof-client.ts';"],
    ['src/cli/a.ts', "import { forceCurve } from '../solver/damper/force-curve.ts';"],
    ['src/cli/a.ts', "import { createSolverClient } from '../../workers/client.ts';"],
    ['workers/protocol.ts', "import { solveLift } from '../src/solver/index.ts';"],
    ['workers/client.ts', "import { solveLift } from '../src/solver/index.ts';"],
    ['workers/solver.worker.ts', "import { solveLift } from '../src/solver/stack/solve-lift.ts';"],
    ['src/elsewhere/a.ts', ''],
  ])('%s: %s', (path, text) => expect(breaches(path, text)).toHaveLength(1));

  it.each([
    ['src/ui/a.tsx', "import type { ForceCurve } from '../../workers/protocol.ts';"],
    ['src/ui/a.tsx', "import { type SolverClient, createSolverClient } from '../../workers/client.ts';"],
    ['src/ui/a.tsx', "const proof = await import('../../workers/proof-client.ts');"],
    ['workers/proof-spawn.ts', "new Worker(new URL('./proof.worker.ts', import.meta.url), { type: 'module' });"],
    ['workers/proof.worker.ts', "import { reportOn } from '../src/proof/report.ts';"],
    ['src/ui/a.tsx', "// import { solveLift } from '../solver/index.ts';"],
    ['workers/protocol.ts', "import { type ForceCurve } from '../src/solver/index.ts';"],
    ['workers/spawn.ts', "new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });"],
    ['src/solver/from-model.ts', "import type { Project } from '../model/project.ts';"],
    ['src/solver/from-model/gas.ts', "import type { Gas } from '../../model/project.ts';"],
  ])('not %s: %s', (path, text) => expect(breaches(path, text)).toEqual([]));
});

describe('a planted leak', () => {
  it('is found through shared files, with its way', () => {
    const planted = buildGraph(
      new Map([
        ['src/solver/a.ts', "export { LIMIT } from '../units/limits.ts';"],
        ['src/units/limits.ts', "import './colours.ts'; export const LIMIT = 1;"],
        ['src/units/colours.ts', "import { signal } from '@preact/signals';"],
      ]),
    );
    expect(leaksOf(planted)).toContain(
      'src/solver/a.ts → src/units/limits.ts → src/units/colours.ts → @preact/signals',
    );
  });

  it('is none when only types come along, or in another thread', () => {
    const planted = buildGraph(
      new Map([
        [
          'src/ui/a.ts',
          "import type { X } from '../../workers/protocol.ts'; new URL('../../workers/w.ts', import.meta.url);",
        ],
        ['workers/protocol.ts', "import { x } from '../src/solver/index.ts';"],
        ['workers/w.ts', "import { x } from '../src/solver/index.ts';"],
      ]),
    );
    expect(leaksOf(planted)).toEqual([]);
  });
});

describe('a planted circle', () => {
  it('is found, of types too', () => {
    const planted = buildGraph(
      new Map([
        ['a.ts', "import './b.ts';"],
        ['b.ts', "import type { C } from './c.ts';"],
        ['c.ts', "export * from './b.ts';"],
      ]),
    );
    expect(cyclesOf(planted)).toEqual([['b.ts', 'c.ts', 'b.ts']]);
  });
});

describe('importsOf', () => {
  it('tells values from types', () => {
    const kinds = (text: string) => importsOf('src/a.ts', text).map(({ kind }) => kind);
    expect(kinds("import { type A, b } from './x.ts';")).toEqual(['value']);
    expect(kinds("import { type A } from './x.ts';")).toEqual(['type']);
    expect(kinds("import './x.ts';")).toEqual(['value']);
    expect(kinds("export type * from './x.ts';")).toEqual(['type']);
    expect(kinds("import d, { type A } from './x.ts';")).toEqual(['value']);
  });

  it('names packages without their inner paths', () => {
    const targets = (text: string) => importsOf('src/a.ts', text).map(({ target }) => target);
    expect(targets("import 'node:fs/promises'; import '@a/b/c'; import 'd/e'; import '../x.ts?raw';")).toEqual([
      'node',
      '@a/b',
      'd',
      'x.ts',
    ]);
  });
});
