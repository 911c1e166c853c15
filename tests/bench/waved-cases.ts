/** Lift curves that follow the waves of their shims, timed. */
import { type LiftResult, type StackInput, solveLift } from '../../src/solver/index.ts';
import type { BenchCase } from './bench-case.ts';

/** Reference case stack/fem-waves-three-ports: 12 pressures from its first to 0.66667 MPa, even in their logarithm. */
const SINGLE: StackInput = {
  clampRadius_m: 5e-3,
  shims: [{ outerRadius_m: 12e-3, thickness_m: 0.15e-3, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 }],
  pressureZone: { innerRadius_m: 6.6e-3, outerRadius_m: 11.04e-3 },
  ports: { count: 3, coveredFraction: 0.75 },
};
const SINGLE_PRESSURES_PA = Array.from({ length: 12 }, (_, i) => 0.021333e6 * 31.25 ** (i / 11));
/** Mean lift at the end by three-dimensional continuum elements [m]. */
const SINGLE_AT_END_M = 0.987269e-3;

function liftsOf(name: string, { points }: LiftResult): number[] {
  const lifts = points.map((point) => (point.status === 'converged' ? point.faceEdgeLift_m : Number.NaN));
  if (!lifts.every((lift, i) => i === 0 || lift > lifts[i - 1])) throw new Error(`${name}: the lift does not rise`);
  return lifts;
}

/** To reach: 20 ms median. */
const single: BenchCase = {
  name: 'liftCurvePortPeriodicSingle',
  items: 1,
  prepare: () => () => solveLift(SINGLE, SINGLE_PRESSURES_PA, { theory: 'port-periodic' }),
  check(result) {
    const last = liftsOf('liftCurvePortPeriodicSingle', result as LiftResult).at(-1) as number;
    if (!(Math.abs(last / SINGLE_AT_END_M - 1) < 0.02))
      throw new Error(`liftCurvePortPeriodicSingle: lift ${last} m, wanted ${SINGLE_AT_END_M}`);
  },
};

/** @param stack without ports @param lift_m of the round state at the first pressure, by continuum elements; to reach: 400 ms median */
const staged = (stack: StackInput, pressures_Pa: readonly number[], lift_m: number): BenchCase => ({
  name: 'liftCurvePortPeriodic',
  items: 1,
  prepare: () => {
    const ports = { count: 4, coveredFraction: 0.65 };
    const inPorts = pressures_Pa.map((p) => p / ports.coveredFraction);
    return () => solveLift({ ...stack, ports }, inPorts, { theory: 'port-periodic' });
  },
  check(result) {
    // Below a lift of one thickness ports of equal force have the mean lift of the round state, within some per cent.
    const [first] = liftsOf('liftCurvePortPeriodic', result as LiftResult);
    if (!(Math.abs(first / lift_m - 1) < 0.05))
      throw new Error(`liftCurvePortPeriodic: lift ${first} m, wanted about ${lift_m}`);
  },
});

export const wavedCases = (stack: StackInput, pressures_Pa: readonly number[], lift_m: number): BenchCase[] => [
  staged(stack, pressures_Pa, lift_m),
  single,
];
