/**
 * The project document as a person saves it. Key names carry their unit; diameters, not radii; gauge pressure.
 * The zod schemas in this folder must infer exactly these shapes (plus unknown fields, which are kept).
 */
import type { Aim } from './aim.ts';
import type { Assembly } from './assembly.ts';
import type { Chassis } from './chassis.ts';
import type { DrawerShim } from './drawer.ts';
import type { Fit } from './fit.ts';
import type { Gas } from './gas.ts';
import type { Measurement } from './measurement.ts';
import type { TeardownRecord } from './record.ts';
import type { PreloadAdjuster, Valving } from './stack.ts';
import type { Tolerances } from './tolerances.ts';

export type * from './aim.ts';
export type { Assembly, FirstStack } from './assembly.ts';
export type * from './chassis.ts';
export type { DrawerShim } from './drawer.ts';
export type * from './fit.ts';
export type * from './gas.ts';
export type * from './measurement.ts';
export type * from './record.ts';
export type * from './stack.ts';
export type { Tolerances } from './tolerances.ts';

/** Equal ports side by side. One port: a round hole by diameter, or any shape by its area. */
export interface Ports {
  count: number;
  diameter_mm?: number;
  area_mm2?: number;
  length_mm: number;
  /** Share of the circumference of the pressure zone that the ports open to the shims; 1 when absent, as with a groove all round. */
  coveredFraction?: number;
}

/** What is machined into the piston, or into the base, for one flow direction. */
export interface ValveBody {
  ports: Ports;
  pressureZone: { innerDiameter_mm: number; outerDiameter_mm: number };
  seat: { innerDiameter_mm: number; outerDiameter_mm: number };
}

/** A hole open in both directions, fixed or with the needle of an adjuster in it. */
export interface Bleed {
  count: number;
  diameter_mm: number;
  length_mm: number;
  needle?: Needle;
}

/** A cone that closes the bleed hole. */
export interface Needle {
  /** Between opposite flanks. */
  coneAngle_deg: number;
  travelPerClick_mm: number;
  /** From closed. */
  clicks: number;
  /** How many clicks the adjuster has. */
  clickCount: number;
}

/** Clearance of the piston in its tube; when absent its band seals. */
export interface PistonBand {
  /** Half the difference of the diameters. */
  clearance_mm: number;
  length_mm: number;
  /** Distance of the axes over the clearance: 0 concentric, 1 touching. */
  eccentricity: number;
}

/** A cone on a sharp seat under a coil spring: opens beside the base stack in compression. */
export interface Poppet {
  seatDiameter_mm: number;
  /** Between opposite flanks. */
  coneAngle_deg: number;
  rate_N_mm: number;
  /** Force at rest, with its adjuster closed. */
  preload_N: number;
  /** Lift at its stop. */
  travel_mm: number;
  adjuster?: PreloadAdjuster;
}

/** A rigid plate under a light spring, through which oil comes back from the reservoir in rebound. */
export interface RefillCheck {
  ports: Ports;
  /** Land on which the plate lies. */
  seat: { innerDiameter_mm: number; outerDiameter_mm: number };
  rate_N_mm: number;
  /** Force at rest. */
  preload_N: number;
  /** Lift at its stop. */
  travel_mm: number;
}

/** A plunger that enters a cup at the end of the stroke and presses the oil out through its clearance. */
export interface HydraulicStop {
  /** At which end of the stroke: fully compressed or fully extended. */
  end: 'compression' | 'rebound';
  /** Of the stroke, over which the plunger is in the cup. */
  length_mm: number;
  plungerDiameter_mm: number;
  /** Half the difference of the diameters. */
  clearance_mm: number;
}

/** Friction beyond the seal friction of slow sliding: from rest it falls to that with speed, then the oil film adds. */
export interface FrictionLaw {
  /** Just before it slides. */
  breakaway_N: number;
  /** Speed scale of the fall. */
  stribeckSpeed_m_s: number;
  viscous_N_s_m: number;
}

/** The monotube has its two piston valves; the other layouts also that of the base, towards the gas. */
export type ValvePlace = 'pistonCompression' | 'pistonRebound' | 'baseCompression';

