/** Random dampers of every layout, within physical sense; no such dampers exist. */
import fc from 'fast-check';
import type { BaseInput, DamperInput, Layout, ValveInput } from '../../src/solver/damper/types.ts';
import type { LinearStack } from './linear-stack.ts';
import { MONOTUBE } from './monotube.ts';

export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyPorts: fc.Arbitrary<ValveInput> = fc
  .record({ count: fc.integer({ min: 1, max: 8 }), d: between(2e-3, 8e-3), length_m: between(0, 30e-3) })
  .map(({ count, d, length_m }) => ({
    ...MONOTUBE.compression,
    ports: { count, area_m2: (Math.PI / 4) * d * d, hydraulicDiameter_m: d, length_m },
  }));

export const anyMonotube: fc.Arbitrary<DamperInput> = fc
  .record({
    bore: between(20e-3, 60e-3),
    rodShare: between(0.15, 0.7),
    sliding_N: between(0, 100),
    compression: anyPorts,
    rebound: anyPorts,
    bleed: fc.record({
      count: fc.integer({ min: 0, max: 4 }),
      diameter_m: between(0.5e-3, 3e-3),
      length_m: between(0, 20e-3),
    }),
    pistonBand: fc.record({
      clearance_m: between(0.01e-3, 0.5e-3),
      length_m: between(2e-3, 20e-3),
      eccentricity: between(0, 1),
    }),
    fluid: fc.record({ density_kg_m3: between(780, 900), dynamicViscosity_Pa_s: between(2e-3, 0.3) }),
    absolutePressure_Pa: between(2e5, 4e6),
    separatorFriction_Pa: fc.constantFrom(0, 0, 2e4, 4e5),
  })
  .map(({ bore, rodShare, absolutePressure_Pa, separatorFriction_Pa, sliding_N, ...rest }) => ({
    ...MONOTUBE,
    ...rest,
    boreDiameter_m: bore,
    rodDiameter_m: rodShare * bore,
    friction: { ...MONOTUBE.friction, sliding_N, breakaway_N: sliding_N },
    gas: { ...MONOTUBE.gas, absolutePressure_Pa, separatorFriction_Pa },
  }));

export const anyStack: fc.Arbitrary<LinearStack> = fc.record({
  compliance_m_Pa: between(5e-11, 5e-9),
  crackingPressure_Pa: between(0, 1e6),
  largestOpening_m: between(0.1e-3, 2e-3),
});

const anyBase: fc.Arbitrary<BaseInput> = fc.record({
  compression: anyPorts,
  bleed: fc.record({
    count: fc.integer({ min: 0, max: 2 }),
    diameter_m: between(0.5e-3, 2e-3),
    length_m: between(0, 10e-3),
  }),
  poppet: fc.record({
    seatDiameter_m: between(4e-3, 12e-3),
    coneAngle_rad: between(0.5, 2),
    rate_N_m: between(5e3, 1e5),
    preload_N: between(0, 100),
    travel_m: between(0.2e-3, 2e-3),
  }),
  refill: fc.record({
    ports: anyPorts.map(({ ports }) => ports),
    seat: fc.constant({ innerRadius_m: 8e-3, outerRadius_m: 9e-3 }),
    rate_N_m: between(100, 3e3),
    preload_N: between(0, 5),
    travel_m: between(0.3e-3, 2e-3),
  }),
});

const WITH_BASE: readonly Layout[] = ['monotube-reservoir', 'twin-tube', 'cartridge'];

/** Every layout that has a base valve; a fork leg is wider than its rod. */
export const anyWithBase: fc.Arbitrary<DamperInput> = fc
  .record({ damper: anyMonotube, base: anyBase, layout: fc.constantFrom(...WITH_BASE), legShare: between(1, 3) })
  .map(({ damper, base, layout, legShare }) => ({
    ...damper,
    layout,
    base,
    ...(layout === 'cartridge' && { legDiameter_m: legShare * damper.rodDiameter_m }),
  }));

export const anyDamper: fc.Arbitrary<DamperInput> = fc.oneof(anyMonotube, anyWithBase);
