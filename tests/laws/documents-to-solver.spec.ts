/** What the checks of a document let through, the solver takes: a person is told at the field, not when a curve is made. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { validateStackFile } from '../../src/model/validate.ts';
import { stackFromFile } from '../../src/solver/from-model.ts';
import { validateStack } from '../../src/solver/stack/validate-stack.ts';

const optional = <T>(arbitrary: fc.Arbitrary<T>, weight = 3) =>
  fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, { weight, arbitrary });
const rim = fc.constantFrom(12, 14, 18, 22, 26, 28.4, 30, 34);
const bore = fc.constantFrom(11, 12, 14, 18, 22);
const spring = { rate_N_mm: fc.constantFrom(10, 1e5), preload_N: fc.constantFrom(0, 5) };

const row = fc.record({
  outerDiameter_mm: rim,
  thickness_mm: fc.constantFrom(0.1, 0.2),
  count: fc.integer({ min: 1, max: 2 }),
  innerDiameter_mm: optional(bore),
  dish_mm: optional(fc.double({ min: -1.5, max: 1.5, noNaN: true })),
  notches: optional(fc.record({ count: fc.integer({ min: 1, max: 6 }), width_mm: fc.constantFrom(1, 5) }), 1),
});

const wide = { outerDiameter_mm: 30, thickness_mm: 0.15 };
const files = fc
  .record({
    rest: fc.array(row, { maxLength: 3 }),
    face: fc.oneof(fc.constant(wide), row),
    seat: optional(fc.constant({ innerDiameter_mm: 27.6, outerDiameter_mm: 28.4, height_mm: 0.1 })),
    backingPlate: optional(fc.record({ gap_mm: fc.constantFrom(0, 1), outerDiameter_mm: optional(rim) })),
    coilSpring: optional(fc.record({ diameter_mm: bore, ...spring })),
    float: optional(fc.record({ travel_mm: fc.constantFrom(0.1, 1), ...spring })),
  })
  .map(({ face, rest, ...parts }) => ({
    format: 'shimwright/stack',
    version: 1,
    name: 'drawn',
    clampDiameter_mm: 12,
    shims: [face, ...rest],
    pressureZone: { innerDiameter_mm: 16.5, outerDiameter_mm: 27.6 },
    ...parts,
  }))
  // As a file has it: keys that are absent, not undefined.
  .map((file) => JSON.parse(JSON.stringify(file)) as unknown);

describe('a stack file that passes its checks', () => {
  it('is a stack that the solver takes (property)', () => {
    let taken = 0;
    fc.assert(
      fc.property(files, (file) => {
        const checked = validateStackFile(file);
        if (!checked.ok) return;
        taken++;
        expect(() => validateStack(stackFromFile(checked.document))).not.toThrow();
      }),
      { numRuns: 3000 },
    );
    expect(taken).toBeGreaterThan(300);
  });
});
