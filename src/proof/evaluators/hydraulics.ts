/** Single restrictions: sharp hole, long orifice, drilled hole in creeping flow, passage friction, gap between discs, clearance of a piston. */
import { z } from '../../model/zod.ts';
import type { Solved } from '../../solver/numeric/solved.ts';
import { annularGap } from '../../solver/restriction/annular-gap.ts';
import { COEFFICIENT_TABLE, DEFAULT_COEFFICIENTS } from '../../solver/restriction/coefficients.ts';
import { drilledHole } from '../../solver/restriction/drilled-hole.ts';
import { longOrificeCoefficient } from '../../solver/restriction/long-orifice.ts';
import { frictionFactor } from '../../solver/restriction/passage-friction.ts';
import { radialGap, radialGapForce, radialGapResistance } from '../../solver/restriction/radial-gap.ts';
import { sharpOrifice } from '../../solver/restriction/sharp-orifice.ts';
import { type Evaluation, evaluated, evaluateRows, evaluator, failed } from '../evaluator.ts';

const number = z.number();
const fluid = { density_kg_m3: number, dynamicViscosity_Pa_s: number };

const roundHole = (diameter_mm: number, length_mm: number) => ({
  count: 1,
  area_m2: (Math.PI * (diameter_mm / 1000) ** 2) / 4,
  hydraulicDiameter_m: diameter_mm / 1000,
  length_m: length_mm / 1000,
});

const named = (name: string, solved: Solved): Evaluation =>
  solved.status === 'converged' ? evaluated({ [name]: solved.value }) : failed(solved.reason);

const sharpSchema = z.strictObject({
  rows: z.array(
    z.strictObject({ label: z.string(), ...fluid, diameter_mm: number, dischargeCoefficient: number, drop_Pa: number }),
  ),
});

/** `flow` [m³/s] through one sharp-edged round hole. Density 0 leaves the creeping limit, viscosity 0 the jet. */
export const sharpHole = evaluator(sharpSchema, ({ rows }) =>
  evaluateRows(rows, ({ diameter_mm, dischargeCoefficient, drop_Pa, ...state }) =>
    named('flow', sharpOrifice(roundHole(diameter_mm, 0), state, dischargeCoefficient).flow(drop_Pa)),
  ),
);

const longSchema = z.strictObject({ slenderness: z.array(number), reynoldsNumbers: z.array(number) });

/** `l/d <s> Re <Re>`: discharge coefficient of a long orifice; `contraction`: that of the sharp edge. */
export const longOrifice = evaluator(longSchema, ({ slenderness, reynoldsNumbers }) => {
  const entries = slenderness.flatMap((s) =>
    reynoldsNumbers.map((Re) => [`l/d ${s} Re ${Re}`, longOrificeCoefficient(s, Re)]),
  );
  return evaluated({ ...Object.fromEntries(entries), contraction: COEFFICIENT_TABLE.sharpEdgeDischarge.value });
});

const creepingSchema = z.strictObject({
  rows: z.array(
    z.strictObject({ label: z.string(), ...fluid, diameter_mm: number, length_mm: number, drop_Pa: number }),
  ),
});

/** `conductance` = flow over pressure drop of a drilled hole [m³/(s·Pa)], at a drop so small that the flow creeps. */
export const creepingHole = evaluator(creepingSchema, ({ rows }) =>
  evaluateRows(rows, ({ diameter_mm, length_mm, drop_Pa, ...state }) => {
    const hole = roundHole(diameter_mm, length_mm);
    const solved = drilledHole(hole, state, DEFAULT_COEFFICIENTS).flow(drop_Pa);
    return solved.status === 'converged' ? evaluated({ conductance: solved.value / drop_Pa }) : failed(solved.reason);
  }),
);

const frictionSchema = z.strictObject({ reynoldsNumbers: z.array(number) });

/** `Re <Re>`: Darcy friction factor of a smooth passage. */
export const passageFriction = evaluator(frictionSchema, ({ reynoldsNumbers }) =>
  evaluated(Object.fromEntries(reynoldsNumbers.map((Re) => [`Re ${Re}`, frictionFactor(Re)]))),
);

const gapSchema = z.strictObject({
  ...fluid,
  innerRadius_mm: number,
  outerRadius_mm: number,
  gap_mm: number,
  drop_Pa: number,
  flow_m3_s: number,
});

/**
 * Gap between discs: `creepingFlow` [m³/s] and `landForce` [N] at the drop given, and `dropWithInertia` [Pa] at the flow
 * given.
 */
export const discGap = evaluator(gapSchema, (input) => {
  const gap = {
    innerRadius_m: input.innerRadius_mm / 1000,
    outerRadius_m: input.outerRadius_mm / 1000,
    gap_m: input.gap_mm / 1000,
  };
  const withInertia = radialGap(gap, input).drop(input.flow_m3_s);
  if (withInertia.status !== 'converged') return failed(withInertia.reason);
  return evaluated({
    creepingFlow: input.drop_Pa / radialGapResistance(gap, input.dynamicViscosity_Pa_s),
    landForce: radialGapForce(gap, input.drop_Pa),
    dropWithInertia: withInertia.value,
  });
});

const annulusSchema = z.strictObject({
  rows: z.array(
    z.strictObject({
      label: z.string(),
      ...fluid,
      outerDiameter_mm: number,
      clearance_mm: number,
      length_mm: number,
      eccentricity: number,
      drop_Pa: number,
    }),
  ),
});

/** `flow` [m³/s] along the clearance of a piston. Density 0 leaves the creeping part. */
export const annularGapRows = evaluator(annulusSchema, ({ rows }) =>
  evaluateRows(rows, ({ outerDiameter_mm, clearance_mm, length_mm, eccentricity, drop_Pa, ...state }) => {
    const gap = {
      outerDiameter_m: outerDiameter_mm / 1000,
      clearance_m: clearance_mm / 1000,
      length_m: length_mm / 1000,
      eccentricity,
    };
    return named('flow', annularGap(gap, state).flow(drop_Pa));
  }),
);
