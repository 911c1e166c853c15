import { describe, expect, it } from 'vitest';
import { buildHermiteTables } from '../../../../../src/solver/plate/hermite-tables.ts';
import { createPlate } from '../../../../../src/solver/plate/plate.ts';
import { isStifferThan } from '../../../../../src/solver/plate/waviness/bending-bound.ts';
import { createWavePlate, takeState, type WavePlate } from '../../../../../src/solver/plate/waviness/wave-plate.ts';

const [D, C, RIM] = [0.07, 4e6, 0.01];

/** A plate clamped at its rim, with a hole of a thousandth of it, where a wave of n >= 2 has no size. */
function clampedPlate(): WavePlate {
  const radii = [1e-3, ...Array.from({ length: 25 }, (_, i) => 0.02 + (0.98 * i) / 24)].map((share) => share * RIM);
  const rim = (radii.length - 1) * 4;
  const tables = buildHermiteTables(Float64Array.from(radii));
  const description = { nodes: radii.length, D, C, nu: 0.3, fixed: [rim, rim + 1, rim + 2] };
  return createWavePlate(createPlate(tables, 'large-deflection', description));
}

describe('what bending alone proves against waves', () => {
  // A flat plate in uniform compression: its margin is 1 - N a²/(D j²), and nothing is lost by leaving U and V out.
  // Zeros of the Bessel functions: Abramowitz & Stegun 1964, table 9.5 (from memory).
  it.each([
    [2, 6.38016],
    [3, 7.58834],
    [4, 8.77148],
  ])('is exact for a flat plate in compression, %i waves, zero %f', (n, zero) => {
    const wave = clampedPlate();
    for (const share of [0, 0.3, 1, 1.4]) {
      const N = (-share * D * zero ** 2) / RIM ** 2;
      takeState(wave, () => ({ s: 0, Nr: N, Nt: N }));
      expect(isStifferThan(wave, n, 1 - share - 1e-3)).toBe(true);
      expect(isStifferThan(wave, n, 1 - share + 1e-3)).toBe(false);
    }
  });

  it('takes no help from the slope of the state, which only adds stiffness', () => {
    const wave = clampedPlate();
    const N = (-1.001 * D * 6.38016 ** 2) / RIM ** 2;
    takeState(wave, () => ({ s: 0.1, Nr: N, Nt: N }));
    expect(isStifferThan(wave, 2, 0)).toBe(false);
  });

  it('proves nothing about numbers that are not finite', () => {
    const wave = clampedPlate();
    takeState(wave, () => ({ s: 0, Nr: Number.NaN, Nt: 0 }));
    expect(isStifferThan(wave, 3, 0)).toBe(false);
  });
});
