/** The rows of plates on the page of the calculation by hand, each from its own printed constants. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../architecture/import-graph.ts';
import { blockOf, close, fromPrinted } from './page-blocks.ts';

const page = readFileSync(join(ROOT, 'docs/hand-calculation.md'), 'utf8');

describe('the plates on the page', () => {
  const CLAMP_MM: Record<string, number> = { 'monotube-plates': 6, 'mid-valve': 4.5, base: 4 };

  /** w D = M r² F2 − Q r³ F3 + r³ L3 or r⁴ L11, in N and mm. */
  const lift = (row: Readonly<Record<string, string>>, b: number) => {
    const at = (heading: string) => fromPrinted(row[heading]);
    const [r0, r, a] = [at('r₀'), at('r'), Number.parseFloat(row.shim) / 2];
    const line = row.load === '1l';
    const Q = line ? r0 / b : (a * a - r0 * r0) / (2 * b);
    const own = at('L3 or L11') * r ** (line ? 3 : 4);
    return (at('M, N') * r ** 2 * at('F2') - Q * r ** 3 * at('F3') + own) / (at('D, N·m') * 1000);
  };

  it.each(['monotube-plates', 'cartridge-plates'])('lift as their constants say: %s', (name) => {
    const { rows } = blockOf(page, name);
    expect(rows.length).toBeGreaterThan(10);
    let valve = name === 'monotube-plates' ? name : 'mid-valve';
    for (const row of rows) {
      if (row.shim.startsWith('19 ')) valve = 'base';
      close(fromPrinted(row['w, mm']), lift(row, CLAMP_MM[valve]), 8e-3);
    }
  });
});
