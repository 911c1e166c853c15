import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli, runHere } from '../helpers/run-cli.ts';
import { demoWithDrawer, plantedStudy } from '../helpers/search-studies.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const AIM = 'shaftSpeed_m_s,force_N\n0.1,150\n0.3,240\n0.6,380\n1,560\n';
const QUICK = ['--starts=3', '--steps=60', '--answers=4', '--seed=3'];

async function inFolder(
  test: (files: { project: string; aim: string; lines: string }) => Promise<void>,
): Promise<void> {
  const folder = temporaryFolder({ 'p.json': JSON.stringify(demoWithDrawer()), 'aim.csv': AIM });
  await test({ project: join(folder, 'p.json'), aim: join(folder, 'aim.csv'), lines: join(folder, 'found.jsonl') });
}

const answersOf = (text: string) => JSON.parse(text).answers as { shims: object; judgement: { rms_N: number } }[];

describe('shimwright search', () => {
  it('prints a ranked list, nearest first, laid from the drawer', () =>
    inFolder(async ({ project, aim }) => {
      const { exit, result, talk } = await runHere(['search', project, '--aim', aim, ...QUICK, '--json']);
      expect({ exit, talk }).toEqual({ exit: 0, talk: [] });
      const costs = answersOf(result).map(({ judgement }) => judgement.rms_N);
      expect(costs.length).toBeGreaterThan(0);
      expect(costs).toEqual([...costs].sort((a, b) => a - b));
      const table = await runHere(['search', project, '--aim', aim, ...QUICK]);
      expect(table.result).toContain('RMS %');
      expect(table.result).toMatch(/^1 {2}compression: \d x \d+ x 0\.\d/m);
    }));

  it('in parts on n machines, merged in any order, is the search in one piece', () =>
    inFolder(async ({ project, aim, lines }) => {
      const words = ['search', project, '--aim', aim, ...QUICK];
      const whole = await runHere([...words, '--json']);
      for (const n of [2, 3]) {
        const shards = Array.from({ length: n }, (_, i) => [...words, '--json-lines', `--shard=${n - i}/${n}`]);
        const parts = await Promise.all(shards.map((shard) => runHere(shard)));
        writeFileSync(lines, parts.map(({ result }) => result).join(''));
        const merged = await runHere(['merge', lines, '--answers=4', '--json']);
        expect(merged.exit).toBe(0);
        expect(merged.result).toBe(whole.result);
      }
    }));

  it('tells what is missing of a merged search, and refuses lines of another or none', () =>
    inFolder(async ({ project, aim, lines }) => {
      const words = ['search', project, '--aim', aim, '--json-lines', '--starts=2', '--steps=5', '--shard=1/2'];
      const part = await runHere(words);
      writeFileSync(lines, part.result);
      const alone = await runHere(['merge', lines]);
      expect(alone.exit).toBe(1);
      expect(alone.talk.join()).toContain('missing: 1');
      const narrow = (await runHere(['merge', lines], 40)).result;
      expect(Math.max(...narrow.split('\n').map((line) => line.length))).toBeLessThanOrEqual(40);
      const shims = (text: string) => text.slice(text.indexOf('\n1  compression:')).replace(/\s+/g, ' ');
      expect(shims(narrow)).toBe(shims(alone.result));
      const other = await runHere([...words, '--seed=9']);
      writeFileSync(lines, part.result + other.result);
      expect((await runHere(['merge', lines])).talk.join()).toContain('line 2 is of another search');
      writeFileSync(lines, `${part.result}{"half`);
      expect((await runHere(['merge', lines])).talk.join()).toContain('line 2 is none of a search');
    }));

  it('prints each start as soon as it is done, to be read from a pipe', () =>
    inFolder(async ({ project, aim }) => {
      const { stdout } = await runCli(['search', project, '--aim', aim, '--starts=2', '--steps=5', '--json-lines']);
      const read = stdout
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line));
      expect(read.map(({ start }) => start)).toEqual([0, 1]);
      const merged = await runCli(['merge', '-', '--json'], stdout);
      expect(JSON.parse(merged.stdout)).toMatchObject({ format: 'shimwright/search', ran: [0, 1] });
    }));

  it('takes an aim of the project by its name, and keeps its limits', () =>
    inFolder(async ({ project }) => {
      const { project: planted, request } = plantedStudy();
      const aims = [{ id: 'a', name: 'As planted', points: [...request.aim] }];
      writeFileSync(project, JSON.stringify({ ...planted, aims }));
      const words = [
        'search',
        project,
        '--aim',
        'As planted',
        ...'--starts=1 --steps=20 --max-changes=2 --min-life-reserve=0 --min-yield-reserve=0 --json'.split(' '),
      ];
      const { exit, result } = await runHere(words);
      expect(exit).toBe(0);
      for (const { changes } of JSON.parse(result).answers) expect(changes).toBeLessThanOrEqual(2);
    }));

  it('ends as failed where no stack keeps every limit', () =>
    inFolder(async ({ project, aim }) => {
      const words = ['search', project, '--aim', aim, '--starts=1', '--steps=3', '--min-gas-margin-bar=1000'];
      const { exit, talk } = await runHere([...words, '--json-lines']);
      expect(exit).toBe(1);
      expect(talk.join()).toContain('no stack keeps every limit');
    }));

  it.each([
    [['--aim=nowhere.csv'], 'no aim of that id or name, and as a file: nowhere.csv: there is no such file'],
    [['--stacks=base'], 'wanted compression, rebound'],
    [['--shard=3/2'], 'wanted i/n'],
    [['--starts=1.5'], 'wanted a whole number'],
    [['--diameters-mm=30'], 'needs both'],
  ])('refuses %j', (words, message) =>
    inFolder(async ({ project, aim }) => {
      const given = words[0].startsWith('--aim') ? [] : ['--aim', aim];
      const { exit, talk } = await runHere(['search', project, ...given, ...words]);
      expect(exit).toBe(2);
      expect(talk.join()).toContain(message);
    }),
  );
});
