/** The chassis of a document as a record for the solver, with what is missing for it. */
import type { AirSpring, Chassis, Gas, MainSpring, MotionRatio, Project } from '../../model/project.ts';
import {
  absoluteFromGauge,
  metresFromMillimetres as metres,
  newtonsPerMetreFromNewtonsPerMillimetre,
  pascalsFromBars,
  radiansFromDegrees,
} from '../../units/si.ts';
import { constantLinkage, tableLinkage } from '../chassis/linkage.ts';
import { airLaw, coilLaw, progressiveLaw } from '../chassis/spring-laws.ts';
import type { ChassisInput, Linkage, SpringLaw } from '../chassis/types.ts';
import { gasArea } from '../damper/piston-areas.ts';
import { gasFrom } from './gas.ts';

/** What the readings cannot do without; `spring` stands for any of the two kinds. */
export const NEEDED = ['vehicleSprungMass_kg', 'wheelTravel_mm', 'motionRatio', 'spring'] as const;
export type Needed = (typeof NEEDED)[number];

export const missingIn = (chassis: Chassis): Needed[] =>
  NEEDED.filter((key) => chassis[key] === undefined && !(key === 'spring' && chassis.airSpring));

/**
 * @returns undefined while something of `missingIn` is missing
 * @throws InputError as `gasFrom` does, for a damper whose stroke needs more than its gas has
 */
export function chassisFromProject({ chassis, damper, gas }: Project): ChassisInput | undefined {
  const { vehicleSprungMass_kg, wheelTravel_mm, motionRatio, spring, airSpring } = chassis;
  if (missingIn(chassis).length > 0) return undefined;
  if (vehicleSprungMass_kg === undefined || wheelTravel_mm === undefined || !motionRatio) return undefined;
  const { springCount = 1, damperCount = 1, unsprungMass_kg, riderSprungMass_kg = 0, legAngle_deg = 0 } = chassis;
  const ofOne = [...(spring ? [mainLaw(spring)] : []), ...(airSpring ? [airSpringLaw(airSpring)] : [])];
  const gasLaw = gasOfDamper(damper, gas);
  return {
    vehicleSprungMass_kg,
    riderSprungMass_kg,
    ...(unsprungMass_kg !== undefined && { unsprungMass_kg }),
    wheelTravel_m: metres(wheelTravel_mm),
    linkage: linkageFrom(motionRatio),
    springs: [...repeated(ofOne, springCount), ...repeated([gasLaw], damperCount)],
    damperCount,
    legAngle_rad: radiansFromDegrees(legAngle_deg),
  };
}

const repeated = (laws: readonly SpringLaw[], count: number): SpringLaw[] =>
  Array.from({ length: count }, () => laws).flat();

function linkageFrom(ratio: MotionRatio): Linkage {
  if (ratio.kind === 'constant') return constantLinkage(ratio.shaftPerWheel);
  return tableLinkage(
    ratio.points.map(({ wheelTravel_mm }) => metres(wheelTravel_mm)),
    ratio.points.map(({ shaftPerWheel }) => shaftPerWheel),
  );
}

function mainLaw(spring: MainSpring): SpringLaw {
  if (spring.kind === 'coil')
    return coilLaw(newtonsPerMetreFromNewtonsPerMillimetre(spring.rate_N_mm), metres(spring.preload_mm));
  return progressiveLaw(
    spring.points.map(({ compression_mm }) => metres(compression_mm)),
    spring.points.map(({ force_N }) => force_N),
    metres(spring.preload_mm),
  );
}

function airSpringLaw(air: AirSpring): SpringLaw {
  const area_m2 = gasArea({ rodDiameter_m: metres(air.pistonDiameter_mm) });
  const charge = {
    absolutePressure_Pa: absoluteFromGauge(pascalsFromBars(air.gaugePressure_bar)),
    volume_m3: area_m2 * metres(air.airLength_mm),
    polytropicExponent: air.polytropicExponent,
  };
  return airLaw(charge, area_m2);
}

/** The gas of a damper pushes its rod, or its leg, out as well. */
function gasOfDamper(damper: Project['damper'], gas: Gas): SpringLaw {
  const leg_mm = damper.layout === 'cartridge' ? damper.legDiameter_mm : undefined;
  const sizes = {
    rodDiameter_m: metres(damper.rodDiameter_mm),
    ...(leg_mm !== undefined && { legDiameter_m: metres(leg_mm) }),
    travel_m: metres(damper.travel_mm),
  };
  return airLaw(gasFrom(gas, sizes, 0), gasArea(sizes));
}
