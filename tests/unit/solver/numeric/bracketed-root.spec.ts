import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketedRoot, risingRoot } from '../../../../src/solver/numeric/bracketed-root.ts';

describe('bracketedRoot', () => {
  it.each([
    ['x^2 - 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['cos x - x (the Dottie number)', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x^3 - 2x - 5 (Wallis)', (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
    ['x^19, flat at its root', (x: number) => (x - 1) ** 19, 0, 3, 1],
  ])('solves %s', (_, f, low, high, root) => {
    const solved = bracketedRoot(f, low, high);
    expect(solved.status).toBe('converged');
    expect(solved).toHaveProperty('value', expect.closeTo(root, 11));
  });

  it('takes an end that is a root', () => {
    expect(bracketedRoot((x) => x, 0, 1)).toMatchObject({ status: 'converged', value: 0 });
    expect(bracketedRoot((x) => x - 1, 0, 1)).toMatchObject({ status: 'converged', value: 1 });
  });

  it('closes in on a jump', () => {
    const solved = bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1);
    expect(solved).toMatchObject({ status: 'converged', value: expect.closeTo(0.3, 12) });
  });

  it('reports a missing sign change and a hole in the function', () => {
    expect(bracketedRoot((x) => x + 1, 0, 1)).toMatchObject({
      status: 'not-converged',
      reason: expect.stringMatching(/^\D*sign\D*$/),
    });
    const hole = (x: number) => (x > 0.2 && x < 0.8 ? Number.NaN : x - 0.5);
    expect(bracketedRoot(hole, 0, 1)).toMatchObject({
      status: 'not-converged',
      reason: expect.stringMatching(/^\D*NaN\D*$/),
    });
  });

  it('reports that the steps ran out instead of giving its last guess', () => {
    const solved = bracketedRoot((x) => (x < 1e-300 ? -1 : 1), 0, 1e308);
    expect(solved).toMatchObject({ status: 'not-converged', iterations: 120 });
  });

  it('finds the root of any rising cubic', () => {
    const coefficient = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(coefficient, coefficient, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (a, b, root) => {
        const f = (x: number) => (x - root) * (1 + a * (x - root) ** 2) + b * (x - root);
        const solved = bracketedRoot(f, 0, 2e3);
        expect(solved).toMatchObject({ status: 'converged' });
        expect(Math.abs((solved as { value: number }).value / root - 1)).toBeLessThan(1e-10);
      }),
    );
  });
});

describe('risingRoot', () => {
  it('widens the bracket until it holds the root', () => {
    expect(risingRoot((x) => x - 1e6, 1e-3)).toMatchObject({ status: 'converged', value: expect.closeTo(1e6, 5) });
  });

  it('reports a function that never rises above 0', () => {
    expect(risingRoot(() => -1, 1)).toMatchObject({ status: 'not-converged' });
    expect(risingRoot(() => Number.NaN, 1)).toMatchObject({ status: 'not-converged' });
  });
});
