/**
 * The project document as a person saves it. Key names carry their unit; diameters, not radii; gauge pressure.
 * The zod schemas in this folder must infer exactly these shapes (plus unknown fields, which are kept).
 */

export interface ShimRow {
  outerDiameter_mm: number;
  thickness_mm: number;
  /** How many of this shim lie on one another; 1 when absent. */
  count?: number;
  /** Bore. Larger than the clamp, the shim is a free ring, such as a preload ring; when absent it fits the clamp. */
  innerDiameter_mm?: number;
  /** Height of the rim over the shim's own hub plane, unloaded; above 0 it is coned away from the piston. */
  dish_mm?: number;
  /** Of this shim; when absent, that of the stack. */
  material?: Material;
  notches?: Notches;
}

/** Bleed notches cut in the rim of the face shim, across the whole seat land. */
export interface Notches {
  count: number;
  /** Of one notch, along the rim. */
  width_mm: number;
}

export interface Material {
  youngsModulus_GPa: number;
  poissonsRatio: number;
  /** Limits for the judgement of stress; what is absent is assumed for spring steel, and unknown for any other metal. */
  yieldStrength_MPa?: number;
  tensileStrength_MPa?: number;
  /** Amplitude of reversed bending that the surface bears for ever. */
  enduranceLimit_MPa?: number;
}

/** Rigid plate over the stack; without a diameter it covers every shim. */
export interface BackingPlate {
  /** From the top of the unloaded stack. */
  gap_mm: number;
  outerDiameter_mm?: number;
}

/** A coil spring that presses on the last shim along a circle. */
export interface CoilSpring {
  diameter_mm: number;
  rate_N_mm: number;
  /** Force at rest. */
  preload_N: number;
}

/** The clamped stack may rise bodily against a check spring. */
export interface Float {
  travel_mm: number;
  rate_N_mm: number;
  /** Force of the check spring at rest. */
  preload_N: number;
}

/** What may stand over a stack, or let it rise, in a valving and in a stack file alike. */
export interface StackSprings {
  backingPlate?: BackingPlate;
  coilSpring?: CoilSpring;
  float?: Float;
}

/** What a person changes in one valve: the stack on its clamp. Piston side first. */
export interface Valving extends StackSprings {
  clampDiameter_mm: number;
  shims: ShimRow[];
  /** Seat above the hub plane; above 0 the face shim is preloaded. */
  seatHeight_mm: number;
  material?: Material;
}

/** What is machined into the piston for one flow direction. */
export interface ValveBody {
  /** One port: a round hole by diameter, or any shape by its area. */
  ports: { count: number; diameter_mm?: number; area_mm2?: number; length_mm: number };
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

/** Which valves a damper has; more places join with more layouts. */
export type ValvePlace = 'pistonCompression' | 'pistonRebound';

export interface Build {
  id: string;
  name: string;
  notes: string;
  valves: Record<ValvePlace, Valving>;
  bleed: Bleed;
}

export interface Damper {
  name: string;
  layout: 'monotube';
  boreDiameter_mm: number;
  rodDiameter_mm: number;
  travel_mm: number;
  sealFriction_N: number;
  pistonBand?: PistonBand;
  valves: Record<ValvePlace, ValveBody>;
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
}

/** Gas behind the floating piston, measured cold at full extension. */
export interface Gas {
  gaugePressure_bar: number;
  volume_mL: number;
  polytropicExponent: number;
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
  chassis: Record<string, unknown>;
  drawer: unknown[];
}

/** The stack file of the command line: one stack with its own pressure zone, no damper. */
export interface StackFile extends StackSprings {
  format: 'shimwright/stack';
  version: 1;
  name: string;
  material?: Material;
  clampDiameter_mm: number;
  shims: ShimRow[];
  pressureZone: { innerDiameter_mm: number; outerDiameter_mm: number };
  seat?: { innerDiameter_mm: number; outerDiameter_mm: number; height_mm: number };
}
