/** How wide a line may be where the result goes. */

/**
 * `COLUMNS`, as programs of a terminal read it, stands above the terminal's own width.
 * @param terminal columns of the terminal; none, or 0 where it does not know, for a file, a pipe and the like
 * @returns columns; infinity where lines may be of any length
 */
export function screenWidth(setting: string | undefined, terminal: number | undefined): number {
  if (setting !== undefined && /^[1-9]\d*$/.test(setting)) return Number(setting);
  return terminal || Number.POSITIVE_INFINITY;
}
