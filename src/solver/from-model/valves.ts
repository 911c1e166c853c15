/** Valves of a document. */
import type { Bleed, Build, Damper, Poppet, Ports, RefillCheck, ValveBody, Valving } from '../../model/project.ts';
import { InputError } from '../../units/fault.ts';
import {
  metresFromMillimetres as metres,
  radiansFromDegrees,
  squareMetresFromSquareMillimetres,
} from '../../units/si.ts';
import type { BaseInput, BleedInput, CheckInput, PoppetInput, PortsInput, ValveInput } from '../damper/types.ts';
import { roundDiameter, roundHoles } from '../restriction/round-holes.ts';
import { expandShims, radius, ring, springFrom, springsFrom } from './stacks.ts';

export function valveFrom({ ports, pressureZone, seat }: ValveBody, valving: Valving): ValveInput {
  const notches = valving.shims.at(0)?.notches;
  const { coveredFraction } = ports;
  return {
    ports: portsFrom(ports),
    ...(notches && { notches: { count: notches.count, width_m: metres(notches.width_mm) } }),
    stack: {
      clampRadius_m: radius(valving.clampDiameter_mm),
      shims: expandShims(valving.shims, valving.material),
      pressureZone: ring(pressureZone),
      seat: { ...ring(seat), height_m: metres(valving.seatHeight_mm) },
      ...(coveredFraction !== undefined && { ports: { count: ports.count, coveredFraction } }),
      ...springsFrom(valving),
    },
  };
}

export function bleedFrom({ count, diameter_mm, length_mm, needle }: Bleed): BleedInput {
  return {
    count,
    diameter_m: metres(diameter_mm),
    length_m: metres(length_mm),
    ...(needle && {
      needle: {
        coneAngle_rad: radiansFromDegrees(needle.coneAngle_deg),
        travel_m: needle.clicks * metres(needle.travelPerClick_mm),
      },
    }),
  };
}

/** The base valve of a layout that has one. @throws InputError `damper.base.none` when a part of it is missing */
export function baseFrom({ valves, refillCheck }: Damper, build: Build): BaseInput | undefined {
  const { baseBleed, basePoppet } = build;
  const valving = build.valves.baseCompression;
  if (!valves.baseCompression && !valving && !refillCheck) return undefined;
  const body = present(valves.baseCompression, 'damper.valves.baseCompression');
  return {
    compression: valveFrom(body, present(valving, `builds.${build.id}.valves.baseCompression`)),
    refill: refillFrom(present(refillCheck, 'damper.refillCheck')),
    ...(baseBleed && { bleed: bleedFrom(baseBleed) }),
    ...(basePoppet && { poppet: poppetFrom(basePoppet) }),
  };
}

function present<Part>(part: Part | undefined, path: string): Part {
  if (part !== undefined) return part;
  throw new InputError({ code: 'damper.base.none', path, got: 'none', wanted: 'every part of the base valve' });
}

function poppetFrom(poppet: Poppet): PoppetInput {
  return {
    seatDiameter_m: metres(poppet.seatDiameter_mm),
    coneAngle_rad: radiansFromDegrees(poppet.coneAngle_deg),
    ...springFrom(poppet),
    travel_m: metres(poppet.travel_mm),
  };
}

function refillFrom({ ports, seat, travel_mm, ...spring }: RefillCheck): CheckInput {
  return { ports: portsFrom(ports), seat: ring(seat), ...springFrom(spring), travel_m: metres(travel_mm) };
}

/** A port known by its area alone counts as round: its hydraulic diameter is then the largest that the area allows. */
function portsFrom({ count, diameter_mm, area_mm2, length_mm, coveredFraction }: Ports): PortsInput {
  const length_m = metres(length_mm);
  const covered = coveredFraction !== undefined && { coveredFraction };
  if (diameter_mm !== undefined)
    return { ...roundHoles({ count, diameter_m: metres(diameter_mm), length_m }), ...covered };
  if (area_mm2 !== undefined) {
    const area_m2 = squareMetresFromSquareMillimetres(area_mm2);
    return { count, area_m2, hydraulicDiameter_m: roundDiameter(area_m2), length_m, ...covered };
  }
  throw new InputError({
    code: 'damper.port.size',
    path: 'damper.valves.ports',
    got: 'neither',
    wanted: 'either diameter_mm or area_mm2',
  });
}
