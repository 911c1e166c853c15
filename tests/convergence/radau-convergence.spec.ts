import { describe, expect, it } from 'vitest';
import { RadauStep } from '../../src/solver/numeric/radau-step.ts';
import { observedOrder } from '../helpers/convergence.ts';

/** y' = -2 t y^2, y(0) = 1 has y = 1/(1 + t^2). Error at t = 1 after `steps` even steps. */
function errorAtOne(steps: number, deviation: number): number {
  const step = new RadauStep(1, (t, [y], out) => {
    out[0] = -2 * t * y * y;
  });
  const [y, w, h] = [Float64Array.of(1), Float64Array.of(1e12), 1 / steps];
  for (let k = 0; k < steps; k++) {
    step.jacobian[0] = -4 * k * h * y[0];
    expect(step.factor(h)).toBe('factored');
    step.guess(undefined);
    expect(step.solveStages(k * h, y, h, w).status).toBe('converged');
    if (k === steps - 1 && deviation < 1) {
      step.at(deviation, y.slice(), y);
      const t = (k + deviation) * h;
      return y[0] - 1 / (1 + t * t);
    }
    y[0] += step.stages[2];
  }
  return y[0] - 0.5;
}

// Source: order 5 of Radau IIA with three stages, collocation of degree 3 between (Hairer & Wanner II, IV.5, from memory).
describe('even steps of the stiff integrator', () => {
  it('come closer with the fifth power of the step', () => {
    const steps = [4, 8, 16, 32];
    expect(
      observedOrder(
        steps,
        steps.map((n) => errorAtOne(n, 1)),
      ),
    ).toBeGreaterThan(4.9);
  });

  it('come closer with the fourth power between the ends of a step', () => {
    const steps = [8, 16, 32, 64];
    const order = observedOrder(
      steps,
      steps.map((n) => errorAtOne(n, 0.37)),
    );
    expect(Math.abs(order - 4)).toBeLessThan(0.15);
  });
});
