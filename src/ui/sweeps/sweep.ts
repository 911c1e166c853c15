/** What every sweep has: its points, the curves at the speed cursor, and its axis. */
import type { ReadonlySignal } from '@preact/signals';
import type { SweepPoint } from '../app/sweep-solve.ts';
import type { SweepCurve } from './sweep-curves.ts';

export type SweepName = 'temperature' | 'position' | 'clicks';

export interface Sweep {
  readonly name: SweepName;
  /** All that are to be solved. */
  readonly points: ReadonlySignal<readonly SweepPoint[]>;
  /** Each build in both directions. */
  readonly curves: ReadonlySignal<readonly SweepCurve[]>;
  /** From the unit of the sweep to that of the axis. */
  readonly toShown: (at: number) => number;
  /** Ends of the axis, in the unit of the sweep. */
  readonly range: ReadonlySignal<readonly [number, number]>;
  /** Within this the document has data; absent where it has for all of it. */
  readonly known?: ReadonlySignal<readonly [number, number]>;
  /** Where all builds stand; absent where each has its own place. */
  readonly set?: ReadonlySignal<number>;
  readonly axis: () => string;
  /** What the sweep rests on. */
  readonly note: () => string;
  /** A place along the sweep, with its unit. */
  readonly inWords: (at: number) => string;
}
