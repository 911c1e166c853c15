/** Every number of the hydraulics that geometry does not give: default, the band it is known to, and where it comes from. */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';

export interface CoefficientEntry {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly meaning: string;
  readonly source: string;
}

export const COEFFICIENT_TABLE = {
  jetDischarge: {
    value: 0.7,
    low: 0.6,
    high: 0.8,
    unit: '-',
    meaning: 'discharge coefficient of the jet between shim and seat at high Reynolds number',
    source:
      'damper models commonly take 0.7; disc and poppet valves are measured between 0.6 and 0.8 (textbook ranges, from memory)',
  },
  sharpEdgeDischarge: {
    value: Math.PI / (Math.PI + 2),
    low: 0.59,
    high: 0.65,
    unit: '-',
    meaning: 'discharge coefficient of a sharp-edged hole at high Reynolds number',
    source: 'free-streamline contraction π/(π+2) of von Mises, in Merritt 1967; hydraulics books give 0.6 to 0.65',
  },
  longOrificeFactor: {
    value: 1,
    low: 0.975,
    high: 1.025,
    unit: '-',
    meaning: 'factor on the discharge coefficient of drilled holes and piston ports',
    source: 'Lichtarowicz, Duggins & Markland 1965 state ±0.02 on a coefficient near 0.8',
  },
  portMomentum: {
    value: 0.5,
    low: 0,
    high: 1,
    unit: '-',
    meaning: 'share of the momentum of the port jets that lifts the shims',
    source:
      'balance of momentum: 1 when every jet stops on the shims, 0 when all of them turn before; with 0.5 never more than the dynamic head acts on any place (own)',
  },
  airReleasePressure_Pa: {
    value: STANDARD_ATMOSPHERE_PA,
    low: 0,
    high: STANDARD_ATMOSPHERE_PA,
    unit: 'Pa',
    meaning: 'absolute pressure below which air leaves the oil and a chamber cannot fall',
    source:
      'oil filled at atmosphere is saturated there; the low end is a quick stroke in degassed oil (vapour pressure far below 1 kPa, from memory)',
  },
} as const satisfies Record<string, CoefficientEntry>;

export type CoefficientName = keyof typeof COEFFICIENT_TABLE;
export type Coefficients = Readonly<Record<CoefficientName, number>>;

export const DEFAULT_COEFFICIENTS: Coefficients = {
  jetDischarge: COEFFICIENT_TABLE.jetDischarge.value,
  sharpEdgeDischarge: COEFFICIENT_TABLE.sharpEdgeDischarge.value,
  longOrificeFactor: COEFFICIENT_TABLE.longOrificeFactor.value,
  portMomentum: COEFFICIENT_TABLE.portMomentum.value,
  airReleasePressure_Pa: COEFFICIENT_TABLE.airReleasePressure_Pa.value,
};
