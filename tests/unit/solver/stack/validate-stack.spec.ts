import { describe, expect, it } from 'vitest';
import { validateStack } from '../../../../src/solver/stack/validate-stack.ts';
import type { StackInput } from '../../../../src/solver/types.ts';
import { InputError } from '../../../../src/units/fault.ts';
import { SEAT, stackOf, steel } from './steel.ts';

const shim = steel(30, 0.15);
const face = (rest: Partial<typeof shim>) => stackOf([steel(30, 0.15, rest)]);
const coilSpring = { radius_m: 10e-3, rate_N_m: 2e4, preload_N: 5 };
const float = { travel_m: 1e-4, rate_N_m: 1e4, preload_N: 5 };
const spring = (rest: Partial<typeof coilSpring>) => stackOf([shim], { coilSpring: { ...coilSpring, ...rest } });
const floating = (rest: Partial<typeof float>) => stackOf([shim], { float: { ...float, ...rest } });
const zone = (inner_mm: number, outer_mm: number) =>
  stackOf([shim], { pressureZone: { innerRadius_m: inner_mm / 2e3, outerRadius_m: outer_mm / 2e3 } });
const seat = (rest: Partial<NonNullable<StackInput['seat']>>) =>
  stackOf([shim], { seat: { ...SEAT, height_m: 0, ...rest } });

function faultOf(stack: StackInput) {
  try {
    validateStack(stack);
  } catch (error) {
    if (error instanceof InputError) return error.fault;
    throw error;
  }
  throw new Error('not refused');
}

const REFUSED: [code: string, path: string, stack: StackInput][] = [
  ['stack.not-positive', 'clampRadius_m', stackOf([shim], { clampRadius_m: 0 })],
  ['stack.empty', 'shims', stackOf([])],
  ['stack.nothing-clamped', 'shims', face({ innerRadius_m: 8e-3 })],
  ['stack.not-positive', 'shims[0].outerRadius_m', face({ outerRadius_m: Number.NaN })],
  ['stack.not-positive', 'shims[0].thickness_m', face({ thickness_m: 0 })],
  ['stack.not-positive', 'shims[0].youngsModulus_Pa', face({ youngsModulus_Pa: Number.POSITIVE_INFINITY })],
  ['stack.shim.poisson', 'shims[0].poissonsRatio', face({ poissonsRatio: 0.5 })],
  ['stack.shim.poisson', 'shims[0].poissonsRatio', face({ poissonsRatio: -1 })],
  ['stack.shim.below-clamp', 'shims[1].outerRadius_m', stackOf([shim, steel(12, 0.1)])],
  ['stack.shim.bore', 'shims[0].innerRadius_m', face({ innerRadius_m: 15e-3 })],
  ['stack.shim.bore', 'shims[0].innerRadius_m', face({ innerRadius_m: -1e-3 })],
  ['stack.shim.dish', 'shims[0].dish_m', face({ dish_m: 1.81e-3 })],
  ['stack.shim.dish', 'shims[0].dish_m', face({ dish_m: -1.81e-3 })],
  ['stack.shim.dish', 'shims[0].dish_m', face({ dish_m: Number.NaN })],
  ['stack.shim.too-narrow', 'shims[1].outerRadius_m', stackOf([shim, steel(12.01, 0.1)])],
  ['stack.shim.too-narrow', 'shims[1].outerRadius_m', stackOf([shim, steel(20, 0.1, { innerRadius_m: 9.995e-3 })])],
  ['stack.not-positive', 'pressureZone.outerRadius_m', zone(0, 0)],
  ['stack.ring.order', 'pressureZone.innerRadius_m', zone(20, 20)],
  ['stack.ring.order', 'pressureZone.innerRadius_m', zone(-1, 20)],
  ['stack.ring.beyond-rim', 'pressureZone.outerRadius_m', zone(16, 30.1)],
  ['stack.zone.inside-clamp', 'pressureZone.outerRadius_m', zone(4, 12)],
  ['stack.ring.order', 'seat.innerRadius_m', seat({ innerRadius_m: 14.3e-3 })],
  ['stack.ring.beyond-rim', 'seat.outerRadius_m', seat({ outerRadius_m: 15.1e-3 })],
  ['stack.seat.inside-clamp', 'seat.innerRadius_m', seat({ innerRadius_m: 6e-3 })],
  ['stack.seat.inside-clamp', 'seat.innerRadius_m', seat({ innerRadius_m: 6.001e-3, outerRadius_m: 6.002e-3 })],
  ['stack.seat.height', 'seat.height_m', seat({ height_m: Number.NaN })],
  ['stack.backing-plate.gap', 'backingPlate.gap_m', stackOf([shim], { backingPlate: { gap_m: -1e-6 } })],
  ['stack.backing-plate.gap', 'backingPlate.gap_m', stackOf([shim], { backingPlate: { gap_m: Number.NaN } })],
  [
    'stack.backing-plate.size',
    'backingPlate.outerRadius_m',
    stackOf([shim], { backingPlate: { gap_m: 0, outerRadius_m: 6e-3 } }),
  ],
  ['stack.coil-spring.radius', 'coilSpring.radius_m', spring({ radius_m: 6e-3 })],
  ['stack.coil-spring.radius', 'coilSpring.radius_m', spring({ radius_m: 15.1e-3 })],
  ['stack.not-positive', 'coilSpring.rate_N_m', spring({ rate_N_m: 0 })],
  ['stack.coil-spring.preload', 'coilSpring.preload_N', spring({ preload_N: -1 })],
  ['stack.coil-spring.preload', 'coilSpring.preload_N', spring({ preload_N: Number.POSITIVE_INFINITY })],
  ['stack.float.with-coil-spring', 'float', stackOf([shim], { float, coilSpring })],
  ['stack.not-positive', 'float.travel_m', floating({ travel_m: 0 })],
  ['stack.float.rate', 'float.rate_N_m', floating({ rate_N_m: -1 })],
  ['stack.float.preload', 'float.preload_N', floating({ preload_N: Number.NaN })],
];

describe('a stack is refused', () => {
  it.each(REFUSED)('%s at %s', (code, path, stack) => {
    const fault = faultOf(stack);
    expect([fault.code, fault.path]).toEqual([code, path]);
    expect(fault.got).not.toBe('');
    expect(fault.wanted).not.toBe('');
  });

  it('with the numbers as a person measures them: diameters in mm', () => {
    expect(faultOf(stackOf([shim, steel(11, 0.1)]))).toMatchObject({
      got: 'diameter 11',
      wanted: 'over diameter 12',
      unit: 'mm',
    });
    expect(faultOf(face({ dish_m: 2e-3 }))).toMatchObject({ got: '2', wanted: 'between -1.8 and 1.8', unit: 'mm' });
  });
});

describe('a stack is taken', () => {
  it.each<[string, StackInput]>([
    ['of one shim', stackOf([shim])],
    ['with a zone that starts inside the clamp and ends at the rim', zone(4, 30)],
    ['with a seat below the hub plane', seat({ height_m: -1e-3 })],
    ['with a ring larger than the shims', stackOf([shim, steel(40, 0.15, { innerRadius_m: 14e-3 })])],
    ['with a backing plate that touches', stackOf([shim], { backingPlate: { gap_m: 0 } })],
    ['with a spring at the very rim', spring({ radius_m: 15e-3, preload_N: 0 })],
    ['with a float without rate or preload', floating({ rate_N_m: 0, preload_N: 0 })],
    ['coned to the limit of a shallow shell', face({ dish_m: 1.8e-3 })],
  ])('%s', (_, stack) => {
    expect(() => validateStack(stack)).not.toThrow();
  });
});
