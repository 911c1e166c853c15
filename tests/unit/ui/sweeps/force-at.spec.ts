import { describe, expect, it } from 'vitest';
import { forceAt } from '../../../../src/ui/sweeps/force-at.ts';

const forces = {
  shaftSpeed_m_s: [-2, -1, 1, 2],
  force_N: [-300, -100, 200, 500],
  gasForce_N: [50, 50, 50, 50],
  reasons: [],
  theories: { compression: 'large-deflection', rebound: 'large-deflection' } as const,
};

describe('forceAt', () => {
  it('goes straight between two solved speeds, each direction by itself', () => {
    expect(forceAt(forces, 1, 1.5, false)).toBe(350);
    expect(forceAt(forces, -1, 1.25, false)).toBe(-150);
  });

  it('takes the force of the gas off where that is wanted', () => {
    expect(forceAt(forces, 1, 2, true)).toBe(450);
    expect(forceAt(forces, -1, 2, true)).toBe(-350);
  });

  it('has no force beside a speed that did not solve, or in a direction without any', () => {
    const gap = { ...forces, force_N: [-300, -100, 200, null], gasForce_N: [50, 50, 50, null] };
    expect(forceAt(gap, 1, 1.5, false)).toBeNull();
    expect(forceAt(gap, -1, 1.5, false)).toBe(-200);
    expect(forceAt({ ...forces, shaftSpeed_m_s: [1, 2, 3, 4] }, -1, 1, false)).toBeNull();
  });
});
