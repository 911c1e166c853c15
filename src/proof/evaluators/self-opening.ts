/** What opens by itself and what chokes: check plate, poppet with the force of its jet, cavitating orifice. */
import { z } from '../../model/zod.ts';
import { mapSolved, type Solved } from '../../solver/numeric/solved.ts';
import { cavitatingCoefficient, chokedFlow } from '../../solver/restriction/cavitation.ts';
import { checkPlate } from '../../solver/restriction/check-plate.ts';
import { DEFAULT_COEFFICIENTS } from '../../solver/restriction/coefficients.ts';
import { jetForceFactor, poppet } from '../../solver/restriction/poppet.ts';
import type { SpringLoaded } from '../../solver/restriction/spring-loaded.ts';
import { type Evaluation, evaluated, evaluator, failed } from '../evaluator.ts';

const number = z.number();
const fluid = { density_kg_m3: number, dynamicViscosity_Pa_s: number };
const spring = { rate_N_mm: number, preload_N: number, travel_mm: number };
const flows_L_s = z.array(number);

const springOf = ({ rate_N_mm, preload_N, travel_mm }: { [Key in keyof typeof spring]: number }) => ({
  rate_N_m: rate_N_mm * 1000,
  preload_N,
  travel_m: travel_mm / 1000,
});

const checkSchema = z.strictObject({
  ...fluid,
  ...spring,
  ports: z.strictObject({ count: number, area_mm2: number, hydraulicDiameter_mm: number, length_mm: number }),
  seatInnerRadius_mm: number,
  seatOuterRadius_mm: number,
  flows_L_s,
});

/** `opening drop` [Pa], and at each flow `<flow> L/s lift` [mm] and `<flow> L/s drop` [Pa] of a check plate with its ports. */
export const checkPlateCase = evaluator(checkSchema, ({ ports, seatInnerRadius_mm, seatOuterRadius_mm, ...rest }) => {
  const { count, area_mm2, hydraulicDiameter_mm, length_mm } = ports;
  const check = checkPlate(
    {
      ports: {
        count,
        area_m2: area_mm2 / 1e6,
        hydraulicDiameter_m: hydraulicDiameter_mm / 1000,
        length_m: length_mm / 1000,
      },
      seat: { innerRadius_m: seatInnerRadius_mm / 1000, outerRadius_m: seatOuterRadius_mm / 1000 },
      ...springOf(rest),
    },
    rest,
    DEFAULT_COEFFICIENTS,
  );
  return liftsAndDrops(check, rest.flows_L_s);
});

const poppetSchema = z.strictObject({
  ...fluid,
  ...spring,
  seatDiameter_mm: number,
  coneAngle_deg: number,
  flows_L_s,
});

/** As of the check plate, for a cone on a sharp seat. */
export const poppetCase = evaluator(poppetSchema, ({ seatDiameter_mm, coneAngle_deg, ...rest }) => {
  const cone = { seatDiameter_m: seatDiameter_mm / 1000, coneAngle_rad: (coneAngle_deg * Math.PI) / 180 };
  return liftsAndDrops(poppet({ ...cone, ...springOf(rest) }, rest, DEFAULT_COEFFICIENTS), rest.flows_L_s);
});

function liftsAndDrops(body: SpringLoaded, flows: readonly number[]): Evaluation {
  const quantities: Record<string, number> = { 'opening drop': body.openingDrop_Pa };
  for (const flow of flows) {
    const results: Record<string, Solved> = {
      lift: mapSolved(body.lift(flow / 1000), (lift) => lift * 1000),
      drop: body.drop(flow / 1000),
    };
    for (const [name, solved] of Object.entries(results)) {
      if (solved.status !== 'converged') return failed(`${flow} L/s ${name}: ${solved.reason}`);
      quantities[`${flow} L/s ${name}`] = solved.value;
    }
  }
  return evaluated(quantities);
}

const jetSchema = z.strictObject({ dischargeCoefficient: number, angles_deg: z.array(number) });

/** `<angle> deg`: steady flow force over area and pressure of a jet at that angle to the axis. */
export const jetForce = evaluator(jetSchema, ({ dischargeCoefficient, angles_deg }) =>
  evaluated(
    Object.fromEntries(
      angles_deg.map((angle) => [`${angle} deg`, jetForceFactor(dischargeCoefficient, (angle * Math.PI) / 180)]),
    ),
  ),
);

const cavitationSchema = z.strictObject({
  density_kg_m3: number,
  upstream_Pa: number,
  area_mm2: number,
  cavitationNumbers: z.array(number),
  withoutCavitation: z.array(number),
});

/**
 * `K <K>`: coefficient of the greatest flow on the drop that K names; `onset Cd <Cd>`: cavitation number where a coefficient without
 * cavitation is met; `greatest flow` [m³/s].
 */
export const cavitatingOrifice = evaluator(cavitationSchema, (input) => {
  const { density_kg_m3, upstream_Pa, cavitationNumbers, withoutCavitation } = input;
  const area_m2 = input.area_mm2 / 1e6;
  const greatest = chokedFlow(area_m2, upstream_Pa, density_kg_m3);
  const ideal = (K: number) => area_m2 * Math.sqrt((2 * upstream_Pa) / K / density_kg_m3);
  return evaluated({
    ...Object.fromEntries(cavitationNumbers.map((K) => [`K ${K}`, greatest / ideal(K)])),
    ...Object.fromEntries(withoutCavitation.map((Cd) => [`onset Cd ${Cd}`, (Cd / cavitatingCoefficient(1)) ** 2])),
    'greatest flow': greatest,
  });
});
