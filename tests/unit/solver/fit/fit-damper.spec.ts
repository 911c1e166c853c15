import { describe, expect, it } from 'vitest';
import { forceCurve } from '../../../../src/solver/damper/force-curve.ts';
import {
  coefficientsWith,
  damperWith,
  FIT_TABLE,
  type FitName,
  type FitValues,
} from '../../../../src/solver/fit/fit-coefficients.ts';
import { type FitDone, fitDamper } from '../../../../src/solver/fit/fit-damper.ts';
import type { FitGroup } from '../../../../src/solver/fit/force-model.ts';
import { damperFromProject, SolveStopped } from '../../../../src/solver/index.ts';
import { soundProject } from '../../../helpers/documents.ts';
import { normals } from '../../../helpers/normals.ts';

const THEORY = 'small-deflection';
const damper = damperFromProject(soundProject(), soundProject().builds[0].id);
const SPEEDS = [0.03, 0.06, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2].flatMap((v) => [v, -v]);

/** Coefficients that nobody tells the fit. */
const HIDDEN: FitValues = { jetDischarge: 0.765, bleedAreaFactor: 0.93, frictionFactor: 1.32, forceOffset_N: -11 };
const NAMES = Object.keys(HIDDEN) as FitName[];

function truth(values: FitValues): number[] {
  const curve = forceCurve(damperWith(damper, values), SPEEDS, {
    theory: THEORY,
    coefficients: coefficientsWith(values),
  });
  return curve.points.map((point) => {
    if (point.status !== 'converged') throw new Error(point.reason);
    return point.force_N + (values.forceOffset_N ?? 0);
  });
}

const group = (force_N: readonly number[], more: Partial<FitGroup> = {}): FitGroup => ({
  damper,
  speed_m_s: SPEEDS,
  force_N,
  hasGas: true,
  hasFriction: true,
  ...more,
});

function fitted(force_N: readonly number[], names: readonly FitName[] = NAMES): FitDone {
  const outcome = fitDamper({ groups: [group(force_N)], names, theory: THEORY });
  if (outcome.status !== 'fitted') throw new Error(outcome.reason);
  return outcome;
}

const exact = truth(HIDDEN);

describe('a fit', () => {
  it('finds hidden coefficients in forces without scatter', () => {
    const { coefficients, before, after } = fitted(exact);
    for (const { name, value, low, high } of coefficients) {
      const width = (FIT_TABLE[name].high - FIT_TABLE[name].low) / 2;
      expect((value - (HIDDEN[name] ?? 0)) / width).toBeCloseTo(0, 1);
      expect(low).toBeLessThan(value);
      expect(high).toBeGreaterThan(value);
    }
    expect(after.compression_N).toBeLessThan((before.compression_N ?? 0) / 50);
    expect(after.rebound_N).toBeLessThan((before.rebound_N ?? 0) / 50);
  });

  // Nominal 95 %: of 200 intervals 190 would cover, 180 is 90 %.
  it('covers the hidden values with at least 90 % of its intervals over 50 seeded scatters', () => {
    let covered = 0;
    const deviations: number[] = [];
    for (let seed = 1; seed <= 50; seed++) {
      const scatter = normals(seed, SPEEDS.length);
      const { coefficients } = fitted(exact.map((force, i) => force + 8 * scatter[i]));
      for (const { name, value, low, high, standardError, leftOpen } of coefficients) {
        const hidden = HIDDEN[name] ?? Number.NaN;
        if (low <= hidden && hidden <= high) covered++;
        if (leftOpen < 0.3) deviations.push((value - hidden) / standardError);
      }
    }
    expect(covered / (50 * NAMES.length)).toBeGreaterThanOrEqual(0.9);
    // The errors are told no larger and no smaller than they are, where the measurements alone tell the coefficient.
    expect(deviations.length).toBeGreaterThanOrEqual(50);
    const spread = Math.hypot(...deviations) / Math.sqrt(deviations.length);
    expect(spread).toBeGreaterThan(0.75);
    expect(spread).toBeLessThan(1.3);
  }, 300_000);

  it('tells the scatter of the forces, and that an error falls as it does', () => {
    const scatter = normals(7, SPEEDS.length);
    const of = (size: number): FitDone => fitted(exact.map((force, i) => force + size * scatter[i]));
    const [wide, narrow] = [of(10), of(5)];
    expect(wide.scatter_N / narrow.scatter_N).toBeCloseTo(2, 0);
    const error = ({ coefficients }: FitDone): number => coefficients[0].standardError;
    expect(error(wide) / error(narrow)).toBeGreaterThan(1.5);
  });
});

