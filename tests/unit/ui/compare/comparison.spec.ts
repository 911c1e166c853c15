import { describe, expect, it } from 'vitest';
import type { Build, Valving } from '../../../../src/model/project.ts';
import type { Writer } from '../../../../src/sheet/settings.ts';
import { compareBuilds, isEqual } from '../../../../src/ui/compare/comparison.ts';
import { comparisonText, type Writers } from '../../../../src/ui/compare/comparison-text.ts';
import { demos } from '../helpers/demos.ts';

const write: Writer = (kind, value) => (kind === 'length' ? `${value} mm` : `${value} (${kind})`);
const WRITERS: Writers = { write, bare: (_, value) => String(value), length: (mm) => `${mm.toFixed(2)} mm` };

const VALVING: Valving = {
  clampDiameter_mm: 12,
  seatHeight_mm: 0,
  shims: [
    { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 },
    { outerDiameter_mm: 16, thickness_mm: 0.1 },
    { outerDiameter_mm: 18, thickness_mm: 0.2 },
  ],
};

const build = (name: string, compression: Valving, part: Partial<Build> = {}): Build => ({
  id: name,
  name,
  notes: '',
  bleed: { count: 1, diameter_mm: 1.2, length_mm: 4 },
  valves: { pistonCompression: compression, pistonRebound: VALVING },
  ...part,
});

const told = (from: Build, to: Build): string =>
  comparisonText(compareBuilds(from, to, write), [from, to], 'monotube', WRITERS);

describe('two builds beside one another', () => {
  it('are told shim by shim, with totals, settings and what lies beside the stacks', () => {
    const after: Valving = {
      clampDiameter_mm: 13,
      seatHeight_mm: 0.1,
      coilSpring: { diameter_mm: 16, rate_N_mm: 4, preload_N: 5 },
      shims: [
        { outerDiameter_mm: 30, thickness_mm: 0.15, count: 2 },
        { outerDiameter_mm: 22, thickness_mm: 0.15, count: 2, innerDiameter_mm: 14 },
        { outerDiameter_mm: 18, thickness_mm: 0.25 },
      ],
    };
    const needle = { coneAngle_deg: 16, travelPerClick_mm: 0.15, clicks: 10, clickCount: 20 };
    const bleed = { count: 1, diameter_mm: 1.2, length_mm: 4, needle };
    // Heights by hand: 3 × 0.15 + 0.1 + 0.2 = 0.75; 2 × 0.15 + 0.25 = 0.55, since a ring with a bore over the clamp lies free.
    expect(told(build('Stock', VALVING), build('Soft', after, { bleed })).split('\n')).toEqual([
      'Stock → Soft',
      '',
      'Compression stack',
      '  ≠ changed 2 of 30 × 0.15 mm (count 3 → 2)',
      '  − removed 16 × 0.1 mm',
      '  + added 2 of 22 × 0.15 mm, bore 14 mm',
      '  ≠ changed 18 × 0.25 mm (thickness 0.2 → 0.25 mm)',
      '  5 shims, 0.75 mm high → 5 shims, 0.55 mm high',
      '  Clamp diameter: 12 mm → 13 mm',
      '  Seat height: 0 mm → 0.1 mm',
      '  Coil spring diameter: none → 16 mm',
      '  Coil spring rate: none → 4 (springRate)',
      '  Coil spring preload: none → 5 (force)',
      '',
      'Rebound stack',
      '  = kept 3 of 30 × 0.15 mm',
      '  = kept 16 × 0.1 mm',
      '  = kept 18 × 0.2 mm',
      '  5 shims, 0.75 mm high → 5 shims, 0.75 mm high',
      '',
      'Bleed',
      '  Needle, cone angle: none → 16 (angle)',
      '  Needle, travel per click: none → 0.15 mm',
      '  Needle, clicks from closed: none → 10 (count)',
      '  Needle, clicks it has: none → 20 (count)',
    ]);
  });

  it('say what moved where', () => {
    const [a, b, c] = VALVING.shims;
    const text = told(build('A', VALVING), build('B', { ...VALVING, shims: [b, a, c] }));
    expect(text).toContain('↕ moved 3 of 30 × 0.15 mm (to No. 2)');
    expect(text).toContain('↕ moved 3 of 30 × 0.15 mm (from No. 1)');
  });

  it('tell a stack that only one of them has, and a field of a newer version', () => {
    const valves = { ...build('x', VALVING).valves, baseCompression: VALVING };
    const text = told(build('A', VALVING), build('B', VALVING, { valves, bleed: { ...BLEED, glaze: 'x' } as never }));
    expect(text).toContain('Base valve stack\n  + added 3 of 30 × 0.15 mm');
    expect(text).toContain('no stack here → 5 shims, 0.75 mm high');
    expect(text).toContain('glaze (not known to this version): none → "x"');
  });

  it('are equal only when nothing differs', () => {
    const stock = build('A', VALVING);
    expect(isEqual(compareBuilds(stock, { ...stock, id: 'B', name: 'B', notes: 'x' }, write))).toBe(true);
    expect(isEqual(compareBuilds(stock, build('B', { ...VALVING, clampDiameter_mm: 13 }), write))).toBe(false);
    expect(isEqual(compareBuilds(stock, build('B', VALVING, { bleed: { ...BLEED, count: 2 } }), write))).toBe(false);
  });

  it('have a word for every setting of the demos', () => {
    const bare = { id: 'none', name: 'none', notes: '', valves: {}, bleed: undefined } as unknown as Build;
    const builds = demos().flatMap(([, project]) => project.builds);
    for (const one of builds) expect(told(bare, one)).not.toContain('not known to this version');
  });
});

const BLEED = { count: 1, diameter_mm: 1.2, length_mm: 4 };
