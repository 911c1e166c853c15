/** A damper with a base valve, of our own for tests: no such damper exists. */
import type { BaseInput, DamperInput } from '../../src/solver/damper/types.ts';
import { MONOTUBE } from './monotube.ts';

export const BASE: BaseInput = {
  compression: MONOTUBE.compression,
  bleed: { count: 1, diameter_m: 1.2e-3, length_m: 5e-3 },
  refill: {
    ports: { count: 6, area_m2: 20e-6, hydraulicDiameter_m: 5e-3, length_m: 8e-3 },
    seat: { innerRadius_m: 12e-3, outerRadius_m: 13e-3 },
    rate_N_m: 800,
    preload_N: 1,
    travel_m: 1.5e-3,
  },
};

export const WITH_RESERVOIR: DamperInput = { ...MONOTUBE, layout: 'monotube-reservoir', base: BASE };

/** A base valve so wide that oil passes it without a drop. */
export const OPEN_BASE: BaseInput = { ...BASE, bleed: { count: 200, diameter_m: 40e-3, length_m: 1e-3 } };
