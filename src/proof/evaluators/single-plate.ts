/** Textbook plates with any edges, through the plate elements of the solver; rim radius, thickness and E are 1. */
import { z } from '../../model/zod.ts';
import type { Evaluation } from '../evaluator.ts';
import { evaluated, evaluateRows, evaluator, failed } from '../evaluator.ts';
import { nodalMoments } from '../plate-moments.ts';
import { EDGES, type Edge, largestDeflection, type SinglePlate, solveSinglePlate } from '../single-plate.ts';

const edge = z.enum(Object.keys(EDGES) as [Edge, ...Edge[]]);

const plateShape = {
  poissonsRatio: z.number(),
  elements: z.int().min(4),
  inner: edge,
  outer: edge,
  load: z.enum(['pressure', 'inner-force', 'outer-force']),
};

const smallSchema = z.strictObject({
  ...plateShape,
  rows: z.array(z.strictObject({ label: z.string(), innerRadius: z.number() })),
});

/**
 * Small deflection, per row: `deflection` = w_max E h³ / (q a⁴) or w_max E h³ / (P a²), `deflectionByRigidity` = the same
 * with D in place of E h³, `stress` = σ_max h² / (q a²) or σ_max h² / P with the largest of |σ_r| and |σ_θ|,
 * `innerMoment` = |M_r| at the inner edge / (q a²) or / P.
 */
export const smallDeflectionPlate = evaluator(smallSchema, ({ rows, ...shape }) =>
  evaluateRows(rows, ({ innerRadius }) => smallRow({ ...shape, innerRadius, theory: 'small-deflection' })),
);

function smallRow(description: SinglePlate): Evaluation {
  const solve = solveSinglePlate(description, 1);
  if (solve.status !== 'converged') return failed(solve.reason);
  const { plate } = solve;
  const { radial, hoop } = nodalMoments(plate, description.load === 'pressure' ? 1 : 0);
  const largestMoment = [...radial, ...hoop].reduce((largest, M) => Math.max(largest, Math.abs(M)), 0);
  const deflection = largestDeflection(plate.x, plate.d);
  return evaluated({
    deflection,
    deflectionByRigidity: deflection * plate.D,
    stress: 6 * largestMoment,
    innerMoment: Math.abs(radial[0]),
  });
}

const largeSchema = z.strictObject({
  ...plateShape,
  rows: z.array(z.strictObject({ label: z.string(), innerRadius: z.number(), load: z.number() })),
});

/** Large deflection, per row: `deflection` = w_max / h at Q = q a⁴ / (E h⁴) or P a² / (E h⁴). */
export const largeDeflectionPlate = evaluator(largeSchema, ({ rows, ...shape }) =>
  evaluateRows(rows, ({ innerRadius, load: factor }) => {
    const solve = solveSinglePlate({ ...shape, innerRadius, theory: 'large-deflection' }, factor);
    if (solve.status !== 'converged') return failed(solve.reason);
    return evaluated({ deflection: largestDeflection(solve.plate.x, solve.plate.d) });
  }),
);
