/**
 * Small-deflection stacks as coefficients, so that textbook tables can be compared: lifts in q a⁴/D, moments in q a²,
 * forces per length in q a, with a and D those of the face shim.
 */
import { z } from '../../model/zod.ts';
import { bendingRigidity } from '../../solver/plate/annulus-closed-form.ts';
import { annulusUnderLineLoad } from '../../solver/plate/annulus-under-line-load.ts';
import { solveLift } from '../../solver/stack/solve-lift.ts';
import type { ConvergedLift, StackInput } from '../../solver/types.ts';
import { evaluated, evaluateRows, evaluator, failed, type Quantities } from '../evaluator.ts';

const shimSchema = z.strictObject({ radius: z.number(), thickness: z.number(), count: z.int().min(1) });

const rowSchema = z.strictObject({
  label: z.string(),
  clampRadius: z.number(),
  zone: z.tuple([z.number(), z.number()]),
  shims: z.array(shimSchema).min(1),
  /** Pressure as a multiple of q. */
  pressure: z.number(),
});

const schema = z.strictObject({ poissonsRatio: z.number(), elements: z.int().min(4), rows: z.array(rowSchema) });

type Row = z.infer<typeof rowSchema>;

/** Sizes of the face shim that stand for a = 1 and h = 1, its modulus, and the pressure that stands for q. */
const RIM_M = 0.012;
const THICKNESS_M = 1e-4;
const MODULUS_PA = 206e9;
const PRESSURE_PA = 1000;

/**
 * Per row: `rimLift`, `zoneLift` and `clampMoment` of the face shim; with more than one rim also `backingLift` of the last
 * shim at its rim, `ringForce` = force per length of the circle that presses on it there (from its lift, by Roark case
 * 1l), and `largestGap` to the face shim.
 */
export const stackCoefficients = evaluator(schema, ({ poissonsRatio, elements, rows }) =>
  evaluateRows(rows, (row) => {
    const stack = buildStack(row, poissonsRatio);
    const { points } = solveLift(stack, [row.pressure * PRESSURE_PA], { theory: 'small-deflection', elements });
    const [point] = points;
    if (point.status !== 'converged') return failed(point.reason);
    return evaluated({ ...faceQuantities(stack, point), ...backingQuantities(stack, row, point) });
  }),
);

function buildStack({ clampRadius, zone, shims }: Row, poissonsRatio: number): StackInput {
  return {
    clampRadius_m: clampRadius * RIM_M,
    pressureZone: { innerRadius_m: zone[0] * RIM_M, outerRadius_m: zone[1] * RIM_M },
    shims: shims.flatMap(({ radius, thickness, count }) =>
      Array.from({ length: count }, () => ({
        outerRadius_m: radius * RIM_M,
        thickness_m: thickness * THICKNESS_M,
        youngsModulus_Pa: MODULUS_PA,
        poissonsRatio,
      })),
    ),
  };
}

const faceRigidity = ({ shims: [face] }: StackInput): number =>
  bendingRigidity(face.youngsModulus_Pa, face.thickness_m, face.poissonsRatio);

/** Lift that stands for 1: q a⁴ / D. */
const unitLift = (stack: StackInput): number => (PRESSURE_PA * RIM_M ** 4) / faceRigidity(stack);

function faceQuantities(stack: StackInput, point: ConvergedLift): Quantities {
  const t = stack.shims[0].thickness_m;
  return {
    rimLift: point.faceEdgeLift_m / unitLift(stack),
    zoneLift: point.zoneEdgeLift_m / unitLift(stack),
    clampMoment: (point.shimClampStress_Pa[0] * t ** 2) / 6 / (PRESSURE_PA * RIM_M ** 2),
  };
}

function backingQuantities(stack: StackInput, { clampRadius }: Row, point: ConvergedLift): Quantities {
  const last = stack.shims[stack.shims.length - 1];
  const c = last.outerRadius_m / RIM_M;
  if (c === 1) return {};
  const lifts = point.shape.lift_m;
  const [face, backing] = [lifts[0], lifts[lifts.length - 1]];
  const backingLift = backing[backing.length - 1] / unitLift(stack);
  const rigidity = bendingRigidity(last.youngsModulus_Pa, last.thickness_m, last.poissonsRatio) / faceRigidity(stack);
  const annulus = {
    clampRadius_m: clampRadius,
    outerRadius_m: c,
    bendingRigidity_Nm: rigidity,
    poissonsRatio: last.poissonsRatio,
  };
  const unitForceLift = annulusUnderLineLoad(annulus, { radius_m: c, load_N_m: 1 }).edge.lift_m;
  const gaps = Array.from(backing, (lift, i) => lift - face[i]);
  return {
    backingLift,
    ringForce: backingLift / unitForceLift,
    largestGap: Math.max(...gaps) / unitLift(stack),
  };
}
