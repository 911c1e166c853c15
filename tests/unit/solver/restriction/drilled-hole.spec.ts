import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { sharpOrifice } from '../../../../src/solver/restriction/sharp-orifice.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, roundHoles, value } from './helpers.ts';

const hole = (slenderness: number, d = 2e-3, count = 1) =>
  drilledHole(roundHoles(d, slenderness * d, count), OIL, DEFAULT_COEFFICIENTS);

describe('drilledHole', () => {
  it('is a long orifice between l/d 1.5 and 10', () => {
    // Source: Lichtarowicz, Duggins & Markland 1965: Cd 0.6860 at l/d 4, Re 1000 on the ideal velocity.
    const V = (1000 * 0.0129) / (860 * 2e-3);
    const flow = value(hole(4).flow((860 * V * V) / 2));
    expect(relative(flow, 0.686 * Math.PI * 1e-6 * V)).toBeLessThan(5e-4 / 0.686);
  });

  it('is a sharp edge up to l/d 0.5', () => {
    const sharp = sharpOrifice(roundHoles(2e-3, 0), OIL, DEFAULT_COEFFICIENTS.sharpEdgeDischarge);
    expect(value(hole(0.4).flow(1e5))).toBe(value(sharp.flow(1e5)));
  });

  it.each([0.5, 1.5, 2, 10])('has no step in length at l/d %d', (s) => {
    for (const drop of [1e2, 1e4, 1e6]) {
      const [below, above] = [s - 1e-6, s + 1e-6].map((x) => value(hole(x).flow(drop)));
      expect(relative(below, above)).toBeLessThan(1e-4);
    }
  });

  it('lies between the sharp edge and the long orifice at l/d 1, half way at one drop', () => {
    for (const drop of [1e4, 1e5, 1e6]) {
      const [sharp, between, long] = [0.5, 1, 1.5].map((s) => value(hole(s).flow(drop)));
      expect(relative(between, (sharp + long) / 2)).toBeLessThan(1e-9);
    }
  });

  it('adds the friction of the rest of a very long bore', () => {
    // Source: Hagen-Poiseuille dp = 128 mu L Q / (pi d^4) over the length beyond ten diameters, laminar.
    const d = 1e-3;
    const flow = 2e-7;
    const extra = value(hole(110, d).drop(flow)) - value(hole(10, d).drop(flow));
    expect(relative(extra, (128 * OIL.dynamicViscosity_Pa_s * 0.1 * flow) / (Math.PI * d ** 4))).toBeLessThan(1e-4);
  });

  it('shares the flow evenly between equal holes', () => {
    expect(value(hole(3, 2e-3, 4).flow(1e5)) / value(hole(3).flow(1e5))).toBeCloseTo(4, 9);
  });

  it('reports a flow that is no number', () => {
    expect(hole(3).drop(Number.NaN)).toMatchObject({ status: 'not-converged' });
    expect(hole(30).flow(Number.NaN)).toMatchObject({ status: 'not-converged' });
  });

  it('obeys the laws of a restriction at every length', () => {
    const anyHole = fc.record({ d: logUniform(2e-4, 1e-2), s: logUniform(0.01, 100) });
    expectRestrictionLaws(anyHole.map(({ d, s }) => hole(s, d)));
  });
});
