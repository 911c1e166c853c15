import { describe, expect, it } from 'vitest';
import { longOrificeCoefficient } from '../../../../src/solver/restriction/long-orifice.ts';

const REYNOLDS = [10, 30, 100, 300, 1e3, 3e3, 1e4, 2e4];

// Source: Lichtarowicz, Duggins & Markland 1965, eq. 7 and 12, computed independently; the l/d = 2 row agrees with
// check values noted from the paper.
const PRINTED: [slenderness: number, coefficients: number[]][] = [
  [2, [0.0817, 0.204, 0.4284, 0.6248, 0.7446, 0.7899, 0.8081, 0.8088]],
  [4, [0.047, 0.1261, 0.3067, 0.5191, 0.686, 0.7592, 0.7906, 0.7914]],
  [6, [0.033, 0.0913, 0.2388, 0.4438, 0.6354, 0.7302, 0.7732, 0.7739]],
  [10, [0.0207, 0.0588, 0.1654, 0.3435, 0.5526, 0.6766, 0.7385, 0.7392]],
];

describe('longOrificeCoefficient', () => {
  const rows = PRINTED.flatMap(([s, row]) => row.map((Cd, i): [number, number, number] => [s, REYNOLDS[i], Cd]));
  it.each(rows)('is, at l/d %d and Re %d, %d', (s, Re, Cd) => {
    expect(Math.abs(longOrificeCoefficient(s, Re) - Cd)).toBeLessThan(5e-4);
  });

  it('keeps 0.005, not the misprinted 0.0015, in the third term', () => {
    // Source: the misprint of one public code moves Cd by up to 0.018; at l/d 10, Re 6667 the term is 0.05.
    const withoutTerm = 1 / (1 / 0.742 + (20 / 6667) * 23.5);
    expect(longOrificeCoefficient(10, 6667) - withoutTerm).toBeGreaterThan(0.02);
  });

  it.each([1.5, 2, 4, 10])('becomes the creeping flow of a hole of finite length at l/d %d', (s) => {
    // Source: Dagan, Weinbaum & Pfeffer 1982 (from memory): dp = (Q mu / a^3) (3 + 8 L / (pi a)).
    const Re = 1e-3;
    const [a, mu, rho] = [0.5e-3, 0.0129, 860];
    const V = (Re * mu) / (rho * 2 * a);
    const creepingFlow = ((rho * V * V) / 2) * (a ** 3 / mu / (3 + (8 * 2 * a * s) / (Math.PI * a)));
    const Cd = creepingFlow / (Math.PI * a * a * V);
    expect(Math.abs(longOrificeCoefficient(s, Re) / Cd - 1)).toBeLessThan(1e-3);
  });

  it.each([
    // Source: eq. 7 of the paper, 0.827 - 0.0085 l/d, and 0.810 for l/d up to 2.
    [1.5, 0.81],
    [2, 0.81],
    [5, 0.7845],
    [10, 0.742],
  ])('goes on beyond the range of the paper, at l/d %d to its highest value %d', (s, Cdu) => {
    for (const Re of [2e4, 1e5, 1e6, 1e8]) expect(Math.abs(longOrificeCoefficient(s, Re) - Cdu)).toBeLessThan(0.004);
    expect(Math.abs(longOrificeCoefficient(s, 1e8) - Cdu)).toBeLessThan(6e-4);
  });

  it('lets more through at every higher Reynolds number and has no step', () => {
    for (const s of [1.5, 2, 3, 5, 10]) {
      const Re = Array.from({ length: 2000 }, (_, i) => 10 ** (-3 + i * 0.005));
      const flow = Re.map((re) => re * longOrificeCoefficient(s, re));
      for (let i = 1; i < flow.length; i++) {
        expect(flow[i]).toBeGreaterThan(flow[i - 1]);
        expect(flow[i] / flow[i - 1]).toBeLessThan(1.03);
      }
    }
  });
});
