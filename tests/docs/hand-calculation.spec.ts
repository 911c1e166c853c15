/**
 * The calculation by hand beside the program: the printed numbers of the program are held to the program, the pages to what is written now.
 * The steps themselves are gone through in hand-dampers.spec.ts, hand-stacks.spec.ts and hand-plates.spec.ts; the formulas of the plates are held to
 * outside numbers in tests/unit/scripts/hand-calculation.spec.ts.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { handDemos } from '../../scripts/lib/hand-calculation/demos.ts';
import { handPages } from '../../scripts/lib/hand-calculation/page.ts';
import { forceCurveForBuild, type TheoryChoice } from '../../src/solver/index.ts';
import { ROOT } from '../architecture/import-graph.ts';
import { loadDemo } from '../helpers/demo-curves.ts';
import { DAMPERS } from './hand-sizes.ts';
import { blockOf, blockText, close, fromPrinted } from './page-blocks.ts';

const read = (page: string) => readFileSync(join(ROOT, 'docs', page), 'utf8');
const summary = blockOf(read('theory.md'), 'summary');
const STROKES = DAMPERS.flatMap(({ name, page, speeds }) =>
  (['compression', 'rebound'] as const).flatMap((direction) =>
    speeds.map((speed) => ({ name, page, direction, speed, row: `${name}, ${direction}, ${speed} m/s` })),
  ),
);

const FILES: Readonly<Record<string, string>> = {
  monotube: 'larkspur-trail-rear',
  cartridge: 'larkspur-trail-fork',
  'twin-tube': 'wagtail-hill-climb-rear',
  reservoir: 'dunnock-mountain-bike-rear',
};

describe('the summary in the theory', () => {
  it.each(STROKES)('$row is what the steps of its page end with', ({ row, page, direction, speed }) => {
    const force = blockOf(read(page), `${direction}-force`).at('F_damping', `${speed} m/s`);
    expect(summary.at(row, 'by hand')).toBe(force);
  });

  it.each(DAMPERS)('has the program beside the $name', ({ name, speeds }) => {
    const project = loadDemo(`${FILES[name]}.shimwright.json`);
    const asked = [...speeds, 2].flatMap((speed) => [speed, -speed]);
    const kinds = ['small', 'large', 'auto'] as const;
    const theories: Record<(typeof kinds)[number], TheoryChoice> = {
      small: 'small-deflection',
      large: 'large-deflection',
      auto: 'auto',
    };
    const headings = { small: 'small deflection', large: 'large deflection', auto: 'by default (`auto`)' };
    for (const kind of kinds) {
      const options = { speeds_m_s: asked, theory: theories[kind] };
      const { points } = forceCurveForBuild(project, project.baselineBuild, options);
      for (const { row, direction, speed } of STROKES.filter((stroke) => stroke.name === name)) {
        const point = points[asked.indexOf(direction === 'rebound' ? -speed : speed)];
        if (point.status !== 'converged') throw new Error(point.reason);
        close(summary.at(row, headings[kind]), point.dampingForce_N);
        if (kind === 'auto') continue;
        const share = 100 * (summary.at(row, 'by hand') / point.dampingForce_N - 1);
        expect(summary.at(row, `hand to ${kind}`)).toBeCloseTo(share, 0);
      }
    }
  });

  it('agrees without jets in small deflection as far as the page says: closed or floating, behind a crossover, on a taper', () => {
    const most = (row: string): number => {
      if (/^(cartridge|twin-tube), compression, 0.1 m/.test(row) || /^reservoir, .*, 0.05 m/.test(row)) return 0.1;
      return /compression|reservoir/.test(row) ? 0.65 : 3.2;
    };
    for (const { row } of STROKES)
      expect(Math.abs(summary.at(row, 'hand to small, no jets')), row).toBeLessThanOrEqual(most(row));
  });

  it('fails by hand where shims stretch, the more the farther they lift', () => {
    for (const { name, speeds } of DAMPERS) {
      const off = speeds.map((speed) => summary.at(`${name}, rebound, ${speed} m/s`, 'hand to large'));
      expect(off[2]).toBeLessThan(-15);
      expect(off[0] > off[1] && off[1] > off[2]).toBe(true);
    }
  });
});

describe('what the page tells of single deviations', () => {
  /** Cells of a quantity at a speed, in the table beside the program. */
  const compared = (page: string, direction: string, speed: number, quantity: string) => {
    const { rows } = blockOf(read(page), `${direction}-compared`);
    const row = rows.find((one) => one['v, m/s'] === String(speed) && one.quantity === quantity);
    if (!row) throw new Error(`no ${quantity} at ${speed} m/s on ${page}`);
    return (heading: string) => fromPrinted(row[heading]);
  };

  it('is so: a stack under a coil spring that has just opened', () => {
    const [opening, bleed, force] = ['its opening h', 'its bleed Q_b', '**damping force**'].map((quantity) =>
      compared('hand-twin-tube.md', 'rebound', 0.1, quantity),
    );
    expect(opening('by hand') / opening('small deflection, no jets')).toBeCloseTo(1.6, 1);
    expect([opening('by hand').toFixed(3), opening('small deflection, no jets').toFixed(3)]).toEqual([
      '0.009',
      '0.006',
    ]);
    const whole = blockOf(read('hand-twin-tube.md'), 'rebound-piston').at('Q', '0.1 m/s');
    expect(bleed('by hand') / whole).toBeGreaterThan(0.99);
    expect(force('hand to small, no jets')).toBeCloseTo(-0.8, 1);
  });

  it('is so: a poppet that has just opened', () => {
    const [drop, poppet] = ['Δp of the base', 'its poppet'].map((quantity) =>
      compared('hand-reservoir.md', 'compression', 1.5, quantity),
    );
    expect(drop('hand to small, no jets')).toBeCloseTo(-0.4, 1);
    expect(poppet('hand to small, no jets')).toBeCloseTo(-10, 0);
  });

  it('is so: jets of the ports and waves', () => {
    for (const { row } of STROKES) {
      const at = (heading: string) => summary.at(row, heading);
      expect(Math.abs(at('small deflection') / at('small deflection, no jets') - 1), row).toBeLessThan(0.0125);
      expect(Math.abs(at('by default (`auto`)') / at('large deflection') - 1), row).toBeLessThan(0.01);
    }
    const drop = compared('hand-twin-tube.md', 'compression', 0.3, 'Δp of the piston');
    expect(drop('small deflection') / drop('small deflection, no jets')).toBeCloseTo(0.97, 2);
  });
});

