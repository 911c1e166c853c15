import { chmodSync, rmSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BENCH_SOURCES, CLI_SOURCES } from '../../scripts/lib/build.mjs';
import { findChromium } from '../../scripts/lib/chromium.mjs';
import { missingPackages } from '../../scripts/lib/install.mjs';
import { isStale } from '../../scripts/lib/stale.mjs';
import { buildGraph, reachedFrom, readSources } from '../architecture/import-graph.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

describe('missingPackages', () => {
  const lock = (packages: object) => JSON.stringify({ lockfileVersion: 3, packages });
  const locked = lock({
    '': { name: 'bench', version: '1.0.0' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0', dev: true },
    'node_modules/for-another-machine': { version: '1.0.0', optional: true },
  });

  it('is everything on a bare clone', () => {
    expect(missingPackages(temporaryFolder({ 'package-lock.json': locked }))).toEqual([
      'node_modules/a',
      'node_modules/b',
    ]);
  });

  it('is nothing when each is there in its version', () => {
    const installed = lock({ 'node_modules/a': { version: '1.0.0' }, 'node_modules/b': { version: '2.0.0' } });
    const folder = temporaryFolder({ 'package-lock.json': locked, 'node_modules/.package-lock.json': installed });
    expect(missingPackages(folder)).toEqual([]);
  });

  it('is one that is there in another version', () => {
    const installed = lock({ 'node_modules/a': { version: '1.0.0' }, 'node_modules/b': { version: '1.9.0' } });
    const folder = temporaryFolder({ 'package-lock.json': locked, 'node_modules/.package-lock.json': installed });
    expect(missingPackages(folder)).toEqual(['node_modules/b']);
  });

  it('is nothing here, where the tests run', () => expect(missingPackages()).toEqual([]));
});

describe('isStale', () => {
  /** Sets every time by hand: the product at 1000 s, the sources before it. */
  function builtFolder() {
    const folder = temporaryFolder({ 'dist/out.js': '', 'src/a.ts': '', 'src/deep/b.ts': '' });
    const at = (path: string, seconds: number) => utimesSync(join(folder, path), seconds, seconds);
    for (const path of ['src/a.ts', 'src/deep/b.ts', 'src/deep', 'src']) at(path, 900);
    at('dist/out.js', 1000);
    const stale = () => isStale(join(folder, 'dist/out.js'), [join(folder, 'src'), join(folder, 'not-there')]);
    return { folder, at, stale };
  }

  it('is false when the product is newest', () => expect(builtFolder().stale()).toBe(false));

  it('is true when a source changed, however deep', () => {
    const { at, stale } = builtFolder();
    at('src/deep/b.ts', 1001);
    expect(stale()).toBe(true);
  });

  it('is true when a source was removed', () => {
    const { folder, stale } = builtFolder();
    rmSync(join(folder, 'src/deep/b.ts'));
    expect(stale()).toBe(true);
  });

  it('is true when there is no product', () => {
    const { folder, stale } = builtFolder();
    rmSync(join(folder, 'dist/out.js'));
    expect(stale()).toBe(true);
  });
});

describe('findChromium', () => {
  const program = (path: string) => {
    const folder = temporaryFolder({ [path]: '#!/bin/sh' });
    chmodSync(join(folder, path), 0o755);
    return { folder, file: join(folder, path) };
  };

  it('looks at CHROMIUM_PATH first', () => {
    const { folder } = program('chromium');
    const { file } = program('mine');
    expect(findChromium({ PATH: folder, CHROMIUM_PATH: file })).toBe(file);
  });

  it('takes no other when CHROMIUM_PATH names nothing that runs', () => {
    const { folder } = program('chromium');
    expect(findChromium({ PATH: folder, CHROMIUM_PATH: join(folder, 'not-there') })).toBeUndefined();
  });

  it.each(['chromium', 'chromium-browser', 'google-chrome'])('finds %s on the PATH', (name) => {
    const { folder, file } = program(name);
    expect(findChromium({ PATH: `${temporaryFolder()}:${folder}` })).toBe(file);
  });

  it('passes over a file that does not run', () => {
    const folder = temporaryFolder({ chromium: 'no program' });
    expect(findChromium({ PATH: folder })).not.toBe(join(folder, 'chromium'));
  });
});

describe('the sources that make a build stale', () => {
  const graph = buildGraph(readSources('src', 'workers'));
  const workers = [...graph.keys()].filter((file) => file.endsWith('.worker.ts'));

  it.each([
    ['the command line', CLI_SOURCES, ['src/cli/main.ts'], 'src/measured/table.ts'],
    ['the bench', BENCH_SOURCES, ['src/ui/main.tsx', ...workers], 'src/sheet/build-sheet.ts'],
  ])('of %s hold every file that comes along', (_, sources, entries, one) => {
    const needed = entries.flatMap((entry) => [...reachedFrom(graph, entry).keys()]).filter((file) => graph.has(file));
    expect(needed).toContain(one);
    expect(needed.filter((file) => !sources.some((source) => file.startsWith(`${source}/`)))).toEqual([]);
  });
});
