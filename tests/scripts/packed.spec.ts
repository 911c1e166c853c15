import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../architecture/import-graph.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const STACK = join(ROOT, 'tests/fixtures/stack-v1.json');
const LIFT = ['lift', STACK, '--pressures-MPa', '0.05', '--theory', 'small-deflection', '--json'];
const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));

const run = (command: string, args: string[], cwd = ROOT) => execFileSync(command, args, { cwd, encoding: 'utf8' });

describe('npm run -s cli', () => {
  it('prints the result and nothing else', () => {
    const result = JSON.parse(run('npm', ['run', '-s', 'cli', '--', ...LIFT]));
    expect(result).toMatchObject({ format: 'shimwright/lift', points: [{ pressure_MPa: 0.05, status: 'converged' }] });
  });

  it('hands on the exit code of a misuse', () => {
    const misuse = () => run('npm', ['run', '-s', 'cli', '--', 'lift', 'no-such-file.json']);
    expect(misuse).toThrow(expect.objectContaining({ status: 2, stdout: '' }));
  });
});

describe('the packed tarball', () => {
  it('installs without any other package and runs as shimwright', () => {
    const folder = temporaryFolder({ 'package.json': '{}' });
    const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', folder]));
    const paths: string[] = packed.files.map(({ path }: { path: string }) => path);
    expect(paths).toEqual(expect.arrayContaining(['LICENSE', 'README.md', 'CHANGELOG.md', 'dist/cli/shimwright.js']));
    expect(paths).toEqual(expect.arrayContaining(['schema/project.schema.json', 'schema/stack.schema.json']));
    expect(paths.filter((path) => /^(src|tests|node_modules)\//.test(path))).toEqual([]);

    run('npm', ['install', '--offline', '--no-audit', '--no-fund', join(folder, packed.filename)], folder);
    expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual(['shimwright']);
    const program = join(folder, 'node_modules/.bin/shimwright');
    expect(run(program, ['--version'], folder).trim()).toBe(version);
    expect(run(program, LIFT, folder)).toBe(run('npm', ['run', '-s', 'cli', '--', ...LIFT]));
    const schema = join(folder, 'node_modules/shimwright/schema/stack.schema.json');
    expect(JSON.parse(readFileSync(schema, 'utf8'))).toHaveProperty('properties.shims');
  });
});
