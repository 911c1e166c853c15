/** A solver of made-up answers that refuses the build `unruly`. */
import { expect } from 'vitest';
import { InputError } from '../../../src/units/fault.ts';
import type { Solver } from '../../../workers/solver.ts';

export const FAULT = {
  code: 'cycle.drive.travel',
  path: 'drive.middle_m',
  got: '0.2',
  wanted: 'within the travel',
  unit: 'm',
};

export const THEORIES = { compression: 'small-deflection', rebound: 'small-deflection' } as const;

export const curve = (points: number): ReturnType<Solver['forceCurveForBuild']> => {
  const table = { theory: 'small-deflection', pressure_Pa: Array(points).fill(1), points: [], failures: [] } as const;
  return { theory: 'small-deflection', points: [], stacks: { compression: table, rebound: table } };
};

export const fakeSolver: Solver = {
  forceCurveForBuild: (_, __, { speeds_m_s }, { onProgress }) => {
    speeds_m_s.forEach((___, index) => {
      onProgress?.(index + 1, speeds_m_s.length);
    });
    return curve(speeds_m_s.length);
  },
  forcesForBuild: (_, buildId, { speeds_m_s, stroke_m = 0 }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    return {
      shaftSpeed_m_s: speeds_m_s,
      force_N: speeds_m_s.map(() => stroke_m),
      gasForce_N: speeds_m_s.map(() => 0),
      reasons: [],
      theories: THEORIES,
    };
  },
  cycleForBuild: (_, buildId) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    return { status: 'unfinished', reason: `${buildId} ends early` };
  },
  fitMeasured: (_, buildId, { measurementIds = [], names = [] }, { onProgress }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    onProgress?.(1, 4);
    return { status: 'too-few', reason: `${buildId}: ${measurementIds.length} measurements for ${names.join()}` };
  },
  fitChoicesForBuild: (_, buildId) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    return [{ name: 'jetDischarge', physical: 0.7, low: 0.6, high: 0.8, source: buildId, isUsual: true }];
  },
  searchStart: (_, { buildId }, { steps }, start, { onProgress, shouldStop }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    for (let step = 0; step < steps && !shouldStop?.(); step++) onProgress?.(step + 1, steps);
    return { start, answers: [], counts: { proposed: steps, screened: 0, judged: 0 }, refused: 0 };
  },
  presentStacks: (_, { buildId }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    return { usualReserves: { minFatigueReserve: 0.5, minYieldReserve: 1 } };
  },
  chassisReading: () => ({ status: 'incomplete', missing: [] }),
  wantedCurve: () => ({ status: 'no-swing' }),
  driveOfTrace: () => ({ drive: { kind: 'trace', time_s: [], position_m: [] } }),
  hysteresisOfLoops: () => expect.unreachable(),
  sensitivityForBuild: (_, buildId, { speeds_m_s }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    return { speeds_m_s, theories: THEORIES, force_N: speeds_m_s.map(() => 1), shims: [] };
  },
  toleranceSamples: () => expect.unreachable(),
  readTolerance: () => expect.unreachable(),
  weightSpreads: [],
  solveLift: (_, pressures_Pa) => ({
    theory: 'small-deflection',
    points: pressures_Pa.map((pressure_Pa) => ({
      status: 'singular',
      pressure_Pa,
      iterations: 1,
      residual: 1,
      reason: 'made by a test',
    })),
  }),
};
