/** A stand-in for the stack solver with a known law: opening = compliance (p - cracking), for tests of what is built on it. */
import type { LiftResult, StackInput } from '../../src/solver/types.ts';
import type { LiftSolver, StackSolver } from '../../src/solver/valve/stack-samples.ts';

export interface LinearStack {
  /** Opening per pressure above the cracking pressure [m/Pa]. */
  readonly compliance_m_Pa: number;
  readonly crackingPressure_Pa: number;
  /** Pressures above this do not solve. */
  readonly failsAbove_Pa?: number;
  /** Opening does not go beyond this: a backing plate [m]. */
  readonly largestOpening_m?: number;
}

export function linearStack(law: LinearStack, log: number[] = []): LiftSolver {
  return (_, pressures_Pa, theory) => {
    log.push(...pressures_Pa);
    return { theory, points: pressures_Pa.map((p) => liftAt(law, p)) };
  };
}

/** ... whose round state never ruffles. */
export const solverOf = (lift: LiftSolver): StackSolver => ({ lift, onset: () => ({ status: 'none' }) });

export const linearStacks = (law: LinearStack, log: number[] = []): StackSolver => solverOf(linearStack(law, log));

function liftAt(law: LinearStack, pressure_Pa: number): LiftResult['points'][number] {
  const { compliance_m_Pa, crackingPressure_Pa: cracking, failsAbove_Pa = Infinity, largestOpening_m = Infinity } = law;
  if (pressure_Pa > failsAbove_Pa) {
    return { status: 'not-converged', pressure_Pa, iterations: 9, residual: 1, reason: 'asked to fail' };
  }
  const seatOpening_m = Math.min(compliance_m_Pa * Math.max(pressure_Pa - cracking, 0), largestOpening_m);
  return { ...emptyLift, pressure_Pa, seatOpening_m, seatForce_N: 20 * Math.max(1 - pressure_Pa / cracking, 0) || 0 };
}

const emptyLift = {
  status: 'converged' as const,
  pressure_Pa: 0,
  iterations: 1,
  residual: 0,
  faceEdgeLift_m: 0,
  zoneEdgeLift_m: 0,
  seatOpening_m: 0,
  shimEdgeLift_m: [0],
  shimStress_Pa: [0],
  shimClampStress_Pa: [0],
  appliedForce_N: 0,
  clampForce_N: 0,
  seatForce_N: 0,
  plateForce_N: 0,
  hubRise_m: 0,
  springForce_N: 0,
  shape: { radius_m: new Float64Array([0.006, 0.015]), lift_m: [new Float64Array([0, 0])], firstNode: [0] },
};

const SPRING_STEEL = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };

/** Geometry that goes with the stand-in: one shim of 30 mm over a land from 27.6 to 28.4 mm. */
export const LINEAR_STACK_INPUT = {
  clampRadius_m: 6e-3,
  shims: [{ outerRadius_m: 15e-3, thickness_m: 0.15e-3, ...SPRING_STEEL }],
  pressureZone: { innerRadius_m: 8.25e-3, outerRadius_m: 13.8e-3 },
  seat: { innerRadius_m: 13.8e-3, outerRadius_m: 14.2e-3, height_m: 0 },
} satisfies StackInput;
