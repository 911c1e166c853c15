/** What each row of a stack is for, told from its place and size alone. */
import type { ShimRow } from '../../model/project.ts';

export type Role = 'face' | 'crossover' | 'taper' | 'clamp';

/**
 * Face: the rows at the piston of the face diameter. Crossover: smaller, with something larger above it, so that the next
 * stage waits. Clamp: the last row, when it is the smallest. Taper: everything between.
 */
export function rolesOf(rows: readonly ShimRow[]): Role[] {
  const firstOther = rows.findIndex((row) => row.outerDiameter_mm !== rows[0].outerDiameter_mm);
  const faces = firstOther === -1 ? rows.length : firstOther;
  const smallest = Math.min(...rows.map((row) => row.outerDiameter_mm));
  return rows.map((row, i) => {
    if (i < faces) return 'face';
    if (rows.slice(i + 1).some((above) => above.outerDiameter_mm > row.outerDiameter_mm)) return 'crossover';
    return i === rows.length - 1 && row.outerDiameter_mm === smallest ? 'clamp' : 'taper';
  });
}
