import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { cliJson, csvLines } from '../helpers/cli-json.ts';
import { fixturePath, PROJECT_FIXTURE, soundCartridge, soundProject } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';

type Point = Record<string, number> & { valve: string };

/**
 * With so much gas that no chamber falls to air release: there the flows must carry all that the piston displaces.
 * The spring of its poppet is light enough to be lifted at 1 m/s.
 */
const CHARGED: Project = soundCartridge();
CHARGED.gas.gaugePressure_bar = 30;
CHARGED.builds[0].basePoppet!.preload_N = 10;

const flows = async (project: Project, ...words: string[]): Promise<Point[]> =>
  (await cliJson(['flow', ...words], project)).points;

const PATHS = ['ports', 'bleed', 'leakage', 'poppet', 'check'];
const summed = (point: Point, suffix: string): number =>
  PATHS.reduce((sum, path) => sum + (point[`${path}${suffix}`] ?? 0), 0);

describe.concurrent('shimwright flow', () => {
  it('passes through piston and base what the piston displaces, in shares that make up the whole', async () => {
    const points = await flows(CHARGED, '--speeds-m-s=-0.5,0.5');
    expect(points.map(({ shaftSpeed_m_s, valve }) => [shaftSpeed_m_s, valve])).toEqual([
      [-0.5, 'piston'],
      [-0.5, 'base'],
      [0.5, 'piston'],
      [0.5, 'base'],
    ]);
    for (const point of points) {
      // Bore 25 and rod 12 mm: 377.777 mm2 through the piston and 113.097 mm2 through the base, at 0.5 m/s.
      expect(point.totalFlow_L_min).toBeCloseTo(point.valve === 'piston' ? 11.3333 : 3.39292, 4);
      expect(summed(point, 'Flow_L_min')).toBeCloseTo(point.totalFlow_L_min, 8);
      expect(summed(point, 'Share_percent')).toBeCloseTo(100, 8);
    }
  });

  it('lets oil out through stack, bleed and poppet, and back through the check', async () => {
    const [out, back] = (await flows(CHARGED, '--speeds-m-s=1,-1', '--clicks=poppet=4')).filter(
      ({ valve }) => valve === 'base',
    );
    for (const path of ['ports', 'bleed', 'poppet']) expect(out[`${path}Flow_L_min`], path).toBeGreaterThan(0);
    expect(out.checkFlow_L_min).toBe(0);
    expect(back.checkFlow_L_min).toBeGreaterThan(0);
    expect(back).toMatchObject({ portsFlow_L_min: 0, poppetFlow_L_min: 0, shimPressure_bar: 0 });
    expect(out.drop_bar).toBeGreaterThan(out.shimPressure_bar);
    expect(out.opening_mm).toBeGreaterThan(0);
  });

  it('bleeds all of a slow stroke below the cracking pressure of a preloaded stack', async () => {
    const [slow, fast] = await flows(soundProject(), '--speeds-m-s=0.001,1');
    expect(slow).toMatchObject({ valve: 'piston', bleedShare_percent: 100, portsShare_percent: 0, opening_mm: 0 });
    expect(fast.portsShare_percent).toBeGreaterThan(50);
    expect(Object.keys(fast)).toEqual([
      'shaftSpeed_m_s',
      'valve',
      'status',
      'totalFlow_L_min',
      'portsFlow_L_min',
      'bleedFlow_L_min',
      'leakageFlow_L_min',
      'portsShare_percent',
      'bleedShare_percent',
      'leakageShare_percent',
      'drop_bar',
      'shimPressure_bar',
      'opening_mm',
      'cavitating',
      'theory',
    ]);
  });

  it('names the paths that cavitate, each at its valve', async () => {
    const [slow, fast] = await flows(soundProject(), '--speeds-m-s=0.1,5');
    expect(slow.cavitating).toBeNull();
    // By hand: 12.1 bar before the bleed and 1 bar behind it let through at most 0.62 sqrt(12.1 / 11.1) = 0.65 of the ideal jet
    // (Nurick 1976, from memory); a drilled hole would pass about 0.78.
    expect(String(fast.cavitating).split(' ')).toContain('bleed');
  });

  it('has no shares at rest', async () => {
    const [still] = await flows(soundProject(), '--speeds-m-s=0');
    expect(still).toMatchObject({ status: 'converged', totalFlow_L_min: 0, portsShare_percent: null, drop_bar: 0 });
  });

  it('sends more through the poppet, the less its spring is preloaded', async () => {
    const points = await flows(CHARGED, '--speeds-m-s=1', '--clicks=poppet=0/6/12');
    const [closed, middle, open] = points.filter(({ valve }) => valve === 'base').map((p) => p.poppetShare_percent);
    expect(points.map(({ poppetClicks }) => poppetClicks)).toEqual([0, 0, 6, 6, 12, 12]);
    expect(middle).toBeGreaterThan(closed);
    expect(open).toBeGreaterThan(middle);
  });

  it('prints the same numbers as CSV, and shares in the table', async () => {
    const words = ['flow', '-', '--speeds-m-s=0.5'];
    const [asJson, asCsv, table] = await Promise.all(
      [['--json'], ['--csv'], []].map((form) => runCli([...words, ...form], JSON.stringify(CHARGED))),
    );
    const { points, ...head } = JSON.parse(asJson.stdout);
    const [header, ...rows] = csvLines(asCsv.stdout);
    expect(head).toMatchObject({ format: 'shimwright/flow', version: 1, build: { id: 'as-found' } });
    expect(header).toEqual(Object.keys(points[0]));
    expect(rows[1]).toEqual(Object.values(points[1]).map((value) => String(value ?? '')));
    expect(table.stdout.split('\n')[0]).toMatch(/valve .* stack % +bleed % +leakage % +poppet % +check %/);
  });

  it('has an empty row a valve where a speed cannot be reached, and exits 1', async () => {
    const { code, stdout, stderr } = await runCli(['flow', fixturePath(PROJECT_FIXTURE), '--speeds-m-s=500', '--csv']);
    const [, row] = csvLines(stdout);
    expect({ code, head: row.slice(0, 4) }).toEqual({ code: 1, head: ['500', 'piston', 'beyond-table', ''] });
    expect(stderr).toMatch(/^at 500 m\/s: beyond-table: /);
  });
});
