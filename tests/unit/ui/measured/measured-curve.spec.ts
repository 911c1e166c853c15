import { describe, expect, it } from 'vitest';
import type { Measurement } from '../../../../src/model/measurement.ts';
import type { ForceCurve } from '../../../../src/ui/app/solved.ts';
import { drawnPoints, residualsOn } from '../../../../src/ui/measured/measured-curve.ts';

/** 1000 N s/m over 200 N of gas, 20 N of friction; one speed did not solve, and the speeds come in no order. */
const curve = {
  points: [
    ...[1, -1, 0].map((v) => ({
      status: 'converged',
      shaftSpeed_m_s: v,
      force_N: 1000 * v + 200 + 20 * Math.sign(v),
      gasForce_N: 200,
      frictionForce_N: 20 * Math.sign(v),
    })),
    { status: 'singular', shaftSpeed_m_s: 0.5, reason: '' },
  ],
} as unknown as ForceCurve;

const measurement = (change: Partial<Measurement>): Measurement =>
  ({ steps: [], outliers: [1], points: { speed_m_s: [-1, 1], force_N: [-810, 1250] }, ...change }) as Measurement;

const BARE: Partial<Measurement> = {
  steps: [
    { kind: 'gas-force', force_N: 200, from: 'typed' },
    { kind: 'friction', force_N: 20, from: 'typed' },
  ],
};

describe('measured points on the force chart', () => {
  const drawn = (change: Partial<Measurement>, withoutGas: boolean): number[] =>
    drawnPoints(measurement(change), curve, withoutGas).map(({ force_N }) => force_N);

  it('stand at their speed without sign, outliers marked', () => {
    expect(drawnPoints(measurement({}), curve, false)).toEqual([
      { speed_m_s: 1, force_N: -810, isOutlier: false },
      { speed_m_s: 1, force_N: 1250, isOutlier: true },
    ]);
  });

  it('lose the gas where the chart does, and get back what was taken off them where it does not', () => {
    expect(drawn({}, true)).toEqual([-1010, 1050]);
    expect(drawn({ gasTakenOffByBench: true }, true)).toEqual([-810, 1250]);
    expect(drawn({ gasTakenOffByBench: true }, false)).toEqual([-610, 1450]);
    expect(drawn(BARE, true)).toEqual([-830, 1270]);
  });

  it.each([{}, { gasTakenOffByBench: true }, BARE])('lie off the line by their residual (%j)', (change) => {
    for (const withoutGas of [true, false]) {
      // Rebound -1000 + 200 - 20, compression 1000 + 200 + 20.
      const line = [-820, 1220].map((force) => force - (withoutGas ? 200 : 0));
      const off = drawn(change, withoutGas).map((force, i) => force - line[i]);
      expect(residualsOn(measurement(change), curve).map(({ residual_N }) => residual_N)).toEqual(off);
    }
  });
});
