/** The rows of plates on the pages of the calculation by hand, each from its own printed constants, and these from the sizes. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../architecture/import-graph.ts';
import { DAMPERS } from './hand-sizes.ts';
import { stacksOf } from './hand-types.ts';
import { blockOf, close, fromPrinted } from './page-blocks.ts';

const ALL = DAMPERS.flatMap((damper) =>
  stacksOf(damper).map(([place, { clamp }]) => ({ page: damper.page, place, b: clamp })),
);

describe.each(ALL)('the plates of $place on $page', ({ page, place, b }) => {
  const { rows } = blockOf(readFileSync(join(ROOT, 'docs', page), 'utf8'), `${place}-plates`);
  const readers = rows.map((row) => {
    const [diameter, thickness, count = '1'] = row.shim.split(' × ');
    const at = (heading: string) => fromPrinted(row[heading]);
    return { at, a: Number(diameter) / 2, t: Number(thickness), n: Number(count), line: row.load === '1l' };
  });

  it('are as stiff as their shims, with the constants of their clamp', () => {
    expect(rows.length).toBeGreaterThan(6);
    for (const { at, a, t, n } of readers) {
      const k = b / a;
      close(at('D, N·m'), (n * 206 * t ** 3) / (12 * 0.91));
      close(at('C8'), 0.5 * (1.3 + 0.7 * k * k));
      close(at('C9'), k * (0.65 * Math.log(1 / k) + 0.175 * (1 - k * k)));
      const l = b / at('r');
      close(at('F2'), 0.25 * (1 - l * l * (1 + 2 * Math.log(1 / l))));
      close(at('F3'), (l / 4) * ((l * l + 1) * Math.log(1 / l) + l * l - 1));
    }
  });

  /** M C8 = a (r₀ C9/b − L9), or a² [C9 (a² − r₀²)/(2ab) − L17]. */
  it('have the moments of their loads', () => {
    for (const { at, a, line } of readers) {
      const r0 = at('r₀');
      const inner = line ? (r0 * at('C9')) / b : (at('C9') * (a * a - r0 * r0)) / (2 * a * b);
      close(at('M, N'), ((line ? a : a * a) / at('C8')) * (inner - at('L9 or L17')), 4e-3);
    }
  });

  /** w D = M r² F2 − Q r³ F3 + r³ L3 or r⁴ L11, in N and mm. */
  it('lift as their constants say', () => {
    for (const { at, a, line } of readers) {
      const [r0, r] = [at('r₀'), at('r')];
      const Q = line ? r0 / b : (a * a - r0 * r0) / (2 * b);
      const own = at('L3 or L11') * r ** (line ? 3 : 4);
      const moved = at('M, N') * r ** 2 * at('F2') - Q * r ** 3 * at('F3') + own;
      close(at('w, mm'), moved / (at('D, N·m') * 1000), 8e-3);
    }
  });
});