/** What a damper has at its piston in any case and at its base where its layout has one. */
export interface ByPlace<Item> {
  pistonCompression: Item;
  pistonRebound: Item;
  baseCompression?: Item;
}

export interface Build {
  id: string;
  name: string;
  notes: string;
  valves: ByPlace<Valving>;
  /** Through piston or rod. */
  bleed: Bleed;
  /** Beside the base valve. */
  baseBleed?: Bleed;
  basePoppet?: Poppet;
  /** What test benches measured of it. */
  measurements?: Measurement[];
  /** Coefficients fitted to them. */
  fit?: Fit;
  /** What its build sheet says beside the sizes. */
  assembly?: Assembly;
}

/**
 * - `monotube`: gas behind a floating piston in the tube.
 * - `monotube-reservoir`: a base valve leads to a remote chamber with the gas.
 * - `twin-tube`: a base valve leads to the space round the tube, with gas over the oil.
 * - `cartridge`: of a fork leg; a base valve leads to the leg, with air over the oil.
 */
export const LAYOUTS = ['monotube', 'monotube-reservoir', 'twin-tube', 'cartridge'] as const;
export type Layout = (typeof LAYOUTS)[number];

/** What a base valve needs beside its stack. */
export const BASE_PARTS = ['baseCompression', 'refillCheck'] as const;
/** What a damper needs and may have been put in before it was measured. */
export const ASSUMED_PARTS = ['sizes', 'pistonCompression', 'pistonRebound', ...BASE_PARTS, 'oil', 'gas'] as const;
export type AssumedPart = (typeof ASSUMED_PARTS)[number];

export interface Damper {
  name: string;
  layout: Layout;
  boreDiameter_mm: number;
  rodDiameter_mm: number;
  travel_mm: number;
  sealFriction_N: number;
  frictionLaw?: FrictionLaw;
  pistonBand?: PistonBand;
  valves: ByPlace<ValveBody>;
  /** With a base valve. */
  refillCheck?: RefillCheck;
  hydraulicStop?: HydraulicStop;
  /** Of a cartridge: diameter at the seal of the leg, on which the air acts; when absent, the rod. */
  legDiameter_mm?: number;
  /** Length of oil left in each chamber at its end of the stroke; 10 when absent. */
  endClearance_mm?: number;
  /** Metal that warms with the oil; none when absent. */
  heatedMass_kg?: number;
  /** Parts whose sizes are an assumption that waits for being measured; none when absent. */
  assumedParts?: AssumedPart[];
}

export type Viscosity =
  | { kind: 'two-point'; points: [ViscosityPoint, ViscosityPoint] }
  | { kind: 'viscosity-index'; kinematicViscosity40_cSt: number; viscosityIndex: number }
  | { kind: 'iso-grade'; isoGrade: IsoGrade; viscosityIndex: number };

/** Viscosity grades of ISO 3448 that dampers use. */
export const ISO_GRADES = [7, 10, 15, 22, 32, 46, 68, 100] as const;
export type IsoGrade = (typeof ISO_GRADES)[number];

export interface ViscosityPoint {
  temperature_degC: number;
  kinematicViscosity_cSt: number;
}

export interface Fluid {
  name: string;
  viscosity: Viscosity;
  densityAt15_kg_m3: number;
  temperature_degC: number;
  /** Of the oil without air. */
  bulkModulus_GPa?: number;
  /** Share of free air by volume, at atmospheric pressure. */
  entrainedAir_percent?: number;
}

export interface Project {
  format: 'shimwright/project';
  version: 1;
  name: string;
  notes: string;
  /** True for demo data: no such machine, maker or rider exists. */
  invented?: boolean;
  damper: Damper;
  fluid: Fluid;
  gas: Gas;
  builds: Build[];
  /** The id of the build that the others are compared with. */
  baselineBuild: string;
  measurements: unknown[];
  /** What the damper is built into, as far as it is known. */
  chassis: Chassis;
  drawer: DrawerShim[];
  /** Wanted force curves. */
  aims?: Aim[];
  /** Of taking it apart. */
  record?: TeardownRecord;
  /** How far a damper that is built may lie off all this. */
  tolerances?: Tolerances;
}
