import { expect, it } from 'vitest';
import { untoldLines } from '../../../src/cli/commands/fit.ts';
import type { FitName } from '../../../src/solver/index.ts';

const untold = (...directions: FitName[][]) => ({
  untold: directions.map((names) => ({ parts: names.map((name) => ({ name, share: 0.5 })), leftOpen: 1 })),
});

it('tells what the measurements cannot tell apart once, whichever of it weighs more', () => {
  const told = untold(
    ['sharpEdgeDischarge', 'bleedAreaFactor'],
    ['bleedAreaFactor', 'sharpEdgeDischarge'],
    ['frictionFactor'],
    ['viscosityFactor', 'frictionFactor', 'longOrificeFactor'],
  );
  expect(untoldLines(told)).toEqual([
    'The measurements cannot tell sharpEdgeDischarge from bleedAreaFactor.',
    'The measurements cannot tell frictionFactor.',
    'The measurements cannot tell longOrificeFactor from viscosityFactor and frictionFactor.',
  ]);
});
