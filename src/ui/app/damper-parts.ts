/** The parts that a damper may have beside its valves. Starting values are our own: plausible, to be replaced by measured ones. */
import type { Damper, FrictionLaw, Gas, HydraulicStop, PistonBand, Project, Separator } from '../../model/project.ts';
import { keyPut, type OptionalPart } from './optional-parts.ts';

const tenths = (value: number): number => Number(value.toFixed(1));

type DamperKey = 'pistonBand' | 'frictionLaw' | 'hydraulicStop';

const ofDamper = <Key extends DamperKey>(
  key: Key,
  start: (project: Project) => NonNullable<Damper[Key]>,
): OptionalPart<NonNullable<Damper[Key]>> => ({
  id: key,
  of: ({ damper }) => damper[key] as NonNullable<Damper[Key]> | undefined,
  put: (project, part) => ({ ...project, damper: keyPut(project.damper, key, part) }),
  start,
});

export const PISTON_BAND: OptionalPart<PistonBand> = ofDamper('pistonBand', ({ damper }) => ({
  clearance_mm: Math.min(0.03, damper.boreDiameter_mm / 50),
  length_mm: 8,
  eccentricity: 0,
}));

export const FRICTION_LAW: OptionalPart<FrictionLaw> = ofDamper('frictionLaw', ({ damper }) => ({
  breakaway_N: tenths(damper.sealFriction_N * 1.5),
  stribeckSpeed_m_s: 0.01,
  viscous_N_s_m: 0,
}));

/** Between rod and bore, so that it fits at either end. */
export const HYDRAULIC_STOP: OptionalPart<HydraulicStop> = ofDamper('hydraulicStop', ({ damper }) => {
  const plungerDiameter_mm = tenths((damper.rodDiameter_mm + damper.boreDiameter_mm) / 2);
  const room_mm = (damper.boreDiameter_mm - plungerDiameter_mm) / 2;
  return {
    end: 'compression' as const,
    length_mm: tenths(Math.min(20, damper.travel_mm / 4)),
    plungerDiameter_mm,
    clearance_mm: Math.min(0.3, plungerDiameter_mm / 40, room_mm / 2),
  };
});

const withGas = (project: Project, gas: Gas): Project => ({ ...project, gas });

export const SEPARATOR: OptionalPart<Separator> = {
  id: 'separator',
  of: ({ gas }) => gas.separator,
  put: (project, part) => withGas(project, keyPut(project.gas, 'separator', part)),
  start: ({ damper }) => ({ kind: 'floating-piston', diameter_mm: damper.boreDiameter_mm, friction_N: 20 }),
};
