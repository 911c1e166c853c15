import { describe, expect, it } from 'vitest';
import { RADAU_B } from '../../../../src/solver/numeric/radau-coefficients.ts';
import type { Rates } from '../../../../src/solver/numeric/radau-step.ts';
import { integrateStiff } from '../../../../src/solver/numeric/stiff-integrator.ts';
import type { StiffOptions } from '../../../../src/solver/numeric/stiff-types.ts';

const tight: StiffOptions = { relativeTolerance: 1e-9, absoluteTolerance: [1e-9, 1e-9, 1e-9] };

/** y' = L (cos t - y) - sin t with y(0) = 2: y = cos t + exp(-L t). */
const stiffCosine =
  (L: number): Rates =>
  (t, [y], out) => {
    out[0] = L * (Math.cos(t) - y) - Math.sin(t);
  };

const vanDerPol: Rates = (_, [y, z], out) => {
  out[0] = z;
  out[1] = ((1 - y * y) * z - y) / 1e-6;
};

const robertson: Rates = (_, [a, b, c], out) => {
  out[0] = -0.04 * a + 1e4 * b * c;
  out[2] = 3e7 * b * b;
  out[1] = -out[0] - out[2];
};

describe('integrateStiff', () => {
  it.each([1, 1e3, 1e6])('follows a stiff decay of rate %d onto its slow solution', (L) => {
    const times = [0, 1e-7, 1e-3, 0.1, 1, 10];
    const run = integrateStiff({ rates: stiffCosine(L) }, 0, [2], times, { ...tight, largestStep: 0.05 });
    expect(run.status).toBe('finished');
    expect(run.time).toBe(10);
    for (const [i, t] of times.entries()) {
      expect(Math.abs(run.states[i][0] - Math.cos(t) - Math.exp(-L * t))).toBeLessThan(1e-6);
    }
    expect(run.largestError).toBeLessThan(1);
    expect(run.evaluations).toBeGreaterThan(3 * run.steps);
  });

  it('reports the largest error of all its steps, and not that of the last', () => {
    const decay: Rates = (_, [y], out) => {
      out[0] = -y;
    };
    const largest = (end: number) => {
      const run = integrateStiff({ rates: decay }, 0, [1], [end], { relativeTolerance: 0, absoluteTolerance: [1e-6] });
      return run.largestError;
    };
    expect(largest(2)).toBeGreaterThan(1e-3);
    // Long after the decay a step of a hundredth of what is left has no error to speak of.
    expect(largest(60)).toBeGreaterThanOrEqual(largest(2));
  });

  it('swings an undamped pair round a hundred times', () => {
    const rates: Rates = (_, [x, v], out) => {
      out[0] = v;
      out[1] = -x;
    };
    const run = integrateStiff({ rates }, 0, [1, 0], [200 * Math.PI], tight);
    expect(Math.abs(run.states[0][0] - 1)).toBeLessThan(1e-4);
    expect(Math.abs(run.states[0][1])).toBeLessThan(1e-4);
  });

  // Source: test set for initial value problem solvers, problem vdpol, eps = 1e-6, y(2), as quoted in public codes (seen).
  it('comes to the published end of the Van der Pol oscillator', () => {
    const run = integrateStiff({ rates: vanDerPol }, 0, [2, 0], [2], tight);
    expect(Math.abs(run.states[0][0] - 1.706167732170483)).toBeLessThan(1e-6);
    expect(Math.abs(run.states[0][1] + 0.8928097010247975)).toBeLessThan(1e-6);
    expect(run.rejections).toBeGreaterThan(0);
  });

  // Source: the same test set, problem rober, t = 1e11, as quoted in public codes (seen).
  it('comes to the published end of Robertson kinetics, over sixteen decades of time', () => {
    const options = { relativeTolerance: 1e-8, absoluteTolerance: [1e-14, 1e-18, 1e-14] };
    const run = integrateStiff({ rates: robertson }, 0, [1, 0, 0], [1e11], options);
    const published = [0.2083340149701255e-7, 0.8333360770334713e-13, 0.999999979166505];
    for (const [i, value] of published.entries()) expect(Math.abs(run.states[0][i] / value - 1)).toBeLessThan(1e-5);
    expect(run.steps).toBeLessThan(2000);
  });

  it('takes a given Jacobian for that of the differences', () => {
    const jacobian = (_: number, [y, z]: Float64Array, out: Float64Array) => {
      out.set([0, 1, (-2 * y * z - 1) / 1e-6, (1 - y * y) / 1e-6]);
    };
    const run = integrateStiff({ rates: vanDerPol, jacobian }, 0, [2, 0], [2], tight);
    const without = integrateStiff({ rates: vanDerPol }, 0, [2, 0], [2], tight);
    expect(Math.abs(run.states[0][0] - 1.706167732170483)).toBeLessThan(1e-6);
    expect(run.evaluations).toBeLessThan(without.evaluations);
  });

  it('comes through kinks of the right-hand side', () => {
    // y' = -1e4 max(0, |y - sin t| - 0.1) sign(y - sin t): drags y along behind sin t with a play of 0.1.
    const rates: Rates = (t, [y], out) => {
      const off = y - Math.sin(t);
      out[0] = -1e4 * Math.max(0, Math.abs(off) - 0.1) * Math.sign(off);
    };
    const times = Array.from({ length: 101 }, (_, i) => Math.PI / 2 + (i * Math.PI) / 5);
    const run = integrateStiff({ rates }, 0, [0], times, { relativeTolerance: 0, absoluteTolerance: [1e-8] });
    expect(run.status).toBe('finished');
    for (const [i, t] of times.entries()) {
      if (i % 5 === 0) expect(Math.abs(run.states[i][0] - 0.9 * Math.sin(t))).toBeLessThan(2e-6);
    }
  });

  it('hands out its steps: they join, and their stages integrate', () => {
    let [end, integral] = [0, 0];
    integrateStiff({ rates: stiffCosine(50) }, 0, [1], [2], tight, ({ t, h, stages, stageTimes }) => {
      expect(t).toBe(end);
      end = stageTimes[2];
      integral += h * RADAU_B.reduce((sum, b, i) => sum + b * stages[i][0], 0);
    });
    expect(end).toBe(2);
    expect(Math.abs(integral - Math.sin(2))).toBeLessThan(1e-8);
  });

  it('takes no step longer than it may', () => {
    let longest = 0;
    const options = { ...tight, largestStep: 0.125 };
    integrateStiff({ rates: (_, __, out) => out.fill(1) }, 0, [1], [3], options, ({ h }) => {
      longest = Math.max(longest, h);
    });
    expect(longest).toBe(0.125);
  });

  it('ends a step at every break, and so integrates a kink in time exactly', () => {
    // y' = |t - 0.7| + |t - 1.2| is two parabolas a stretch: the method is exact between the kinks.
    const rates: Rates = (t, _, out) => {
      out[0] = Math.abs(t - 0.7) + Math.abs(t - 1.2);
    };
    const ends: number[] = [];
    const run = integrateStiff({ rates }, 0, [0], [2], { ...tight, breaks: [0, 0.7, 1.2, 3] }, ({ stageTimes }) => {
      ends.push(stageTimes[2]);
    });
    expect(ends).toEqual(expect.arrayContaining([0.7, 1.2, 2]));
    expect(run.states[0][0]).toBeCloseTo((0.7 ** 2 + 1.3 ** 2 + 1.2 ** 2 + 0.8 ** 2) / 2, 14);
  });

  it('goes on with the step that it meant when a break has cut one short', () => {
    const steps: number[] = [];
    const options = { ...tight, breaks: [500, 500 + 1e-6] };
    integrateStiff({ rates: (_, __, out) => out.fill(1) }, 0, [0], [1000], options, ({ h }) => steps.push(h));
    const short = steps.findIndex((h) => h < 1e-5);
    expect(steps[short + 1]).toBeGreaterThan(50);
  });

  describe('says how it failed', () => {
    it('too-many-steps', () => {
      const run = integrateStiff({ rates: vanDerPol }, 0, [2, 0], [1, 2], { ...tight, maxSteps: 20 });
      expect(run.status).toBe('too-many-steps');
      expect(run.steps + run.rejections).toBe(20);
      expect(run.time).toBeLessThan(1);
      expect(run.states).toEqual([]);
    });

    it('step-too-small, at a solution that runs away: y = 1/(1 - t)', () => {
      const rates: Rates = (_, [y], out) => {
        out[0] = y * y;
      };
      const run = integrateStiff({ rates }, 0, [1], [0.5, 2], { relativeTolerance: 1e-6, absoluteTolerance: [1e-6] });
      expect(run.status).toBe('step-too-small');
      expect(run.time).toBeCloseTo(1, 6);
      expect(run.states[0][0]).toBeCloseTo(2, 4);
      expect(run.states.length).toBe(1);
    });

    it('not-a-number, at the start', () => {
      const run = integrateStiff({ rates: (_, __, out) => out.fill(Number.NaN) }, 0, [1], [0, 1], tight);
      expect(run.status).toBe('not-a-number');
      expect(run.states.length).toBe(1);
    });

    it('not-a-number, where the solution leaves the range of the law', () => {
      const rates: Rates = (_, [y], out) => {
        out[0] = y < 0 ? Number.NaN : -1;
      };
      const run = integrateStiff({ rates }, 0, [1], [2], tight);
      expect(run.status).toBe('not-a-number');
      expect(run.time).toBeCloseTo(1, 6);
    });
  });
});
