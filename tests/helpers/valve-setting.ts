/** One direction of the stand-in monotube as a valve, with a bleed beside its stack. */
import { closedPath } from '../../src/solver/restriction/closed.ts';
import { DEFAULT_COEFFICIENTS } from '../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../src/solver/restriction/drilled-hole.ts';
import type { ValveSetting } from '../../src/solver/valve/explicit-valve.ts';
import type { LinearStack } from './linear-stack.ts';
import { MONOTUBE } from './monotube.ts';

const { fluid, compression: valve } = MONOTUBE;
export const BLEED_HOLE = { count: 1, area_m2: Math.PI * 0.64e-6, hydraulicDiameter_m: 1.6e-3, length_m: 4.8e-3 };

export const SETTING: ValveSetting = {
  valve,
  bleed: drilledHole(BLEED_HOLE, fluid, DEFAULT_COEFFICIENTS),
  leakage: closedPath,
  fluid,
  coefficients: DEFAULT_COEFFICIENTS,
};

export const STACK: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 100e3 };
