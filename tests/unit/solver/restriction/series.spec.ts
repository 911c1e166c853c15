import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { quadraticLoss } from '../../../../src/solver/restriction/quadratic-loss.ts';
import { series } from '../../../../src/solver/restriction/series.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, roundHoles, value } from './helpers.ts';

describe('series', () => {
  it('adds creeping and jet resistances up', () => {
    // Source: own arithmetic, dp = (a1 + a2) Q + (b1 + b2) Q^2.
    const both = series(quadraticLoss(1e9, 2e12), quadraticLoss(3e9, 1e12));
    expect(relative(value(both.drop(1e-4)), 4e5 + 3e4)).toBeLessThan(1e-12);
    expect(relative(value(both.flow(4.3e5)), 1e-4)).toBeLessThan(1e-9);
  });

  it('obeys the laws of a restriction', () => {
    const hole = fc.tuple(logUniform(0.3e-3, 4e-3), logUniform(0.1e-3, 20e-3));
    expectRestrictionLaws(
      hole.map(([d, length]) =>
        series(drilledHole(roundHoles(d, length), OIL, DEFAULT_COEFFICIENTS), quadraticLoss(1e9, 1e12)),
      ),
    );
  });
});
