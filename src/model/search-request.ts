/** What is asked of a search for stacks, in the words of the project document. */
import type { ShimRow, ValvePlace } from './project.ts';

export interface SearchLimits {
  maxShims?: number;
  /** Single shims added or taken out, all stacks together. */
  maxChanges?: number;
  /** Height of one stack. */
  minHeight_mm?: number;
  maxHeight_mm?: number;
  minFatigueReserve?: number;
  minYieldReserve?: number;
  /** Above the gas pressure that just keeps oil from pulling apart. */
  minGasMargin_bar?: number;
}

/** Where shims come from: those owned, or any of a list of sizes. */
export type ShimSource =
  | { kind: 'drawer' }
  | { kind: 'catalogue'; outerDiameters_mm: readonly number[]; thicknesses_mm: readonly number[] };

export interface SearchRequest {
  buildId: string;
  /** The stacks that may change. */
  places: readonly ValvePlace[];
  aim: readonly { shaftSpeed_m_s: number; force_N: number }[];
  source: ShimSource;
  /** Rows of the present stacks that must stay, with their counts. */
  keep?: Partial<Record<ValvePlace, readonly ShimRow[]>>;
  /** The face shims stay those they are. */
  keepFace?: boolean;
  limits?: SearchLimits;
}
