/** A monotube of our own for tests: no such damper exists. */
import type { MonotubeInput, ValveInput } from '../../src/solver/damper/types.ts';
import { LINEAR_STACK_INPUT } from './linear-stack.ts';

const VALVE: ValveInput = {
  ports: { count: 4, area_m2: 22e-6, hydraulicDiameter_m: 4.5e-3, length_m: 12e-3 },
  stack: LINEAR_STACK_INPUT,
};

export const MONOTUBE: MonotubeInput = {
  layout: 'monotube',
  boreDiameter_m: 44e-3,
  rodDiameter_m: 14e-3,
  travel_m: 60e-3,
  sealFriction_N: 30,
  compression: VALVE,
  rebound: VALVE,
  bleed: { count: 1, diameter_m: 1.6e-3, length_m: 4.8e-3 },
  fluid: { density_kg_m3: 844, dynamicViscosity_Pa_s: 0.0127 },
  gas: { absolutePressure_Pa: 1.1e6, volume_m3: 60e-6, polytropicExponent: 1.2 },
};
