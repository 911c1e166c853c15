/** Every sketch by its name. */
import { BASE_BLEED, NEEDLE } from './bleeds.tsx';
import { CHASSIS } from './chassis.tsx';
import { CHASSIS_FORK } from './chassis-fork.tsx';
import { MONOTUBE, RESERVOIR, TWIN_TUBE } from './dampers.tsx';
import { FORK_CARTRIDGE } from './fork-cartridge.tsx';
import { FORK_FILL, FORK_LEVEL, FORK_VOLUME } from './fork-legs.tsx';
import { GAS_RESERVOIR, GAS_TUBE, GAS_TWIN_TUBE } from './gas-rooms.tsx';
import { OIL_ONE_POINT, OIL_TWO_POINTS } from './oil-data.tsx';
import { PISTON_PARTS } from './piston-parts.tsx';
import { POPPET } from './poppet-on-seat.tsx';
import { REFILL_ROUND, REFILL_SHAPED } from './refill-check.tsx';
import { FACE_SHIM, SHIM } from './shim-alone.tsx';
import type { Sketch } from './sketch.ts';
import { SPRING_ADJUSTER, SPRINGS } from './springs.tsx';
import { STACK, STACK_WITHOUT_BLEED } from './stack-on-piston.tsx';
import { PORTS_ROUND, PORTS_SHAPED } from './valve-face.tsx';

export const SKETCHES = {
  'damper-monotube': MONOTUBE,
  'damper-reservoir': RESERVOIR,
  'damper-twin-tube': TWIN_TUBE,
  'damper-cartridge': FORK_CARTRIDGE,
  'ports-round': PORTS_ROUND,
  'ports-shaped': PORTS_SHAPED,
  'refill-round': REFILL_ROUND,
  'refill-shaped': REFILL_SHAPED,
  'piston-parts': PISTON_PARTS,
  'oil-two-points': OIL_TWO_POINTS,
  'oil-one-point': OIL_ONE_POINT,
  'gas-tube': GAS_TUBE,
  'gas-reservoir': GAS_RESERVOIR,
  'gas-twin-tube': GAS_TWIN_TUBE,
  'gas-fork-volume': FORK_VOLUME,
  'gas-fork-level': FORK_LEVEL,
  'gas-fork-fill': FORK_FILL,
  stack: STACK,
  'stack-without-bleed': STACK_WITHOUT_BLEED,
  springs: SPRINGS,
  'spring-adjuster': SPRING_ADJUSTER,
  shim: SHIM,
  'shim-face': FACE_SHIM,
  needle: NEEDLE,
  'base-bleed': BASE_BLEED,
  poppet: POPPET,
  chassis: CHASSIS,
  'chassis-fork': CHASSIS_FORK,
} as const satisfies Readonly<Record<string, Sketch>>;

export type SketchName = keyof typeof SKETCHES;
