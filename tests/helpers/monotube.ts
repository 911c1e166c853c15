/** A monotube of our own for tests: no such damper exists. */
import type { DamperInput, ValveInput } from '../../src/solver/damper/types.ts';
import { LINEAR_STACK_INPUT } from './linear-stack.ts';

const VALVE: ValveInput = {
  ports: { count: 4, area_m2: 22e-6, hydraulicDiameter_m: 4.5e-3, length_m: 12e-3 },
  stack: LINEAR_STACK_INPUT,
};

export const MONOTUBE: DamperInput = {
  layout: 'monotube',
  boreDiameter_m: 44e-3,
  rodDiameter_m: 14e-3,
  travel_m: 60e-3,
  stroke_m: 30e-3,
  endClearance_m: 10e-3,
  friction: { sliding_N: 30, breakaway_N: 30, stribeckSpeed_m_s: 1, viscous_N_s_m: 0 },
  compression: VALVE,
  rebound: VALVE,
  bleed: { count: 1, diameter_m: 1.6e-3, length_m: 4.8e-3 },
  fluid: { density_kg_m3: 844, dynamicViscosity_Pa_s: 0.0127 },
  gas: {
    absolutePressure_Pa: 1.1e6,
    volume_m3: 60e-6,
    polytropicExponent: 1.2,
    separatorFriction_Pa: 0,
  },
};
