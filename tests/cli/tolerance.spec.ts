import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCli } from '../helpers/run-cli.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const DEMO = 'src/demo/larkspur-trail-rear.shimwright.json';
const LITTLE = ['--speeds-m-s=0.3,-0.3', '--samples', '6', '--theory', 'small-deflection'];
const tolerance = (...more: string[]) => runCli(['tolerance', DEMO, ...LITTLE, ...more]);

describe('shimwright tolerance', () => {
  it('prints the band and its shares at each speed, the same from the same seed', async () => {
    const [first, again, other] = await Promise.all([
      tolerance('--json'),
      tolerance('--json'),
      tolerance('--json', '--seed', '2'),
    ]);
    expect(first.code).toBe(0);
    expect(again.stdout).toBe(first.stdout);
    expect(other.stdout).not.toBe(first.stdout);
    const { format, tolerances, points } = JSON.parse(first.stdout);
    expect(format).toBe('shimwright/tolerance');
    expect(tolerances.thickness).toBe('0.005 mm');
    expect(points).toHaveLength(2);
    for (const { forceP5_N, forceP50_N, forceP95_N, seatTotal } of points) {
      expect(forceP5_N).toBeLessThan(forceP50_N);
      expect(forceP50_N).toBeLessThan(forceP95_N);
      expect(seatTotal).toBeGreaterThan(0);
    }
  });

  it('takes tolerances by name: without any but that of the gas, all of the band is from the gas', async () => {
    const none = 'thickness=0,diameter=0,clamp=0,seat=0,portEdge=0,ports=0,bleed=0,viscosity=0,temperature=0,gas=0.5';
    const { stdout } = await tolerance('--json', '--tolerances', none);
    for (const point of JSON.parse(stdout).points) expect(point.mostFrom).toBe('gas');
  });

  it('takes those of the project, which an option replaces one by one', async () => {
    const project = JSON.parse(readFileSync(DEMO, 'utf8'));
    const own = JSON.stringify({ ...project, tolerances: { thickness_mm: 0.002, gasPressure_bar: 0.4 } });
    const file = join(temporaryFolder({ 'own.json': own }), 'own.json');
    const { stdout } = await runCli(['tolerance', file, ...LITTLE, '--json', '--tolerances', 'gas=0.3']);
    const { tolerances } = JSON.parse(stdout);
    expect(tolerances).toMatchObject({ thickness: '0.002 mm', gas: '0.3 bar', seat: '0.01 mm' });
  });

  it.each([
    ['thick=1', 'thickness, diameter'],
    ['seat=-1', '0 or more'],
    ['seat=x', 'numbers'],
  ])('refuses %s', async (text, wanted) => {
    const { code, stderr } = await tolerance('--tolerances', text);
    expect(code).toBe(2);
    expect(stderr).toContain(wanted);
  });
});
