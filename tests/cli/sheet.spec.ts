import { join } from 'node:path';
import { inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { readDemo } from '../../scripts/lib/demo-project.ts';
import { decodeProject } from '../../src/model/codec.ts';
import { KEY, projectOfBuild } from '../../src/model/link-form.ts';
import { SHEET_SPEEDS_M_S, TABLE_SPEEDS_M_S } from '../../src/sheet/input.ts';
import { sheetWords as words } from '../../src/sheet/text/en.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { readLink } from '../../src/ui/storage/link.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const REAR = 'larkspur-trail-rear.shimwright.json';
const FILE = `src/demo/${REAR}`;
const BENCH = 'http://127.0.0.1:8080/bench/';
const WORDS = ['sheet', FILE, '--html', '--build', 'square-edge'];

const hrefOf = (page: string): string => /<a href="([^"]+)"/.exec(page)?.[1] ?? '';

describe('shimwright sheet', () => {
  it('writes one HTML page to stdout, and nothing else', async () => {
    const { code, stdout, stderr } = await runCli(WORDS);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect([stdout.startsWith('<!doctype html>\n'), stdout.endsWith('</html>\n')]).toEqual([true, true]);
    expect(stdout).toContain('Softer on square edges');
    expect(stdout).not.toContain('<script');
  });

  it('has the forces of both builds as the solver gives them', async () => {
    const { result } = await runHere(WORDS);
    const table = result.split('id="sheet-curve"')[1];
    for (const id of ['stock', 'square-edge']) {
      const { points } = forceCurveForBuild(readDemo(REAR), id, {
        speeds_m_s: SHEET_SPEEDS_M_S,
        theory: 'auto',
      });
      for (const [i, point] of points.entries()) {
        if (!TABLE_SPEEDS_M_S.includes(Math.abs(SHEET_SPEEDS_M_S[i]))) continue;
        if (point.status !== 'converged') throw new Error(point.reason);
        expect(table.includes(`<td class="number">${Math.abs(point.force_N).toFixed(0)}</td>`)).toBe(true);
      }
    }
  });

  it('links back to the build where it knows the address of a bench', async () => {
    const { result } = await runHere([...WORDS, '--bench', `${BENCH}#proof`]);
    const href = hrefOf(result);
    expect(href.startsWith(`${BENCH}${KEY}`)).toBe(true);
    const read = await readLink(new URL(href).hash);
    const document = readDemo(REAR);
    expect(read.kind === 'project' && read.document).toEqual(projectOfBuild(document, 'square-edge'));
  });

  it('has what goes behind an address where it knows none', async () => {
    const { result } = await runHere(WORDS);
    expect(result).not.toContain('<a ');
    const packed = /<code>#work=1\.([\w-]+)<\/code>/.exec(result)?.[1] ?? '';
    const read = decodeProject(inflateRawSync(Buffer.from(packed, 'base64url')).toString());
    expect(read.ok && read.document.builds.map(({ id }) => id)).toEqual(['square-edge']);
  });

  it('puts the units asked for first, and is the baseline’s unless said otherwise', async () => {
    const { result } = await runHere(['sheet', FILE, '--html', '--units', 'imperial']);
    expect(result).toContain('174 psi (12 bar)');
    expect(result).toContain(words.changes.isBaseline);
  });

  it('refuses what it cannot do', async () => {
    const refusal = async (more: string[]) => (await runHere(['sheet', FILE, ...more])).talk.join();
    expect(await refusal([])).toContain('sheet needs --html');
    for (const address of ['javascript:alert(1)', 'bench', 'file:///bench'])
      expect(await refusal(['--html', '--bench', address])).toContain(`--bench: got ${JSON.stringify(address)}`);
    expect(await refusal(['--html', '--build', 'none'])).toContain('no such build');
    expect(await refusal(['--html', '--units', 'cubits'])).toContain('wanted metric or imperial');
  });

  it('fails where a speed did not solve, and still writes the sheet that says so', async () => {
    const document = readDemo(REAR);
    // Ports and bleed so narrow in so large a bore that the valve's table ends before the fastest speeds.
    const narrow = { ports: { count: 1, diameter_mm: 0.3, length_mm: 20 } };
    const { pistonCompression, pistonRebound } = document.damper.valves;
    document.damper.valves.pistonCompression = { ...pistonCompression, ...narrow };
    document.damper.valves.pistonRebound = { ...pistonRebound, ...narrow };
    document.damper.boreDiameter_mm = 200;
    for (const build of document.builds) build.bleed = { count: 0, diameter_mm: 0.1, length_mm: 6 };
    const folder = temporaryFolder({ 'p.json': JSON.stringify(document) });
    const { exit, result, talk } = await runHere(['sheet', join(folder, 'p.json'), '--html']);
    expect(exit).toBe(1);
    expect(talk.length).toBeGreaterThan(0);
    expect(result).toContain(words.curve.unsolved);
    expect(result).toContain('</html>');
  });
});
