/** Every stack of every demo: its table keeps to the solver between its points, as docs/theory-hydraulics.md says. */
import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../../src/demo/index.ts';
import type { StackInput } from '../../../src/solver/index.ts';
import { damperFromProject } from '../../../src/solver/index.ts';
import { createLoadedStack } from '../../../src/solver/stack/loaded-stack.ts';
import type { ConvergedLift } from '../../../src/solver/types.ts';
import { openingTable } from '../../../src/solver/valve/opening-table.ts';
import { loadDemo } from '../../helpers/demo-curves.ts';
import { pressureErrors } from '../../helpers/table-error.ts';

const STACKS = DEMOS.flatMap(({ file }) => {
  const project = loadDemo(file);
  return project.builds.flatMap(({ id }) => {
    const { compression, rebound, base } = damperFromProject(project, id);
    const named = { compression, rebound, ...(base && { base: base.compression }) };
    return Object.entries(named).map(([place, { stack }]) => ({ name: `${project.name}, ${id}, ${place}`, stack }));
  });
});

/** Beyond its float, where it has one, a stack is followed until it bends by this much [m]. */
const FAR = 0.3e-3;
const SHARE = 0.94;

/** Largest error of a table, over pressures down from its end: the share of the pressure by which a flow is off. */
function farthest(stack: StackInput, theory: 'small-deflection' | 'large-deflection'): number {
  const { ports: _, ...plain } = stack;
  const loaded = createLoadedStack(plain, { theory, landPressure: 'falling' });
  const solve = (_stack: StackInput, pressures: readonly number[]) => ({ theory, points: pressures.map(loaded.at) });
  const enough = ({ seatOpening_m, hubRise_m }: ConvergedLift) => seatOpening_m - hubRise_m >= FAR;
  const { table, opening, crackingPressure_Pa } = openingTable(solve, plain, theory, enough);
  const top = table.pressure_Pa.at(-1) as number;
  const pressures = Array.from({ length: 80 }, (_point, i) => top * SHARE ** i).filter(
    (p) => p > 1.02 * crackingPressure_Pa,
  );
  expect(pressures.length).toBeGreaterThan(20);
  const exact = pressures.reverse().map((p) => loaded.at(p) as ConvergedLift);
  for (const { status } of exact) expect(status).toBe('converged');
  return Math.max(...pressureErrors(opening, exact));
}

describe.each(STACKS)('the table of $name', ({ stack }) => {
  it.each(['small-deflection', 'large-deflection'] as const)('is good to half a percent (%s)', (theory) => {
    expect(farthest(stack, theory)).toBeLessThanOrEqual(0.005);
  });
});