describe('the pages of the calculation by hand', () => {
  it('stand as the demos are now', () => {
    for (const [page, blocks] of Object.entries(handPages(handDemos()))) {
      const text = read(page);
      for (const [name, block] of Object.entries(blocks))
        expect(numbersApart(blockText(text, name), block), `${page}: ${name}`).toEqual([]);
    }
  });

  it('have κ beside the program as far as they say', () => {
    const { rows } = blockOf(read('hand-calculation.md'), 'stiffness');
    expect(rows).toHaveLength(11);
    for (const row of rows) {
      expect(Math.abs(fromPrinted(row['hand to program']))).toBeLessThanOrEqual(3.95);
      const [program, face, added] = ['program', 'face shims alone', 'all rigidities added up'].map((heading) =>
        fromPrinted(row[heading]),
      );
      expect(face / program).toBeGreaterThan(1.3);
      expect(face / program).toBeLessThan(3.05);
      expect(added / program).toBeLessThan(0.985);
      expect(added / program).toBeGreaterThan(0.755);
    }
  });

  it('would be noticed with a number that is off, or a word', () => {
    expect(numbersApart('| a | 1.000 |', '| a | 1.001 |')).toEqual([]);
    expect(numbersApart('| a | 1.000 |', '| a | 1.010 |')).toHaveLength(1);
    expect(numbersApart('| a | 1.000 |', '| b | 1.000 |')).toHaveLength(1);
  });

  /** Words as they are; numbers to two in a thousand, or to a tenth of a per cent in a column of per cents. */
  function numbersApart(shown: string, wanted: string): string[] {
    const [words, others] = [shown, wanted].map((text) => text.split(/\s+/));
    const differs = (a: string, b: string | undefined) => {
      const [x, y] = [fromPrinted(a), fromPrinted(b ?? '')];
      return Number.isNaN(x) || Number.isNaN(y)
        ? a !== b
        : Math.abs(x - y) > Math.max(2e-3 * Math.abs(y), 1e-9) + isShare(a);
    };
    const isShare = (text: string) => (/^[+−]?\d+\.\d$/.test(text) ? 0.11 : 0);
    const apart = words.filter((word, i) => differs(word, others[i]));
    return words.length === others.length ? apart : [...apart, 'another number of words'];
  }
});
