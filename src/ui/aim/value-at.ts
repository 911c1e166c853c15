/** Reading a solved curve between its points. */

/** Between the solved speeds in a straight line. @returns undefined outside them or beside a gap */
export function valueAt(points: readonly (readonly [number, number | null])[], speed: number): number | undefined {
  const after = points.findIndex(([at]) => at >= speed);
  if (after === -1) return undefined;
  const [x2, y2] = points[after];
  if (x2 === speed && y2 !== null) return y2;
  const before = points[after - 1];
  if (!before || before[1] === null || y2 === null) return undefined;
  const [x1, y1] = before;
  return y1 + ((y2 - y1) * (speed - x1)) / (x2 - x1);
}
