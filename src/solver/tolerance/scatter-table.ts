/**
 * How far what is built and filled may lie off what is drawn. Each entry is a tolerance to both sides that 95 of 100 keep: two
 * standard deviations of a normal scatter (the expanded uncertainty with k = 2 of the JCGM 100 guide, from memory).
 * The values are common practice in a careful workshop and no standard; rolling standards for precision strip grade thickness by
 * thickness and width, at several micrometres for such strip (from memory). A person replaces them by what they measured.
 */

export interface ScatterEntry {
  /** To both sides, in SI or as a share. */
  readonly tolerance: number;
  readonly unit: 'm' | 'K' | 'Pa' | '-';
  readonly meaning: string;
}

export const SCATTER_TABLE = {
  thickness: { tolerance: 5e-6, unit: 'm', meaning: 'thickness of every shim by itself' },
  diameter: { tolerance: 5e-5, unit: 'm', meaning: 'outer diameter of the shims of one size, punched alike' },
  clamp: { tolerance: 1e-4, unit: 'm', meaning: 'diameter of the edge that clamps a stack' },
  seat: { tolerance: 1e-5, unit: 'm', meaning: 'height of a seat over the hub' },
  portEdge: {
    tolerance: 5e-5,
    unit: 'm',
    meaning: 'diameter of the edge at which the ports of a valve end under its face shim',
  },
  ports: { tolerance: 5e-5, unit: 'm', meaning: 'diameter of the ports of one valve, drilled alike' },
  bleed: { tolerance: 2e-5, unit: 'm', meaning: 'diameter of a bleed hole' },
  viscosity: { tolerance: 0.05, unit: '-', meaning: 'viscosity of the oil, as a share of it' },
  temperature: { tolerance: 5, unit: 'K', meaning: 'temperature of the oil' },
  gas: { tolerance: 1e4, unit: 'Pa', meaning: 'pressure that the gas is charged to' },
} as const satisfies Record<string, ScatterEntry>;

export type ToleranceName = keyof typeof SCATTER_TABLE;
export const TOLERANCE_NAMES = Object.keys(SCATTER_TABLE) as readonly ToleranceName[];

/** Tolerances by name, to both sides, in the unit of the table [>= 0]. */
export type Tolerances = Readonly<Record<ToleranceName, number>>;

export const DEFAULT_TOLERANCES = Object.fromEntries(
  TOLERANCE_NAMES.map((name) => [name, SCATTER_TABLE[name].tolerance]),
) as unknown as Tolerances;

/** Standard deviations in a tolerance. */
export const DEVIATIONS = 2;
