import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { lineLoad, type Plate, pressureFrom, rigidity } from '../../../scripts/lib/hand-calculation/roark.ts';
import { newSheet, printed, stepTable, stepValue } from '../../../scripts/lib/hand-calculation/sheet.ts';
import { stackByHand } from '../../../scripts/lib/hand-calculation/stack.ts';
import { ROOT } from '../../architecture/import-graph.ts';

describe('the plates by hand', () => {
  const plate = (b: number, a = 1): Plate => ({ name: '', a, b, t: 0.01, count: 1 });

  /** Roark's table 11.2, 7th ed. (2002): lift of the free rim under 2l from the clamp and 1l at the rim, nu 0.3 (recomputed). */
  it.each([
    [0.1, 0.075693, 0.26913],
    [0.3, 0.031818, 0.138947],
    [0.5, 0.008589, 0.050455],
    [0.7, 0.001096, 0.010318],
  ])('have the rim lifts of the table at b/a = %d', (b, pressure, line) => {
    const D = rigidity(plate(b));
    expect(pressureFrom(plate(b), b, 1).lift * D).toBeCloseTo(pressure, 6);
    expect(lineLoad(plate(b), 1, 1).lift * D).toBeCloseTo(line, 6);
  });

  it('have the partial loads of the table at b/a = 0.5, r₀ = 0.75 a', () => {
    const D = rigidity(plate(0.5));
    expect(pressureFrom(plate(0.5), 0.75, 1).lift * D).toBeCloseTo(0.00750692, 8);
    expect(pressureFrom(plate(0.5), 0.75, 1).M).toBeCloseTo(0.13612462, 8);
    expect(lineLoad(plate(0.5), 0.75, 1).lift * D).toBeCloseTo(0.01305983, 8);
    expect(lineLoad(plate(0.5), 0.75, 1).M).toBeCloseTo(0.32363372, 8);
  });

  /** Two shims that touch along one circle (own, from 1l and 2l): ring force over q a, and tip over q a⁴/D. */
  it.each([
    [0.3, 0.7, 1, 0.318425, 0.0178541],
    [0.5, 0.8, 8, 0.382828, 0.0013937],
  ])('press on one another as known at b/a = %d, c/a = %d', (b, c, ratio, ring, tip) => {
    const face = plate(b);
    const rest = [{ ...plate(b, c), t: face.t * Math.cbrt(ratio) }];
    const { sheet, kappa } = stackByHand({ face, rest, zoneFrom: b, zoneTo: 1, r1: 1 });
    expect(stepValue(sheet, 'R')).toBeCloseTo(ring, 5);
    expect(kappa * rigidity(face)).toBeCloseTo(tip, 6);
  });

  /** A coil spring without rate is a ring of its preload; by reciprocity it takes from the rim what the rim's ring would take from its circle. */
  it('are pressed down by a coil spring as by a ring of force', () => {
    const [face, shim] = [plate(0.3), plate(0.3, 0.7)];
    const [S, radius] = [5, 0.5];
    const soft = { radius, rate: 1e-9, preload: S * 2 * Math.PI * radius };
    const sizes = { face, rest: [shim], zoneFrom: 0.3, zoneTo: 1, r1: 1 };
    const [{ kappa, pressed }, free] = [stackByHand({ ...sizes, coil: soft }), stackByHand(sizes)];
    expect(kappa / free.kappa).toBeCloseTo(1, 9);
    const both = lineLoad(face, 0.7, 0.7).lift + lineLoad(shim, 0.7, 0.7).lift;
    const sinks = (S * lineLoad(shim, 0.7, radius).lift * radius) / 0.7;
    expect(pressed / ((sinks * lineLoad(face, 0.7, 1).lift) / both)).toBeCloseTo(1, 6);
    const stiff = { ...soft, rate: 1e3 * rigidity(shim) };
    expect(stackByHand({ ...sizes, coil: stiff }).kappa).toBeLessThan(free.kappa);
  });

  it('use nothing of the solver in their arithmetic', () => {
    const folder = 'scripts/lib/hand-calculation';
    const users = readdirSync(join(ROOT, folder)).filter((file) =>
      readFileSync(join(ROOT, folder, file), 'utf8').includes('src/solver'),
    );
    expect(users.sort()).toEqual(['comparison.ts', 'demos.ts', 'program.ts', 'stiffness.ts']);
  });
});

describe('the steps', () => {
  it('print four digits, and powers of ten', () => {
    expect([0, 1056, 0.6023, -0.00451449, 1.5789e8, -2.5e-7].map((value) => printed(value))).toEqual([
      '0',
      '1056',
      '0.6023',
      '−0.004514',
      '1.579·10⁸',
      '−2.500·10⁻⁷',
    ]);
    expect(printed(9.99996)).toBe('10.00');
  });

  it('stand side by side, with a dash where one has none', () => {
    const [closed, open] = [newSheet(), newSheet()];
    for (const { put } of [closed, open]) put('Q', 'flow', 21e-6, 'mL/s');
    open.put('h', 'opening', 0.15e-3, 'mm');
    expect(stepTable(['closed', 'open'], [closed, open]).split('\n').slice(2)).toEqual([
      '| Q | flow | mL/s | 21.00 | 21.00 |',
      '| h | opening | mm | – | 0.1500 |',
    ]);
    expect(stepValue(open, 'h')).toBe(0.15e-3);
    expect(() => stepValue(closed, 'h')).toThrow('no step h');
  });
});
