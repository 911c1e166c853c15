import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../../../src/demo/index.ts';
import { dampingCyclesForBuild } from '../../../../src/solver/from-model/cycle.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';

const OPTIONS = { theory: 'small-deflection' } as const;

describe.each(DEMOS)('$id', ({ file }) => {
  const project = loadDemo(file);
  const along = (...position_m: number[]) =>
    dampingCyclesForBuild(
      project,
      project.baselineBuild,
      [{ kind: 'trace', time_s: position_m.map((_, i) => i / 10), position_m }],
      OPTIONS,
    )[0];

  it.each([
    ['in compression', [0.01, 0.02, 0.03]],
    ['in rebound', [0.03, 0.02, 0.01]],
    ['nowhere', [0.02, 0.02]],
    ['and stands', [0.01, 0.03, 0.03]],
  ])('has a state where the shaft moves one way only: %s', (_, positions) => {
    const run = along(...positions);
    expect(run.status).toBe('finished');
    if (run.status !== 'finished') return;
    expect(run.energy.oil_J).toBeGreaterThanOrEqual(0);
    expect(Math.abs(run.energy.balanceError_J)).toBeLessThan(1e-4);
  });
});
