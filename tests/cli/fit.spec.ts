import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { fixturePath, PROJECT_FIXTURE, soundProject } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const SPEEDS = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.1].flatMap((v) => [v, -v]);
/** What a bench would write of the fixture's damper with a jet coefficient of 0.75, in N. */
const FORCES = forceCurveForBuild(soundProject(), soundProject().builds[0].id, {
  speeds_m_s: SPEEDS,
  theory: 'small-deflection',
  coefficients: { jetDischarge: 0.75 },
}).points.map((point) => (point.status === 'converged' ? point.force_N : Number.NaN));

const fileOf = (head: string, row: (v: number, force: number) => string): string =>
  `${head}\n${SPEEDS.map((v, i) => row(v, FORCES[i])).join('\n')}\n`;
const METRIC = fileOf('speed [m/s],force [N]', (v, force) => `${v},${force.toFixed(2)}`);

const project = fixturePath(PROJECT_FIXTURE);
const FAST = ['--theory', 'small-deflection', '--coefficients', 'jetDischarge,forceOffset_N'];

async function fitFile(content: string, ...words: string[]) {
  const file = join(temporaryFolder({ 'bench.csv': content }), 'bench.csv');
  return runCli(['fit', project, '--measured', file, ...FAST, ...words]);
}

describe.concurrent('shimwright fit', () => {
  it('finds what the bench had, and how well it is known', async () => {
    const { code, stdout, stderr } = await fitFile(METRIC, '--json');
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const told = JSON.parse(stdout);
    expect(told).toMatchObject({ format: 'shimwright/fit', version: 1, status: 'fitted', pointCount: 16, untold: [] });
    const [jet, offset] = told.coefficients;
    expect(jet).toMatchObject({ name: 'jetDischarge', physical: 0.7, value: expect.closeTo(0.75, 3) });
    expect(jet.low).toBeLessThan(0.75);
    expect(jet.high).toBeGreaterThan(0.75);
    expect(offset.value).toBeCloseTo(0, 0);
    expect(told.after.compression_N).toBeLessThan(told.before.compression_N / 10);
    expect(told.reading).toEqual({ rawCount: 16, steps: [], outliers: 0, suspicions: [] });
  });

  // 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm by definition.
  it('reads columns, units and signs as it is told', async () => {
    const odd = fileOf('a;b;c', (v, force) => `0;${(-v / 0.0254).toFixed(6)};${(force / 4.4482216152605).toFixed(6)}`);
    const { stdout } = await fitFile(
      odd,
      '--columns',
      'speed=2:in/s,force=c:lbf',
      '--signs',
      'speed=rebound',
      '--json',
    );
    expect(JSON.parse(stdout).coefficients[0].value).toBeCloseTo(0.75, 3);
  });

  it('prints a table', async () => {
    const { stdout } = await fitFile(METRIC);
    expect(stdout).toContain('jetDischarge');
    expect(stdout).toContain('16 points');
  });

  it('says what it suspects', async () => {
    const turned = await fitFile(METRIC, '--signs', 'force=rebound');
    expect(turned.stderr).toContain('one of the signs is likely the wrong way round');
  });

  it('counts gas that the bench took off', async () => {
    const { points } = forceCurveForBuild(soundProject(), soundProject().builds[0].id, {
      speeds_m_s: [1],
      theory: 'small-deflection',
    });
    const gas = points[0].status === 'converged' ? points[0].gasForce_N : Number.NaN;
    const bare = fileOf('speed [m/s],force [N]', (v, force) => `${v},${(force - gas).toFixed(2)}`);
    const { stdout } = await fitFile(bare, '--gas', 'bench', '--json');
    expect(JSON.parse(stdout).coefficients[1].value).toBeCloseTo(0, 0);
  });

  it.each([
    [['--columns', 'speed=9:m/s,force=2'], 'a heading or a number from 1 to 2'],
    [['--columns', 'speed=1:N,force=2'], 'a unit of speed'],
    [['--columns', 'pace=1:m/s'], 'one of speed, force'],
    [['--signs', 'force=up'], 'compression, rebound or none'],
    [['--gas', 'some'], 'kept, bench, slowest-points or a force'],
    [['--friction', '-2'], 'a number of at least 0'],
    [['--temperature', '20,40'], 'one temperature'],
  ])('refuses %j', async (words, message) => {
    const { code, stderr } = await fitFile(METRIC, ...words);
    expect(code).toBe(2);
    expect(stderr).toContain(message);
  });

  it('names line and column of what is no number', async () => {
    const { code, stderr } = await fitFile('speed [m/s],force [N]\n0.1,200\n0.2,300\n0.3,?\n-0.1,-100\n');
    expect(code).toBe(2);
    expect(stderr).toContain('line 4, column 2 (force): got "?", wanted a number [measured.number]');
  });

  it('wants a file where nothing is kept with the build', async () => {
    const { code, stderr } = await runCli(['fit', project]);
    expect({ code, told: stderr.includes('fit needs --measured FILE') }).toEqual({ code: 2, told: true });
  });
});
