/** Gas of a damper as a person saves it. */

/** Air over the oil of a fork leg, by the oil level as it is measured: fully compressed, spring out, from the top of the tube. */
export interface AirGap {
  level_mm: number;
  /** Bore of the tube in which it is measured. */
  tubeDiameter_mm: number;
  /** Solid volume that comes in after measuring: spring, spacers. */
  insertedVolume_mL: number;
}

/** Air over the oil of a fork leg, by what was poured in. */
export interface OilFill {
  /** Poured into the empty leg. */
  oilVolume_mL: number;
  /** What the leg holds up to the top of its tube, fully compressed, spring out, cartridge in. */
  legVolume_mL: number;
  /** Solid volume that comes in afterwards: spring, spacers. */
  insertedVolume_mL: number;
}

/** What keeps gas and oil apart; a floating piston holds a pressure by its seal friction. */
export type Separator = { kind: 'floating-piston'; diameter_mm: number; friction_N: number } | { kind: 'bladder' };

/** Gas of the damper, measured cold at full extension: its volume, or in a fork leg the air gap or the oil poured in. */
export interface Gas {
  gaugePressure_bar: number;
  volume_mL?: number;
  airGap?: AirGap;
  oilFill?: OilFill;
  polytropicExponent: number;
  /** When absent nothing keeps gas and oil apart, or its friction does not count. */
  separator?: Separator;
}
