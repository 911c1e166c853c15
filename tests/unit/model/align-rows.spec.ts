import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alignRows, type RowPair } from '../../../src/model/align-rows.ts';
import type { ShimRow } from '../../../src/model/project.ts';

const row = (outerDiameter_mm: number, thickness_mm: number, count = 1): ShimRow => ({
  outerDiameter_mm,
  thickness_mm,
  count,
});

const placed = (one: { row: ShimRow; at: number }): string =>
  `${one.at + 1}: ${one.row.count} of ${one.row.outerDiameter_mm} × ${one.row.thickness_mm}`;

/** Left, mark, right, as on the page. */
const lines = (pairs: readonly RowPair[]): string[] =>
  pairs.map((pair) => {
    const left = 'before' in pair && !(pair.mark === 'moved' && pair.side === 'after') ? placed(pair.before) : '';
    const right = 'after' in pair && !(pair.mark === 'moved' && pair.side === 'before') ? placed(pair.after) : '';
    return `${left} | ${pair.mark} | ${right}`;
  });

const STACK = [row(30, 0.15, 3), row(16, 0.1), row(28, 0.15), row(22, 0.15), row(18, 0.2)];

describe('two stacks laid side by side', () => {
  it('keep stack order, and mark what became of each shim', () => {
    // By hand: 30 × 0.15 lies in both with another count; 16 × 0.1 went; 22 got thicker; 20 × 0.1 came; 18 stayed.
    const after = [row(30, 0.15, 2), row(28, 0.15), row(22, 0.2), row(20, 0.1), row(18, 0.2)];
    expect(lines(alignRows(STACK, after))).toEqual([
      '1: 3 of 30 × 0.15 | changed | 1: 2 of 30 × 0.15',
      '2: 1 of 16 × 0.1 | removed | ',
      '3: 1 of 28 × 0.15 | kept | 2: 1 of 28 × 0.15',
      '4: 1 of 22 × 0.15 | changed | 3: 1 of 22 × 0.2',
      ' | added | 4: 1 of 20 × 0.1',
      '5: 1 of 18 × 0.2 | kept | 5: 1 of 18 × 0.2',
    ]);
  });

  it('tell a moved shim where it was and where it is', () => {
    const after = [STACK[0], STACK[2], STACK[3], STACK[1], STACK[4]];
    expect(lines(alignRows(STACK, after))).toEqual([
      '1: 3 of 30 × 0.15 | kept | 1: 3 of 30 × 0.15',
      '2: 1 of 16 × 0.1 | moved | ',
      '3: 1 of 28 × 0.15 | kept | 2: 1 of 28 × 0.15',
      '4: 1 of 22 × 0.15 | kept | 3: 1 of 22 × 0.15',
      ' | moved | 4: 1 of 16 × 0.1',
      '5: 1 of 18 × 0.2 | kept | 5: 1 of 18 × 0.2',
    ]);
  });

  it('keep the most equal shims before they pair unequal ones', () => {
    // Pairing both 30s as changed would lose the equal 16 × 0.1 between them.
    const before = [row(30, 0.15), row(16, 0.1), row(30, 0.2)];
    const after = [row(16, 0.1), row(30, 0.25)];
    expect(lines(alignRows(before, after))).toEqual([
      '1: 1 of 30 × 0.15 | removed | ',
      '2: 1 of 16 × 0.1 | kept | 1: 1 of 16 × 0.1',
      '3: 1 of 30 × 0.2 | changed | 2: 1 of 30 × 0.25',
    ]);
  });

  it('call a shim with another bore changed, and one of another diameter another shim', () => {
    const ring = { ...row(28, 0.15), innerDiameter_mm: 20 };
    expect(alignRows([row(28, 0.15)], [ring]).map(({ mark }) => mark)).toEqual(['changed']);
    expect(alignRows([row(28, 0.15)], [row(27, 0.15)]).map(({ mark }) => mark)).toEqual(['removed', 'added']);
  });

  const anyRow = fc.record({
    outerDiameter_mm: fc.constantFrom(20, 24, 28),
    thickness_mm: fc.constantFrom(0.1, 0.15),
    count: fc.integer({ min: 1, max: 3 }),
  });
  const anyStack = fc.array(anyRow, { maxLength: 8 });
  const singles = (rows: readonly ShimRow[]): string[] =>
    rows.flatMap((r) => Array.from({ length: r.count ?? 1 }, () => `${r.outerDiameter_mm}x${r.thickness_mm}`));

  it('hold every shim of both, in order, and a stack beside itself is all kept', () => {
    fc.assert(
      fc.property(anyStack, anyStack, (before, after) => {
        const pairs = alignRows(before, after);
        const left = pairs.flatMap((p) =>
          'before' in p && !(p.mark === 'moved' && p.side === 'after') ? [p.before.row] : [],
        );
        const right = pairs.flatMap((p) =>
          'after' in p && !(p.mark === 'moved' && p.side === 'before') ? [p.after.row] : [],
        );
        expect(singles(left)).toEqual(singles(before));
        expect(singles(right)).toEqual(singles(after));
        expect(alignRows(before, before).every(({ mark }) => mark === 'kept')).toBe(true);
      }),
    );
  });

  it('stay in reach with two stacks of as many rows as one may have', () => {
    const many = Array.from({ length: 200 }, (_, i) => row(20 + (i % 7), 0.1 + (i % 3) / 20));
    const pairs = alignRows(many, [...many.slice(1), row(40, 0.3)]);
    expect(pairs.filter(({ mark }) => mark === 'kept')).toHaveLength(199);
  });
});
