/**
 * One stack as a person saves it, in a valving and in a stack file alike. Key names carry their unit; diameters, not radii; piston
 * side first. The schemas in this folder must infer exactly these shapes (plus unknown fields, which are kept).
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
  /** Force at rest, with its adjuster closed. */
  preload_N: number;
  adjuster?: PreloadAdjuster;
}

/** Takes preload off a spring: each click from closed lets it out by the travel of a click, down to no force. */
export interface PreloadAdjuster {
  travelPerClick_mm: number;
  /** From closed. */
  clicks: number;
  clickCount: number;
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
  /** When absent, a groove that opens the whole pressure zone. */
  ports?: PortsUnderShims;
}

/** Equal ports evenly spaced round the pressure zone. */
export interface PortsUnderShims {
  count: number;
  /** Share of the zone's circumference that they open to the face shim. */
  coveredFraction: number;
}
