import { expect, it } from 'vitest';
import { rolesOf } from '../../../../src/ui/app/roles.ts';

const rows = (...diameters: number[]) =>
  diameters.map((outerDiameter_mm) => ({ outerDiameter_mm, thickness_mm: 0.15 }));

// Trade words: face shims at the piston, a crossover delays the stage above it, a taper falls in diameter, the clamp shim
// is the last and smallest (common practice).
it.each([
  [[30], ['face']],
  [
    [30, 30, 30],
    ['face', 'face', 'face'],
  ],
  [
    [30, 28, 22, 16],
    ['face', 'taper', 'taper', 'clamp'],
  ],
  [
    [30, 16, 28, 22],
    ['face', 'crossover', 'taper', 'taper'],
  ],
  [
    [30, 16, 28, 14],
    ['face', 'crossover', 'taper', 'clamp'],
  ],
  [
    [30, 16, 30, 20, 12],
    ['face', 'crossover', 'taper', 'taper', 'clamp'],
  ],
])('%j', (diameters, roles) => expect(rolesOf(rows(...diameters))).toEqual(roles));
