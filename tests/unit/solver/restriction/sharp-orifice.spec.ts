import { describe, expect, it } from 'vitest';
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
});
