/** Shades of lift: ink washed over the sheet, pale where the shim lies and deep where it stands high, one hue so that it prints. */

/** Of the deepest shade, 0 to 1. */
export const shareOfTop = (lift_m: number, top_m: number): number =>
  top_m > 0 ? Math.min(Math.max(lift_m / top_m, 0), 1) : 0;

/** The colour of a share; the style sheet has the two ends and the middle. */
export function liftColour(share: number): string {
  const [from, to, part] =
    share < 0.5 ? ['--lift-low', '--lift-mid', share * 2] : ['--lift-mid', '--lift-high', share * 2 - 1];
  return `color-mix(in srgb, var(${to}) ${(part * 100).toFixed(1)}%, var(${from}))`;
}

export interface ShadedBand {
  /** Where the band begins; none for what lies below the first line. */
  readonly from_m?: number;
  readonly share: number;
}

/** One shade a band between two lines, that of its middle. */
export function shadedBands(levels_m: readonly number[], least_m: number, top_m: number): ShadedBand[] {
  const ends = [...levels_m, top_m];
  const first = { share: shareOfTop((least_m + ends[0]) / 2, top_m) };
  const step = levels_m.length > 1 ? levels_m[1] - levels_m[0] : 0;
  return [first, ...levels_m.map((from_m) => ({ from_m, share: shareOfTop(from_m + step / 2, top_m) }))];
}
