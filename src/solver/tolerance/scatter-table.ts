/**
 * What scatters when a damper is built and filled. A tolerance is to both sides and kept by 95 of 100: two standard deviations of a normal
 * scatter (the expanded uncertainty with k = 2 of the JCGM 100 guide, from memory).
 */

export interface ScatterEntry {
  /** Of its tolerance; - is a share. */
  readonly unit: 'm' | 'K' | 'Pa' | '-';
  readonly meaning: string;
}

export const SCATTER_TABLE = {
  thickness: { unit: 'm', meaning: 'thickness of every shim by itself' },
  diameter: { unit: 'm', meaning: 'outer diameter of the shims of one size, punched alike' },
  clamp: { unit: 'm', meaning: 'diameter of the edge that clamps a stack' },
  seat: { unit: 'm', meaning: 'height of a seat over the hub' },
  portEdge: { unit: 'm', meaning: 'diameter of the edge at which the ports of a valve end under its face shim' },
  ports: { unit: 'm', meaning: 'diameter of the ports of one valve, drilled alike' },
  bleed: { unit: 'm', meaning: 'diameter of a bleed hole' },
  viscosity: { unit: '-', meaning: 'viscosity of the oil, as a share of it' },
  temperature: { unit: 'K', meaning: 'temperature of the oil' },
  gas: { unit: 'Pa', meaning: 'pressure that the gas is charged to' },
} as const satisfies Record<string, ScatterEntry>;

export type ToleranceName = keyof typeof SCATTER_TABLE;
export const TOLERANCE_NAMES = Object.keys(SCATTER_TABLE) as readonly ToleranceName[];

/** Tolerances by name, to both sides, in the unit of the table [>= 0]. */
export type Tolerances = Readonly<Record<ToleranceName, number>>;

/** Standard deviations in a tolerance. */
export const DEVIATIONS = 2;
