/** Moves names apart that would stand on one another, from the top down. @param wanted rising */
export function spread(wanted: readonly number[], apart: number): number[] {
  let free = Number.NEGATIVE_INFINITY;
  return wanted.map((y) => {
    const row = Math.max(y, free);
    free = row + apart;
    return row;
  });
}
