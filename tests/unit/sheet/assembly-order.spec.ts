import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assembly, ShimRow } from '../../../src/model/project.ts';
import { orderedStacks } from '../../../src/sheet/assembly-order.ts';
import { soundCartridge, soundProject } from '../../helpers/documents.ts';

const FACE: ShimRow = { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 };
const CROSSOVER: ShimRow = { outerDiameter_mm: 18, thickness_mm: 0.1 };
const CLAMP: ShimRow = { outerDiameter_mm: 16, thickness_mm: 0.3, count: 2 };
const STACK = [FACE, CROSSOVER, CLAMP];

function stacksOf(shims: ShimRow[], assembly?: Assembly) {
  const { builds, damper } = soundProject();
  const [build] = builds;
  const valves = {
    pistonCompression: { clampDiameter_mm: 12, seatHeight_mm: 0, shims },
    pistonRebound: { ...build.valves.pistonRebound },
  };
  return orderedStacks({ ...build, valves, ...(assembly && { assembly }) }, damper);
}

const told = (stack: ReturnType<typeof stacksOf>[number]) =>
  stack.rows.map(({ row, from, to }) => `${from}-${to}: ${row.outerDiameter_mm}`);

describe('the order of assembly', () => {
  it('goes from the face shim outwards while nobody has said which stack goes on first', () => {
    const [compression, rebound] = stacksOf(STACK);
    expect([compression.place, rebound.place]).toEqual(['pistonCompression', 'pistonRebound']);
    expect(compression.order).toBe('from-face');
    expect(told(compression)).toEqual(['1-3: 30', '4-4: 18', '5-6: 16']);
  });

  it('ends with the face shim on the stack that goes on before the piston, which comes first', () => {
    const [first, second] = stacksOf(STACK, { firstStack: 'pistonCompression' });
    expect(told(first)).toEqual(['1-2: 16', '3-3: 18', '4-6: 30']);
    expect([first.order, second.order]).toEqual(['before-piston', 'after-piston']);
    const [rebound, compression] = stacksOf(STACK, { firstStack: 'pistonRebound' });
    expect([rebound.place, compression.place]).toEqual(['pistonRebound', 'pistonCompression']);
    expect(told(compression)).toEqual(['1-3: 30', '4-4: 18', '5-6: 16']);
  });

  it('adds up shims and height; a ring lies beside the clamp and adds no height', () => {
    const ring: ShimRow = { outerDiameter_mm: 24, thickness_mm: 0.4, innerDiameter_mm: 20 };
    const [stack] = stacksOf([FACE, ring, CROSSOVER, CLAMP]);
    expect(stack.count).toBe(7);
    // By hand: 3 x 0.15 + 0.1 + 2 x 0.3.
    expect(stack.height_mm).toBeCloseTo(1.15, 12);
  });

  it('numbers every single shim once, however its rows are split', () => {
    const row = fc.record({
      outerDiameter_mm: fc.integer({ min: 14, max: 30 }),
      thickness_mm: fc.constantFrom(0.1, 0.15, 0.2),
      count: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), fc.boolean(), (shims, isFirst) => {
        const stacks = stacksOf(shims, { firstStack: isFirst ? 'pistonCompression' : 'pistonRebound' });
        const stack = stacks.find(({ place }) => place === 'pistonCompression');
        const numbers = stack?.rows.flatMap(({ from, to }) =>
          Array.from({ length: to - from + 1 }, (_, i) => from + i),
        );
        const all = shims.reduce((sum, { count }) => sum + count, 0);
        expect(numbers).toEqual(Array.from({ length: all }, (_, i) => i + 1));
        expect(stack?.count).toBe(all);
      }),
    );
  });

  it('has the base last, told from its face', () => {
    const { builds, damper } = soundCartridge();
    const stacks = orderedStacks({ ...builds[0], assembly: { firstStack: 'pistonRebound' } }, damper);
    expect(stacks.map(({ place }) => place)).toEqual(['pistonRebound', 'pistonCompression', 'baseCompression']);
    expect(stacks[2].order).toBe('from-face');
  });
});
