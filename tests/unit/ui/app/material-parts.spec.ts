import { describe, expect, it } from 'vitest';
import { SPRING_STEEL as COMPUTED_WITH } from '../../../../src/solver/from-model/stacks.ts';
import { STRENGTH_TABLE, strengthOf } from '../../../../src/solver/life/strength.ts';
import { isSteel, materialOf, materialOfRow, SPRING_STEEL } from '../../../../src/ui/app/material-parts.ts';
import { text } from '../../../../src/ui/text/en.ts';
import { REAR, readDemo } from '../helpers/demos.ts';

const project = readDemo(REAR);
const { id } = project.builds[0];

describe('the metal that is assumed', () => {
  it('is told as the solver takes it', () => {
    expect(SPRING_STEEL).toEqual(COMPUTED_WITH);
    const said = text.material.defaults(true);
    const table = STRENGTH_TABLE;
    for (const number of [
      SPRING_STEEL.youngsModulus_GPa,
      SPRING_STEEL.poissonsRatio,
      table.tensile.value / 1e6,
      table.yieldPerTensile.value,
      table.endurancePerTensile.value,
      table.largestEndurance.value / 1e6,
      table.leastSteelModulus.value / 1e9,
      table.largestSteelModulus.value / 1e9,
    ])
      expect(said).toMatch(new RegExp(`\\b${String(number).replace('.', '\\.')}\\b`));
  });

  it.each([189.9, 190, 215, 215.1])('of %f GPa is a steel where the solver judges it as one', (youngsModulus_GPa) => {
    const judged = strengthOf({ youngsModulus_Pa: youngsModulus_GPa * 1e9 } as Parameters<typeof strengthOf>[0]);
    expect(isSteel({ youngsModulus_GPa, poissonsRatio: 0.3 })).toBe(judged !== undefined);
  });
});

describe('a material', () => {
  it('is put to a stack and to one row of it, and taken away without a trace', () => {
    const bronze = { youngsModulus_GPa: 110, poissonsRatio: 0.34 };
    const stack = materialOf(id, 'pistonRebound');
    const row = materialOfRow(id, 'pistonRebound', 1);
    const given = stack.put(project, bronze);
    expect(given.builds[0].valves.pistonRebound.material).toEqual(bronze);
    expect(given.builds[0].valves.pistonCompression.material).toBeUndefined();
    // A shim of its own metal starts as the stack it lies in.
    expect(row.start(given)).toEqual(bronze);
    expect(row.start(project)).toEqual(SPRING_STEEL);
    const both = row.put(given, SPRING_STEEL);
    expect(both.builds[0].valves.pistonRebound.shims.map(({ material }) => material?.youngsModulus_GPa)).toEqual(
      both.builds[0].valves.pistonRebound.shims.map((_, i) => (i === 1 ? 206 : undefined)),
    );
    expect(stack.put(row.put(both, undefined), undefined)).toEqual(project);
  });
});
