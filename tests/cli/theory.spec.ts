/** The choice of the plate theory on the command line, and that every result says which one it is by. */
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../src/cli/options.ts';
import { cliJson } from '../helpers/cli-json.ts';
import { runCli } from '../helpers/run-cli.ts';

const GROOVED = 'src/demo/larkspur-trail-rear.shimwright.json';
const PORTED = 'src/demo/wagtail-hill-climb-rear.shimwright.json';
const STACK = {
  format: 'shimwright/stack',
  version: 1,
  name: 'test',
  clampDiameter_mm: 10,
  shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
  pressureZone: { innerDiameter_mm: 13.2, outerDiameter_mm: 22.08 },
};
const lift = (pressures_MPa: string, ...words: string[]) => ['lift', '--pressures-MPa', pressures_MPa, ...words];

async function json(...words: string[]) {
  const { stdout, code, stderr } = await runCli([...words, '--json']);
  expect(stderr, stderr).not.toContain('Error');
  return { code, ...JSON.parse(stdout) };
}

it('is auto unless said otherwise, with every command that takes a theory', () => {
  const takers = COMMANDS.filter(({ options }) => options.some(({ name }) => name === 'theory'));
  expect(takers.map(({ name }) => name)).toEqual([
    ...['lift', 'force', 'compare', 'pressures', 'flow', 'cycle', 'fit', 'search', 'tolerance', 'sheet'],
  ]);
  for (const { options } of takers) {
    const theory = options.find(({ name }) => name === 'theory');
    expect(theory?.choices).toContain('auto');
    expect(theory?.help).toContain('auto unless said otherwise');
  }
});

describe.concurrent('shimwright lift', () => {
  it('without a theory takes the round one below the onset, as if it had been named', async () => {
    const { theoryAsked, ...auto } = await cliJson(lift('0.05,0.12'), STACK);
    expect(theoryAsked).toBe('auto');
    expect(auto).toEqual(await cliJson(lift('0.05,0.12', '--theory', 'large-deflection'), STACK));
  });

  it('beyond it follows the waves', async () => {
    const { theoryAsked, ...auto } = await cliJson(lift('0.12,0.26'), STACK);
    expect(auto).toEqual(await cliJson(lift('0.12,0.26', '--theory', 'port-periodic'), STACK));
    expect(auto.theory).toBe('port-periodic');
  });

  it('tells on stderr what it took, and nothing where the theory was named', async () => {
    const run = (...words: string[]) =>
      runCli(['lift', '-', '--pressures-MPa', '0.1', ...words], JSON.stringify(STACK));
    expect((await run()).stderr).toContain('theory: large-deflection');
    const named = await run('--theory', 'large-deflection', '--json');
    expect(named.stderr).toBe('');
    expect(Object.keys(JSON.parse(named.stdout))).toEqual(['format', 'version', 'theory', 'points']);
  });
});

describe.concurrent('what is told of a damper', () => {
  const speeds = ['--speeds-m-s', '-0.5,0,0.5'];

  it.each(['force', 'pressures'])('by %s names the theory of the stack at work, at each speed', async (command) => {
    const { theory, points } = await json(command, PORTED, ...speeds);
    expect(theory).toBe('auto');
    expect(points.map((point: { theory: string }) => point.theory)).toEqual([
      ...['port-periodic', 'large-deflection', 'large-deflection'],
    ]);
    expect(points.map((point: { baseTheory: string | null }) => point.baseTheory)).toEqual([
      ...[null, 'large-deflection', 'large-deflection'],
    ]);
  });

  it('by flow names it valve by valve', async () => {
    const { points } = await json('flow', PORTED, '--speeds-m-s', '-0.5,0.5');
    const told = points.map(({ valve, theory }: { valve: string; theory: string | null }) => [valve, theory]);
    expect(told).toEqual([
      ['piston', 'port-periodic'],
      ['base', null],
      ['piston', 'large-deflection'],
      ['base', 'large-deflection'],
    ]);
  });

  it('by cycle names it stack by stack', async () => {
    const motion = ['--stroke-mm', '20', '--frequency-Hz', '2', '--cycles', '1'];
    const { theory, runs } = await json('cycle', PORTED, ...motion);
    expect(theory).toBe('auto');
    expect(runs[0]).toMatchObject({
      ...{ compressionTheory: 'large-deflection', reboundTheory: 'port-periodic', baseTheory: 'large-deflection' },
    });
  });

  it('by tolerance stands before the points', async () => {
    const { theory, theories } = await json('tolerance', GROOVED, '--speeds-m-s', '0.3', '--samples', '4');
    expect(theory).toBe('auto');
    expect(theories).toEqual({ compression: 'large-deflection', rebound: 'large-deflection' });
  });

  it('on a sheet stands beside the curve', async () => {
    const { stdout } = await runCli(['sheet', PORTED, '--html']);
    expect(stdout).toContain('large deflection (compression), port-periodic (rebound), large deflection (base valve)');
    const named = await runCli(['sheet', PORTED, '--html', '--theory', 'small-deflection']);
    expect(named.stdout).toMatch(/Shims of the \w+ by small deflection\./);
  });

  it('stays what was named', async () => {
    const { theory, points } = await json('force', PORTED, '--speeds-m-s', '-0.5', '--theory', 'large-deflection');
    expect([theory, points[0].theory]).toEqual(['large-deflection', 'large-deflection']);
  });
});
