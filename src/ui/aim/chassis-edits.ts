/** Edits of the chassis. Starting values are our own: plausible, to be replaced by measured ones. */
import type { AirSpring, Chassis, MainSpring, MotionRatio, Project } from '../../model/project.ts';
import { keyPut, type OptionalPart } from '../app/optional-parts.ts';
import { project } from '../app/store.ts';

export const withChassis = <Key extends keyof Chassis>(key: Key, value: Chassis[Key] | undefined): Project => ({
  ...project.value,
  chassis: keyPut(project.value.chassis, key, value),
});

export type RatioKind = MotionRatio['kind'] | 'none';
export type SpringKind = MainSpring['kind'] | 'none';

/** The same ratio in another shape: a table starts flat, a number is that at the start of the table. */
export function withRatioKind(kind: RatioKind): Project {
  const { motionRatio, wheelTravel_mm = 100 } = project.value.chassis;
  if (kind === 'none') return withChassis('motionRatio', undefined);
  const shaftPerWheel =
    motionRatio?.kind === 'table' ? motionRatio.points[0].shaftPerWheel : motionRatio?.shaftPerWheel;
  const ratio = shaftPerWheel ?? (project.value.damper.layout === 'cartridge' ? 1 : 0.5);
  if (kind === 'constant') return withChassis('motionRatio', { kind, shaftPerWheel: ratio });
  const points = [0, wheelTravel_mm].map((at) => ({ wheelTravel_mm: at, shaftPerWheel: ratio }));
  return withChassis('motionRatio', { kind, points });
}

/** A progressive spring starts as the coil it takes the place of. */
export function withSpringKind(kind: SpringKind): Project {
  const { spring } = project.value.chassis;
  if (kind === 'none') return withChassis('spring', undefined);
  const preload_mm = spring?.preload_mm ?? 0;
  const rate_N_mm = spring ? startRate(spring) : 50;
  if (kind === 'coil') return withChassis('spring', { kind, rate_N_mm, preload_mm });
  const points = [0, 100].map((compression_mm) => ({ compression_mm, force_N: rate_N_mm * compression_mm }));
  return withChassis('spring', { kind, points, preload_mm });
}

function startRate(spring: MainSpring): number {
  if (spring.kind === 'coil') return spring.rate_N_mm;
  const [a, b] = spring.points;
  return (b.force_N - a.force_N) / (b.compression_mm - a.compression_mm);
}

export const AIR_SPRING: OptionalPart<AirSpring> = {
  id: 'chassis:air',
  of: ({ chassis }) => chassis.airSpring,
  put: (from, airSpring) => ({ ...from, chassis: keyPut(from.chassis, 'airSpring', airSpring) }),
  start: ({ damper }) => ({
    pistonDiameter_mm: 35,
    gaugePressure_bar: 0,
    airLength_mm: Math.round(damper.travel_mm * 2),
    polytropicExponent: 1.2,
  }),
};
