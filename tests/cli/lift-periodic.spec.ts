/** The port-periodic theory through the command line, against three-dimensional continuum elements. */
import { describe, expect, it } from 'vitest';
import { cliJson, csvLines } from '../helpers/cli-json.ts';
import { runCli } from '../helpers/run-cli.ts';

const STACK = {
  format: 'shimwright/stack',
  version: 1,
  name: 'test',
  clampDiameter_mm: 10,
  shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
  pressureZone: { innerDiameter_mm: 13.2, outerDiameter_mm: 22.08 },
};
const PORTED = { ...STACK, ports: { count: 3, coveredFraction: 0.75 } };
const lift = (pressures_MPa: string, ...words: string[]) => ['lift', '--pressures-MPa', pressures_MPa, ...words];

describe.concurrent('shimwright lift --theory port-periodic', () => {
  it('adds mean, least and greatest lift of the rim and its waves to each point', async () => {
    const { theory, points } = await cliJson(lift('0.26667', '--theory', 'port-periodic'), PORTED);
    expect(theory).toBe('port-periodic');
    const [{ meanEdgeLift_mm, minEdgeLift_mm, maxEdgeLift_mm, faceEdgeLift_mm, waves, waviness }] = points;
    // reference-cases/stack/fem-waves-three-ports
    expect(Math.abs(meanEdgeLift_mm / 0.435495 - 1)).toBeLessThan(0.02);
    expect(Math.abs(maxEdgeLift_mm / 0.719311 - 1)).toBeLessThan(0.05);
    expect(Math.abs(minEdgeLift_mm - 0.137655)).toBeLessThan(0.03);
    expect({ waves, face: faceEdgeLift_mm, waviness }).toEqual({
      waves: 3,
      face: meanEdgeLift_mm,
      waviness: undefined,
    });
  });

  it('follows the waves of the stack itself without ports, none below the onset', async () => {
    const { points } = await cliJson(lift('0.12,0.26', '--theory', 'port-periodic'), STACK);
    expect(points.map(({ waves }: { waves: number }) => waves)).toEqual([0, 3]);
    expect(points[0].minEdgeLift_mm).toBe(points[0].maxEdgeLift_mm);
  });

  it('prints the columns in CSV and in the table', async () => {
    const run = (...words: string[]) =>
      runCli(['lift', '-', '--pressures-MPa', '0.2', '--theory', 'port-periodic', ...words], JSON.stringify(PORTED));
    const [header, row] = csvLines((await run('--csv')).stdout);
    expect(header.slice(-4)).toEqual(['meanEdgeLift_mm', 'minEdgeLift_mm', 'maxEdgeLift_mm', 'waves']);
    expect(row.at(-1)).toBe('3');
    const { stdout } = await run();
    expect(stdout).toContain('greatest edge mm');
  });

  it('spreads the force of the ports evenly under the round theories', async () => {
    const ported = await cliJson(lift('0.2', '--theory', 'large-deflection'), PORTED);
    const groove = await cliJson(lift('0.15', '--theory', 'large-deflection'), STACK);
    expect(ported.points[0].faceEdgeLift_mm).toBeCloseTo(groove.points[0].faceEdgeLift_mm, 9);
  });

  it('gives the peak stress along the crest, above that of the round state', async () => {
    const words = ['--stress', '--theory'];
    const [waved] = (await cliJson(lift('0.2', ...words, 'port-periodic'), PORTED)).points;
    const [round] = (await cliJson(lift('0.2', ...words, 'large-deflection'), PORTED)).points;
    expect(waved.shimPeak[0].stress_MPa).toBeGreaterThan(1.2 * round.shimPeak[0].stress_MPa);
  });

  it.each([
    ['count', { count: 0, coveredFraction: 0.5 }],
    ['coveredFraction', { count: 3, coveredFraction: 1.2 }],
  ])('refuses ports of no sense: %s', async (key, ports) => {
    const { code, stderr } = await runCli(lift('0.1').toSpliced(1, 0, '-'), JSON.stringify({ ...STACK, ports }));
    expect(code).toBe(2);
    expect(stderr).toContain(`ports.${key}`);
  });
});
