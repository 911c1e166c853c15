import { describe, expect, it } from 'vitest';
import { COEFFICIENT_TABLE } from '../../../../src/solver/restriction/coefficients.ts';
import { sharpOrifice } from '../../../../src/solver/restriction/sharp-orifice.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, roundHoles, value } from './helpers.ts';

const inviscid = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e-12 };

describe('sharpOrifice', () => {
  it('becomes the orifice equation at high Reynolds number', () => {
    // Source: Q = Cd A sqrt(2 dp / rho), d 2 mm, Cd 0.7, rho 860, 1 MPa: 1.060507e-4 m3/s (computed independently).
    const flow = value(sharpOrifice(roundHoles(2e-3, 0), inviscid, 0.7).flow(1e6));
    expect(relative(flow, 1.060507e-4)).toBeLessThan(1e-6);
  });

  it("becomes Sampson's creeping flow through a thin round hole at low Reynolds number", () => {
    // Source: Sampson 1891, Q = d^3 dp / (24 mu).
    const honey = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e4 };
    const flow = value(sharpOrifice(roundHoles(2e-3, 0), honey, 0.611).flow(1e5));
    expect(relative(flow, (2e-3 ** 3 * 1e5) / (24 * 1e4))).toBeLessThan(1e-6);
  });

  it('has the low-Reynolds coefficient 0.1629 sqrt(Re) of a round hole, not the 0.1992 of the slit-derived formula', () => {
    // Source: Sampson's limit in the form Cd = delta sqrt(Re), Re on the real mean velocity (computed independently).
    const honey = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e4 };
    const holes = roundHoles(2e-3, 0);
    const u = value(sharpOrifice(holes, honey, 0.611).flow(1e5)) / holes.area_m2;
    const Cd = u / Math.sqrt((2 * 1e5) / 860);
    expect(Cd / Math.sqrt((860 * u * 2e-3) / 1e4)).toBeCloseTo(0.1629, 4);
  });

  it('counts holes side by side', () => {
    const [one, five] = [1, 5].map((n) => value(sharpOrifice(roundHoles(2e-3, 0, n), OIL, 0.61).flow(1e5)));
    expect(five / one).toBeCloseTo(5, 10);
  });

  it('obeys the laws of a restriction', () => {
    expectRestrictionLaws(logUniform(1e-4, 1e-2).map((d) => sharpOrifice(roundHoles(d, 0), OIL, 0.61)));
  });

  describe('has the contraction of a free jet for its coefficient', () => {
    /** Cc of a jet out of a hole d in a passage D: Cc [1 + (2/pi) (1/x - x) atan x] = 1, x = Cc d/D. */
    function contraction(dOverD: number): number {
      const excess = (Cc: number) => {
        const x = Cc * dOverD;
        return Cc * (1 + (2 / Math.PI) * (1 / x - x) * Math.atan(x)) - 1;
      };
      let [low, high] = [0.5, 1];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (excess(middle) < 0) low = middle;
        else high = middle;
      }
      return low;
    }
    const { value: Cd, low, high } = COEFFICIENT_TABLE.sharpEdgeDischarge;

    // Source: von Mises, in Merritt 1967 through Rabie, Fluid Power Engineering, eq. 2.38 and 2.39 (seen); values computed independently.
    it.each([
      [0.1, 0.6122],
      [0.3, 0.6221],
      [0.5, 0.6444],
      [0.7, 0.6867],
      [0.9, 0.7806],
    ])('that of a hole %f as wide as its passage is %f', (dOverD, Cc) => {
      expect(Math.abs(contraction(dOverD) - Cc)).toBeLessThan(1e-4);
    });

    it('is that of a wide passage, and its band reaches to one twice as wide as the hole', () => {
      expect(Math.abs(contraction(1e-4) - Cd)).toBeLessThan(1e-6);
      expect(low).toBeLessThan(Cd);
      expect(high).toBeGreaterThan(contraction(0.5));
      expect(high).toBeLessThan(contraction(0.7));
    });
  });
});
