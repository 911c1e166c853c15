import { describe, expect, it } from 'vitest';
import { frictionFactor } from '../../../../src/solver/restriction/passage-friction.ts';

describe('frictionFactor', () => {
  // Source: Churchill 1977 for a smooth pipe, computed independently.
  it.each([
    [1e4, 0.031002],
    [1e5, 0.017875],
  ])('at Re %d is %d', (Re, f) => {
    expect(Math.abs(frictionFactor(Re) / f - 1)).toBeLessThan(4e-5);
  });

  it.each([1e-6, 0.5, 1, 10, 500, 1500])('is 64/Re in laminar flow, Re %d', (Re) => {
    expect(Math.abs((frictionFactor(Re) * Re) / 64 - 1)).toBeLessThan(1e-3);
  });

  it('never lets the drop fall as the flow rises, through the transition', () => {
    const Re = Array.from({ length: 3000 }, (_, i) => 10 ** (i * 0.002));
    const drop = Re.map((re) => re * re * frictionFactor(re));
    for (let i = 1; i < drop.length; i++) expect(drop[i]).toBeGreaterThan(drop[i - 1]);
  });
});
