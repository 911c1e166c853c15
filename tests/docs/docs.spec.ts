import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../architecture/import-graph.ts';
import { brokenLinks, markdownFiles, missingPaths, scriptsNamed, sessions, tableUnder } from './markdown.ts';

const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');
const { scripts } = JSON.parse(read('package.json'));
const pages = markdownFiles();

describe('the pages', () => {
  it('are found', () => expect(pages).toEqual(expect.arrayContaining(['README.md', 'DEVELOPERS.md', 'CHANGELOG.md'])));
  it.each(pages)('%s links to what is there', (path) => expect(brokenLinks(path, read(path))).toEqual([]));
  it.each(pages)('%s names paths that are there', (path) => expect(missingPaths(read(path))).toEqual([]));
  it.each(pages)('%s names npm scripts that are there', (path) => {
    expect(scriptsNamed(read(path)).filter((name) => name !== '' && !(name in scripts))).toEqual([]);
  });
});

describe('DEVELOPERS.md', () => {
  const page = read('DEVELOPERS.md');

  it('names every npm script that a person runs', () => {
    const named = new Set(scriptsNamed(page));
    expect(Object.keys(scripts).filter((name) => name !== 'prepack' && !named.has(name))).toEqual([]);
  });

  it('has every part of the solver on its ladder, and a file or a reason on every rung', () => {
    const rows = tableUnder('The ladder', page);
    const folders = readdirSync(join(ROOT, 'src/solver'), { withFileTypes: true }).filter((entry) =>
      entry.isDirectory(),
    );
    expect(rows.map(([part]) => part).sort()).toEqual(folders.map(({ name }) => `\`src/solver/${name}\``).sort());
    const rungs = rows.flatMap(([part, ...cells]) => [`${part} ${cells.length}`, ...cells]);
    expect(rungs.filter((rung) => !/^(`[^`]+`( 5)?|none: .{10,})$/.test(rung))).toEqual([]);
  });
});

describe('the examples of README.md', () => {
  const examples = sessions(read('README.md'));
  const run = (command: string) =>
    execFileSync('bash', ['-o', 'pipefail', '-c', command], {
      ...{ cwd: ROOT, encoding: 'utf8' },
      env: { ...process.env, COLUMNS: '100' },
    });

  it('are there', () => expect(examples.length).toBeGreaterThanOrEqual(3));

  it.each(examples)('$command prints what the page shows', ({ command, printed }) => {
    expect(shown(run(command))).toEqual(shown(printed));
  });

  /** Words as they are; numbers to four digits, which every machine agrees on. */
  const shown = (text: string): (string | number)[] =>
    text
      .split(/\s+/)
      .filter((word) => word !== '')
      .map((word) => (Number.isNaN(Number(word)) ? word : Number(Number(word).toPrecision(4))));
});

describe('a planted claim', () => {
  it('that does not hold is found', () => {
    expect(brokenLinks('README.md', 'see [this](docs/no-such-page.md) and [that](LICENSE#top)')).toEqual([
      'docs/no-such-page.md',
    ]);
    expect(brokenLinks('docs/a.md', '[up](../LICENSE) [web](https://example.org/) [here](#below)')).toEqual([]);
    expect(missingPaths('`src/solver/index.ts`, `src/no-such-file.ts`, `x / y`')).toEqual(['src/no-such-file.ts']);
    expect(scriptsNamed('`npm run -s cli -- lift`, `npm run no-such:script`, `npm test`')).toEqual([
      'cli',
      'no-such:script',
      'test',
    ]);
    expect(sessions('```console\n$ one\n1 2\n```\n```console\n$ a\n$ b\n```')).toEqual([
      { command: 'one', printed: '1 2\n' },
    ]);
  });
});
