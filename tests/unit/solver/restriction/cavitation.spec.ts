import { describe, expect, it } from 'vitest';
import { cavitates, cavitatingCoefficient, cavitationNumber } from '../../../../src/solver/restriction/cavitation.ts';

describe('a cavitating orifice', () => {
  // Source: Nurick 1976 (from memory), Cd = 0.62 sqrt(K); values computed independently.
  it.each([
    [1, 0.62],
    [1.2, 0.679],
    [1.5, 0.759],
  ])('has at K = %f the coefficient %f', (K, Cd) => {
    expect(Math.abs(cavitatingCoefficient(K) - Cd)).toBeLessThan(1e-3);
  });

  it('begins at K = 1.665 for a coefficient of 0.80', () => {
    const behind = (K: number) => 1e6 * (1 - 1 / K);
    expect(cavitationNumber(1e6, behind(1.665))).toBeCloseTo(1.665, 9);
    expect(cavitates(0.8, 1e6, behind(1.66))).toBe(true);
    expect(cavitates(0.8, 1e6, behind(1.67))).toBe(false);
  });

  it('passes the same flow whatever lies behind it', () => {
    const flow = (p2: number) => cavitatingCoefficient(cavitationNumber(1e6, p2)) * Math.sqrt(1e6 - p2);
    expect(flow(0)).toBeCloseTo(flow(4e5), 9);
  });

  it('does nothing of the kind without a drop', () => {
    expect(cavitates(0.8, 1e5, 1e5)).toBe(false);
  });
});
