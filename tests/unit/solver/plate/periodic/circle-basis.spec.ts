import { describe, expect, it } from 'vitest';
import { createCircleBasis, liftAround } from '../../../../../src/solver/plate/periodic/circle-basis.ts';
import { loadShares } from '../../../../../src/solver/plate/periodic/periodic-load.ts';

const middles = (f: (phi: number) => number, parts: number) =>
  Array.from({ length: parts }, (_, i) => f(((i + 0.5) * Math.PI) / parts)).reduce((s, v) => s + v, 0) / parts;

describe.each([1, 2] as const)('shapes round the circle with %i harmonics of the lift', (M) => {
  const basis = createCircleBasis(5, M);

  it('are 1 at their own place and 0 at the others', () => {
    for (let j = 0; j <= M; j++) {
      const lifts = Array.from({ length: M + 1 }, (_, i) => (i === j ? 1 : 0));
      for (const [i, wanted] of lifts.entries())
        expect(liftAround(basis, lifts, (i * Math.PI) / M)).toBeCloseTo(wanted, 12);
    }
  });

  it('give back every harmonic from its values at the places', () => {
    for (let k = 0; k <= M; k++) {
      const lifts = Array.from({ length: M + 1 }, (_, j) => Math.cos((k * j * Math.PI) / M));
      for (const phi of [0.1, 1, 2.5]) expect(liftAround(basis, lifts, phi)).toBeCloseTo(Math.cos(k * phi), 12);
    }
  });

  it('are integrated exactly up to the fourth power of a lift', () => {
    const phi = (q: number) => ((q + 0.5) * Math.PI) / basis.points;
    const sum = Array.from({ length: basis.points }, (_, q) => Math.cos(M * phi(q)) ** 4).reduce((s, v) => s + v, 0);
    expect(sum / basis.points).toBeCloseTo(3 / 8, 12);
  });

  it('carry the load of ports as an integral over what they open says', () => {
    const load = { covered: 0.65, portsPerPeriod: M, imperfection: 0 };
    // Ports at φ = 0, 2π/M …, each open over the share 0.65 of its part of the circle.
    const open = (phi: number) => Math.abs(((M * phi + Math.PI) % (2 * Math.PI)) - Math.PI) < 0.65 * Math.PI;
    loadShares(basis, load).forEach((share, j) => {
      const lifts = Array.from({ length: M + 1 }, (_, i) => (i === j ? 1 : 0));
      expect(share).toBeCloseTo(
        middles((phi) => (open(phi) ? liftAround(basis, lifts, phi) : 0), 20_000),
        4,
      );
    });
  });
});

describe('an imperfection', () => {
  it('loads the first harmonic alone, and leaves the force as it is', () => {
    const basis = createCircleBasis(3, 1);
    const [crest, trough] = loadShares(basis, { covered: 1, portsPerPeriod: 0, imperfection: 1e-3 });
    expect(crest + trough).toBeCloseTo(1, 15);
    // p (1 + ε cos φ) works ε/2 on w₁, and w₁ = (crest - trough)/2.
    expect((crest - trough) / 2).toBeCloseTo(0.5e-3 / 2, 12);
  });
});
