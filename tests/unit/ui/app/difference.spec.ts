import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinEqualRows } from '../../../../src/model/align-rows.ts';
import type { Build, ShimRow } from '../../../../src/model/project.ts';
import { compareRows, describeDifference } from '../../../../src/ui/app/difference.ts';

const row = (outerDiameter_mm: number, thickness_mm: number, count = 1): ShimRow => ({
  outerDiameter_mm,
  thickness_mm,
  count,
});

const STACK = [row(30, 0.15, 3), row(28, 0.15), row(22, 0.15), row(16, 0.2)];

function build(shims: ShimRow[], part: Partial<Build> = {}, clampDiameter_mm = 12): Build {
  const valving = { clampDiameter_mm, seatHeight_mm: 0, shims };
  return {
    id: 'x',
    name: 'x',
    notes: '',
    bleed: { count: 1, diameter_mm: 1.2, length_mm: 4 },
    valves: { pistonCompression: valving, pistonRebound: { clampDiameter_mm: 12, seatHeight_mm: 0, shims: STACK } },
    ...part,
  };
}

const told = (shims: ShimRow[], part: Partial<Build> = {}, clamp = 12): string =>
  describeDifference(build(STACK), build(shims, part, clamp), 'monotube', String);

describe('the difference of two builds in words', () => {
  it.each<[string, ShimRow[], string]>([
    ['nothing', STACK, ''],
    ['a count', [row(30, 0.15, 2), ...STACK.slice(1)], 'C: face 3→2 of 30 × 0.15'],
    ['an added shim', [STACK[0], row(16, 0.1), ...STACK.slice(1)], 'C: + 16 × 0.1'],
    ['several added', [STACK[0], row(16, 0.1, 2), ...STACK.slice(1)], 'C: + 2 of 16 × 0.1'],
    ['a removed shim', [STACK[0], STACK[1], STACK[3]], 'C: − 22 × 0.15'],
    ['a new face shim', [row(31, 0.2), ...STACK], 'C: + face 31 × 0.2'],
    ['a moved shim', [STACK[0], STACK[2], STACK[1], STACK[3]], 'C: moved 28 × 0.15'],
    ['a thickness', [row(30, 0.2, 3), ...STACK.slice(1)], 'C: face 3 of 30 × 0.15→0.2'],
    ['two things', [row(30, 0.15, 2), row(16, 0.1), ...STACK.slice(1)], 'C: face 3→2 of 30 × 0.15; + 16 × 0.1'],
  ])('%s', (_, shims, words) => expect(told(shims)).toBe(words));

  it('does not care how a person split rows of one shim', () => {
    expect(told([row(30, 0.15), row(30, 0.15, 2), ...STACK.slice(1)])).toBe('');
  });

  it('never calls two valvings the same that are not: notches, springs', () => {
    const notched = { ...STACK[1], notches: { count: 2, width_mm: 3 } };
    expect(told([STACK[0], notched, ...STACK.slice(2)])).toBe('C: 28 × 0.15 altered');
    const sprung = build(STACK);
    const coilSpring = { diameter_mm: 16, rate_N_mm: 4, preload_N: 5 };
    sprung.valves.pistonCompression = { ...sprung.valves.pistonCompression, coilSpring };
    expect(describeDifference(build(STACK), sprung, 'monotube', String)).toBe('C: other settings');
  });

  it('tells clamp, seat height, backing plate and bleed', () => {
    expect(told(STACK, {}, 13)).toBe('C: clamp 12→13');
    const other = build(STACK, { bleed: { count: 2, diameter_mm: 1, length_mm: 4 } });
    other.valves.pistonRebound = {
      ...other.valves.pistonRebound,
      seatHeight_mm: 0.1,
      backingPlate: { gap_mm: 0.4 },
    };
    expect(describeDifference(build(STACK), other, 'monotube', String)).toBe(
      'R: seat height 0→0.1; backing plate none→0.4 · bleed 1 × ⌀1.2→2 × ⌀1',
    );
  });

  it('tells needles, base valve and poppet, and what each adjuster is turned to', () => {
    const needle = { coneAngle_deg: 16, travelPerClick_mm: 0.15, clicks: 10, clickCount: 20 };
    const bleed = { count: 1, diameter_mm: 1.2, length_mm: 4 };
    const basePoppet = { seatDiameter_mm: 8, coneAngle_deg: 90, rate_N_mm: 30, preload_N: 40, travel_mm: 1 };
    const based = (part: Partial<Build>, shims = STACK): Build => {
      const plain = build(STACK, part);
      const baseCompression = { clampDiameter_mm: 12, seatHeight_mm: 0, shims };
      return { ...plain, valves: { ...plain.valves, baseCompression } };
    };
    const before = based({ bleed: { ...bleed, needle }, basePoppet });
    const after = based({ bleed: { ...bleed, needle: { ...needle, clicks: 7 } }, baseBleed: bleed }, STACK.slice(0, 3));
    expect(describeDifference(before, after, 'cartridge', String)).toBe(
      'B: − 16 × 0.2 · base bleed none→1 × ⌀1.2 · poppet ⌀8→none · rebound needle 10→7 clicks',
    );
    const other = based({ bleed: { ...bleed, needle: { ...needle, coneAngle_deg: 20 } }, basePoppet });
    expect(describeDifference(before, other, 'cartridge', String)).toBe('bleed altered');
    expect(describeDifference(build(STACK), based({}), 'monotube', String)).toBe('B: + stack');
    expect(describeDifference(based({}), build(STACK), 'twin-tube', String)).toBe('B: − stack');
  });

  it('tells the float, and that its spring was changed', () => {
    const floating = (travel_mm: number, rate_N_mm = 2): Build => {
      const one = build(STACK);
      const pistonCompression = { ...one.valves.pistonCompression, float: { travel_mm, rate_N_mm, preload_N: 1 } };
      return { ...one, valves: { ...one.valves, pistonCompression } };
    };
    expect(describeDifference(floating(0.25), floating(0.15), 'cartridge', String)).toBe('M: float 0.25→0.15');
    expect(describeDifference(floating(0.25), floating(0.25, 3), 'monotube', String)).toBe('C: other settings');
  });

  const anyRow = fc.record({
    outerDiameter_mm: fc.constantFrom(20, 24, 28, 30),
    thickness_mm: fc.constantFrom(0.1, 0.15),
    count: fc.integer({ min: 1, max: 4 }),
  });
  const anyStack = fc.array(anyRow, { minLength: 1, maxLength: 8 });
  const total = (rows: readonly ShimRow[]): number => rows.reduce((sum, r) => sum + (r.count ?? 1), 0);

  it('is nothing for a stack and itself, and accounts for every shim of two stacks', () => {
    fc.assert(
      fc.property(anyStack, anyStack, (before, after) => {
        expect(compareRows(before, before)).toEqual([]);
        const gained = compareRows(before, after).reduce((sum, change) => {
          if (change.kind === 'added') return sum + (change.row.count ?? 1);
          if (change.kind === 'removed') return sum - (change.row.count ?? 1);
          return change.kind === 'count' ? sum + change.to - change.from : sum;
        }, 0);
        expect(gained).toBe(total(after) - total(before));
      }),
    );
  });

  it('joining rows keeps every shim in its place', () => {
    fc.assert(
      fc.property(anyStack, (rows) => {
        const single = (list: readonly ShimRow[]): string[] =>
          list.flatMap((r) => Array.from({ length: r.count ?? 1 }, () => `${r.outerDiameter_mm}x${r.thickness_mm}`));
        expect(single(joinEqualRows(rows))).toEqual(single(rows));
      }),
    );
  });
});
