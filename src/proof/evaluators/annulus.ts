/** Closed forms of a clamped-free annulus, as coefficients: rim radius, rigidity and load are 1. */
import { z } from '../../model/zod.ts';
import type { AnnulusBending } from '../../solver/plate/annulus-closed-form.ts';
import { annulusUnderLineLoad } from '../../solver/plate/annulus-under-line-load.ts';
import { annulusUnderPressureRing } from '../../solver/plate/annulus-under-pressure.ts';
import { evaluated, evaluateRows, evaluator } from '../evaluator.ts';

const line = z.strictObject({ kind: z.literal('line'), at: z.number() });
const pressure = z.strictObject({ kind: z.literal('pressure'), from: z.number(), to: z.number() });

const schema = z.strictObject({
  poissonsRatio: z.number(),
  rows: z.array(
    z.strictObject({
      label: z.string(),
      clampToRim: z.number(),
      load: z.discriminatedUnion('kind', [line, pressure]),
    }),
  ),
});

/** `rimLift`, `rimSlope`, `clampMoment`, `clampShear` of each row [multiples of q a⁴/D, q a³/D, q a², q a and so on]. */
export const annulusClosedForm = evaluator(schema, ({ poissonsRatio, rows }) =>
  evaluateRows(rows, ({ clampToRim, load }) => {
    const annulus = { clampRadius_m: clampToRim, outerRadius_m: 1, bendingRigidity_Nm: 1, poissonsRatio };
    const bending: AnnulusBending =
      load.kind === 'line'
        ? annulusUnderLineLoad(annulus, { radius_m: load.at, load_N_m: 1 })
        : annulusUnderPressureRing(annulus, { innerRadius_m: load.from, outerRadius_m: load.to, pressure_Pa: 1 });
    const { edge, clampMoment_N, clampShear_N_m } = bending;
    return evaluated({
      rimLift: edge.lift_m,
      rimSlope: edge.slope,
      clampMoment: clampMoment_N,
      clampShear: clampShear_N_m,
    });
  }),
);
