import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  breachesIn,
  fileLength,
  functionLength,
  MAX_FILE_LINES,
  noChanceNoClock,
  noUnitFactors,
  noWords,
  type Rule,
  symbolTable,
  wholeSteps,
} from './house-rules.ts';
import { ROOT, readSources } from './import-graph.ts';

const all = readSources('src', 'workers', 'tests', 'scripts', 'reference-cases');
const below = (...folders: string[]) =>
  new Map([...all].filter(([path]) => folders.some((folder) => path.startsWith(`${folder}/`))));

const repeatable = below('src/units', 'src/model', 'src/solver', 'src/proof', 'tests');
// The one place that times: it asks no result of a clock.
repeatable.delete('tests/bench/main.ts');

describe('the sources', () => {
  it('are short files', () => expect(breachesIn(all, fileLength)).toEqual([]));
  it('are short functions', () => expect(breachesIn(all, functionLength)).toEqual([]));
  it('know no chance and no clock in the solver and the tests', () =>
    expect(breachesIn(repeatable, noChanceNoClock)).toEqual([]));
  it('name the symbols of their mathematics', () => expect(breachesIn(below('src/solver'), symbolTable)).toEqual([]));
  it('convert units in src/units alone', () =>
    expect(breachesIn(below('src/model', 'src/solver', 'src/cli', 'src/ui', 'workers'), noUnitFactors)).toEqual([]));
});

const pageSources = below('src/ui');
for (const path of pageSources.keys()) if (path.startsWith('src/ui/text/')) pageSources.delete(path);
// Faults of a worker whose console is its only reader; the columns of a file, alike in every language.
for (const path of ['offline/service-worker', 'proof/proof-export'])
  expect(pageSources.delete(`src/ui/${path}.ts`)).toBe(true);

describe('the page', () => {
  it('has all its words in src/ui/text', () => expect(breachesIn(pageSources, noWords)).toEqual([]));
  it('names each step of undo by one phrase', () => expect(breachesIn(pageSources, wholeSteps)).toEqual([]));
});

describe('a planted breach', () => {
  const long = (lines: number) => 'const a = 1;\n'.repeat(lines);
  it.each<[string, Rule, string, string, number]>([
    ['a long file', fileLength, 'src/a.ts', long(MAX_FILE_LINES + 1), 1],
    ['a file just short enough', fileLength, 'src/a.ts', long(MAX_FILE_LINES), 0],
    ['a long table', fileLength, 'src/solver/viscosity-table.ts', long(900), 0],
    ['a long function', functionLength, 'src/a.ts', `function f() {\n${long(59)}}`, 1],
    ['a function just short enough', functionLength, 'src/a.ts', `const f = () => {\n${long(58)}};`, 0],
    ['a long group of tests', functionLength, 'tests/a.ts', `describe('x', () => {\n${long(90)}});`, 0],
    ['a long test', functionLength, 'tests/a.ts', `it('x', () => {\n${long(90)}});`, 1],
    ['chance', noChanceNoClock, 'src/solver/a.ts', 'const seed = Math.random();', 1],
    ['a clock', noChanceNoClock, 'src/solver/a.ts', 'const now = Date.now();', 1],
    ['today', noChanceNoClock, 'src/solver/a.ts', 'const now = new Date();', 1],
    ['chance in a comment', noChanceNoClock, 'src/solver/a.ts', '// Math.random is no friend', 0],
    ['letters without a table', symbolTable, 'src/solver/a.ts', 'const f = (r: number, D: number) => r * D;', 1],
    ['letters with one', symbolTable, 'src/solver/a.ts', '/** | symbol | unit | meaning | */ const D = 1;', 0],
    ['counters', symbolTable, 'src/solver/a.ts', 'for (let i = 0; i < 2; i++) {}', 0],
    ['words on the page', noWords, 'src/ui/a.tsx', 'const a = <p>Close</p>;', 1],
    ['a word in a label', noWords, 'src/ui/a.tsx', 'const a = <button aria-label="Close" />;', 1],
    ['a word in a computed title', noWords, 'src/ui/a.tsx', 'const a = <b title={open ? "Close" : word} />;', 1],
    ['words around a number', noWords, 'src/ui/a.tsx', `const a = <b title={\`\${n} shims\`} />;`, 1],
    ['words that are told', noWords, 'src/ui/a.ts', "tell('Nothing was solved');", 1],
    ['a label of a step', noWords, 'src/ui/a.ts', "commit(next, { label: 'Undo' });", 1],
    ['a step joined of words', wholeSteps, 'src/ui/a.ts', `edit(next, { label: \`\${text.remove} \${name}\` });`, 1],
    [
      'a step joined as an argument',
      wholeSteps,
      'src/ui/a.ts',
      `replaceProject(next, \`\${words.open} \${name}\`, id);`,
      1,
    ],
    ['a step of one phrase', wholeSteps, 'src/ui/a.ts', 'edit(() => next, { label: text.remove(name) });', 0],
    ['a key of a step', wholeSteps, 'src/ui/a.ts', `editOrTell(next, text.remove, \`\${text.remove} \${id}\`);`, 0],
    ['classes', noWords, 'src/ui/a.tsx', 'const a = <b class="way up">{text.up}</b>;', 0],
    ['signs and numbers', noWords, 'src/ui/a.tsx', `const a = <b title={\`\${n} ×\`}>+ 12</b>;`, 0],
    ['a fault of the program', noWords, 'src/ui/a.ts', "throw new Error('nothing is open yet');", 0],
    ['names within an attribute', noWords, 'src/ui/a.tsx', "const a = <b title={show('speed', v)} />;", 0],
    ['inches', noUnitFactors, 'src/ui/a.ts', 'const width_mm = 2 * 25.4;', 1],
    ['inches in a text', noUnitFactors, 'src/ui/a.ts', "const help = 'one inch is 25.4 mm';", 0],
  ])('%s', (_, rule, path, text, count) => {
    expect(rule(path, text)).toHaveLength(count);
  });
});

describe('the packages', () => {
  const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8'));

  it('are pinned, each to one version', () => {
    const wanted = Object.entries<string>(manifest.devDependencies);
    expect(wanted.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });

  it('are bundled: who installs the packed program installs nothing else', () => {
    expect(manifest.dependencies).toBeUndefined();
  });

  it('are locked without the address they came from', () => {
    const entries = Object.entries<{ resolved?: string }>(lock.packages);
    expect(entries.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
  });
});

describe('the texts', () => {
  const SKIPPED = new Set(['node_modules', 'dist', '.git', 'coverage', '.shots']);
  const BINARY = /\.(png|ico|woff2)$/;
  // Put together here, so that this file does not find itself.
  const FORBIDDEN = [`registry${'.'}npm`, `npmjs${'.'}org`, `registry${'.'}yarn`];

  const textsBelow = (folder: string): string[] =>
    readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
      if (SKIPPED.has(entry.name)) return [];
      if (entry.isDirectory()) return textsBelow(join(folder, entry.name));
      return !entry.isFile() || BINARY.test(entry.name) ? [] : [join(folder, entry.name)];
    });

  it('name no registry of packages', () => {
    const texts = textsBelow(ROOT);
    expect(texts.length).toBeGreaterThan(50);
    const breaches = texts.filter((file) => FORBIDDEN.some((word) => readFileSync(file, 'utf8').includes(word)));
    expect(breaches).toEqual([]);
  });
});
