/** What a sheet is made of. */
import type { Build, Project } from '../model/project.ts';
import type { Family } from '../units/format.ts';

/** Which plate theory gave a stack. */
type SheetTheory = 'small-deflection' | 'large-deflection' | 'port-periodic';

export type SheetTheories = Readonly<Record<'compression' | 'rebound', SheetTheory>> & { readonly base?: SheetTheory };

/** Forces of one build at `SHEET_SPEEDS_M_S`, or why there are none. */
export type SheetCurve =
  | {
      readonly status: 'solved';
      /** Positive in compression [m/s]. */
      readonly shaftSpeed_m_s: readonly number[];
      /** Whole force at the shaft [N], positive in compression; null where a speed did not solve. */
      readonly force_N: readonly (number | null)[];
      /** Why some did not solve, each once. */
      readonly reasons: readonly string[];
      readonly theories: SheetTheories;
    }
  | { readonly status: 'failed'; readonly reason: string }
  | { readonly status: 'solving' };

/** A way back to the build. */
export interface SheetLink {
  /** Of the bench, with the build in its fragment; or the fragment alone where no address is known. */
  readonly address: string;
  readonly isWhole: boolean;
}

export interface SheetInput {
  readonly project: Project;
  /** Of the project. */
  readonly build: Build;
  /** Of the project; the build itself where the sheet is that of the baseline. */
  readonly baseline: Build;
  /** Whose units stand first. */
  readonly family: Family;
  readonly curves: { readonly build: SheetCurve; readonly baseline: SheetCurve };
  /** When absent the build is too long for a link. */
  readonly link?: SheetLink;
}

const MAGNITUDES = [0.01, 0.02, 0.05, 0.075, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.4, 1.6, 1.8, 2];

/** The speeds of the curve on a sheet, both ways, rising [m/s]. */
export const SHEET_SPEEDS_M_S: readonly number[] = [...[...MAGNITUDES].reverse().map((v) => -v), ...MAGNITUDES];

/** The speeds of its table, each way [m/s]. */
export const TABLE_SPEEDS_M_S: readonly number[] = [0.05, 0.1, 0.3, 1, 2];

/** The force at one of the speeds; undefined where there is none. */
export function forceAt(curve: SheetCurve, speed_m_s: number): number | undefined {
  if (curve.status !== 'solved') return undefined;
  return curve.force_N[curve.shaftSpeed_m_s.indexOf(speed_m_s)] ?? undefined;
}
