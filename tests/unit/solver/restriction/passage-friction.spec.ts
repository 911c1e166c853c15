import { describe, expect, it } from 'vitest';
import { frictionFactor } from '../../../../src/solver/restriction/passage-friction.ts';

/** Churchill 1977 with its roughness over diameter k, typed from the paper's form (from memory). */
function churchill(Re: number, k: number): number {
  const A = (2.457 * Math.log(1 / ((7 / Re) ** 0.9 + 0.27 * k))) ** 16;
  return 8 * ((8 / Re) ** 12 + (A + (37530 / Re) ** 16) ** -1.5) ** (1 / 12);
}

/** Colebrook's equation, solved by repetition. */
function colebrook(Re: number, k: number): number {
  let root = 0.1;
  for (let i = 0; i < 50; i++) root = -1 / (2 * Math.log10(k / 3.7 + 2.51 / (Re * root)));
  return root * root;
}

const off = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

describe('frictionFactor', () => {
  // Source: published points of both formulas, recomputed; 1e5 at 1e-4 stands in the documentation of a public library.
  it.each([
    [1e5, 1e-4, 0.01846262, 0.01851387, 1e-6],
    [1e4, 0, 0.031002, 0.030883, 2e-5],
    [1e5, 0, 0.017875, 0.01799, 2e-5],
    [1e5, 1e-3, 0.022343, 0.022175, 3e-5],
    [1e6, 1e-3, 0.020022, 0.019943, 3e-5],
  ])(
    'is the smooth branch of the formula that gives, at Re %d and roughness %d, %d',
    (Re, k, ofChurchill, ofColebrook, digits) => {
      expect(off(churchill(Re, k), ofChurchill)).toBeLessThan(digits);
      expect(off(colebrook(Re, k), ofColebrook)).toBeLessThan(digits);
      expect(off(frictionFactor(Re), churchill(Re, 0))).toBeLessThan(1e-12);
    },
  );

  it('lies within 1 % of Colebrook and 2.1 % of Blasius for a smooth passage', () => {
    // Source: Blasius, 0.3164 Re^-0.25: 0.03164 at 1e4, 0.017792 at 1e5.
    for (const [Re, blasius] of [
      [1e4, 0.03164],
      [1e5, 0.017792],
    ]) {
      expect(off(frictionFactor(Re), colebrook(Re, 0))).toBeLessThan(0.01);
      expect(off(frictionFactor(Re), blasius)).toBeLessThan(0.021);
    }
  });

  it('gives the flow of Hagen and Poiseuille where it creeps', () => {
    // Source: Q = pi d^4 dp / (128 mu L), d 1 mm, L 10 mm, mu 0.0129: 1.902612e-4 m3/s per MPa (computed independently).
    const [d, L, mu, rho] = [1e-3, 10e-3, 0.0129, 860];
    const u = 1.902612e-10 / ((Math.PI / 4) * d * d);
    const f = frictionFactor((rho * u * d) / mu);
    expect(off((f * (L / d) * rho * u * u) / 2, 1)).toBeLessThan(1e-6);
  });

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
