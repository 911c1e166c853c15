import { describe, expect, it } from 'vitest';
import { radialGap, radialGapForce } from '../../../../src/solver/restriction/radial-gap.ts';
import { OIL, relative, value } from './helpers.ts';

const gap = { innerRadius_m: 8e-3, outerRadius_m: 12e-3, gap_m: 0.05e-3 };
const creeping = { ...OIL, density_kg_m3: 1e-9 };

describe('radialGap', () => {
  // Source: Bird, Stewart & Lightfoot; r1 8, r2 12 mm, h 0.05 mm, mu 0.0129, 1 MPa, computed independently.
  it('lets 1.251312e-5 m3/s through at 1 MPa when creeping', () => {
    expect(relative(value(radialGap(gap, creeping).flow(1e6)), 1.251312e-5)).toBeLessThan(1e-6);
  });

  it('passes 1.37 % less than a slit of its mean circumference', () => {
    // Source: Q = w h^3 dp / (12 mu l), w = pi (r1 + r2), l = r2 - r1; (10/4) ln 1.5 = 1.01366 by hand.
    const slit = (Math.PI * 20e-3 * 0.05e-3 ** 3 * 1e6) / (12 * OIL.dynamicViscosity_Pa_s * 4e-3);
    expect(slit / value(radialGap(gap, creeping).flow(1e6))).toBeCloseTo(1.01366, 4);
  });

  it('has the first inertia term with 27/140', () => {
    // Source: Savage 1964 (from memory), derived again: the pressure regained as the flow slows down outwards.
    const Q = 1e-6;
    const regained = value(radialGap(gap, creeping).drop(Q)) - value(radialGap(gap, OIL).drop(Q));
    const [r1, r2, h] = [8e-3, 12e-3, 0.05e-3];
    const wanted = ((27 / 140) * 860 * Q ** 2 * (1 / r1 ** 2 - 1 / r2 ** 2)) / (Math.PI ** 2 * h ** 2);
    expect(relative(regained, wanted)).toBeLessThan(1e-6);
  });

  it('undoes itself while the correction holds', () => {
    for (const drop of [1e2, 1e4, 1e5]) {
      expect(relative(value(radialGap(gap, OIL).drop(value(radialGap(gap, OIL).flow(drop)))), drop)).toBeLessThan(
        1e-12,
      );
    }
  });

  it('says so where inertia outweighs friction', () => {
    const wide = radialGap({ ...gap, gap_m: 1e-3 }, OIL);
    expect(wide.flow(1e6)).toMatchObject({ status: 'not-converged', reason: expect.stringContaining('inertia') });
    expect(wide.drop(1e-3)).toMatchObject({ status: 'not-converged' });
  });
});

describe('radialGapForce', () => {
  it('is 108.8629 N on the land, 309.9248 N with the full pressure inside', () => {
    // Source: the same worked example, computed independently.
    const land = radialGapForce(gap, 1e6);
    expect(relative(land, 108.8629)).toBeLessThan(1e-6);
    expect(relative(land + Math.PI * 8e-3 ** 2 * 1e6, 309.9248)).toBeLessThan(1e-6);
  });
});
