import { describe, expect, it } from 'vitest';
import { failedLift } from '../../../../src/solver/stack/failed-lift.ts';

describe('a failed lift', () => {
  it.each([
    ['not-converged', 3e-5, 'balance left 3.0e-5 of the load, wanted 1e-7, after 280 iterations'],
    ['not-converged', 3e-9, 'forces balance, but surfaces still pass through one another after 280 iterations'],
    ['contact-not-resolved', 1, 'no set of closed contacts satisfies all gaps and forces'],
    ['singular', 1, 'a stiffness matrix could not be factored'],
  ] as const)('%s with %s left: %s', (status, residual, reason) => {
    const end = { status, iterations: 280, residual };
    expect(failedLift(5e4, end)).toEqual({ ...end, pressure_Pa: 5e4, reason });
  });

  it('is never made of a solve that converged', () => {
    expect(() => failedLift(1, { status: 'converged', iterations: 1, residual: 0 })).toThrow('no failure');
  });
});