describe('what cannot be told', () => {
  it('is a factor that the measurement has nothing of', () => {
    const bare = group(exact, { hasFriction: false });
    const outcome = fitDamper({ groups: [bare], names: ['jetDischarge', 'frictionFactor'], theory: THEORY });
    if (outcome.status !== 'fitted') throw new Error(outcome.reason);
    const [, friction] = outcome.coefficients;
    expect(friction).toMatchObject({ value: expect.closeTo(1, 9), leftOpen: expect.closeTo(1, 6) });
    expect(outcome.untold[0]).toMatchObject({ parts: [{ name: 'frictionFactor' }], leftOpen: 1e6 });
  });

  it('is nothing among coefficients that act at different speeds', () => {
    expect(fitted(exact, ['jetDischarge', 'forceOffset_N']).untold).toEqual([]);
  });

  it('is the oil against the bleed where both act at low speed alone', () => {
    const names: FitName[] = ['jetDischarge', 'bleedAreaFactor', 'viscosityFactor', 'sharpEdgeDischarge'];
    const scatter = normals(3, SPEEDS.length);
    const { untold, coefficients } = fitted(
      exact.map((force, i) => force + 25 * scatter[i]),
      names,
    );
    expect(untold.length).toBeGreaterThan(0);
    for (const { leftOpen } of untold) expect(leftOpen).toBeGreaterThan(1);
    for (const { leftOpen } of coefficients) expect(leftOpen).toBeLessThanOrEqual(1 + 1e-9);
  });
});

describe('a fit that cannot be', () => {
  it('says why', () => {
    expect(fitDamper({ groups: [], names: NAMES, theory: THEORY })).toMatchObject({ status: 'too-few' });
    const none = { groups: [group(exact)], names: [], theory: THEORY } as const;
    expect(fitDamper(none)).toMatchObject({ status: 'too-few' });
  });

  it('stops when it is asked to, and tells how far it is', () => {
    const told: number[] = [];
    const request = { groups: [group(exact)], names: NAMES, theory: THEORY } as const;
    fitDamper(request, { onProgress: (done, total) => told.push(done / total) });
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(() => fitDamper(request, { shouldStop: () => told.length > 0 })).toThrow(SolveStopped);
  });
});

/** Each error that a person can make with signs and units: no fit may come out of it looking sound. */
describe('traps', () => {
  it.each([
    ['the sign of the force', (force: number) => -force],
    ['kN for N', (force: number) => force / 1000],
    ['lbf for N', (force: number) => force / 4.4482],
    ['the gas counted as taken off', (force: number) => force + damper.gas.absolutePressure_Pa * 2e-4],
  ])('leave %s with a scatter that shows it', (_, spoil) => {
    const { scatter_N } = fitted(exact);
    const outcome = fitDamper({ groups: [group(exact.map(spoil))], names: NAMES, theory: THEORY });
    const shown = outcome.status === 'fitted' ? outcome.scatter_N / scatter_N : Number.POSITIVE_INFINITY;
    const offset = outcome.status === 'fitted' ? (outcome.coefficients.at(-1)?.value ?? 0) : 0;
    expect(shown > 10 || Math.abs(offset) > 100).toBe(true);
  });
});
