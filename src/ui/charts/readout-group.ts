/** What a row of the readout is, and rows that belong together. */
import type { ForcePoint } from '../app/solved.ts';
import type { Reading } from './reading.ts';

export type SolvedReading = Reading & { readonly point: ForcePoint };

export interface ReadoutRow {
  readonly id: string;
  readonly name: string;
  readonly cell: (reading: SolvedReading) => string;
  /** What the number means for the parts, on a line of its own. */
  readonly note?: (reading: SolvedReading) => string | undefined;
  /** Left out where it holds for no build; without it the row is always there. */
  readonly when?: (reading: SolvedReading) => boolean;
  readonly tone?: (reading: SolvedReading) => 'caution' | undefined;
}

/** Rows that belong together; the first has a name where it is not plain from the head of the table. */
export interface ReadoutGroup {
  readonly id: string;
  readonly title?: string;
  readonly rows: readonly ReadoutRow[];
}
