/** Writes shims as a list that a person can read and parseShimList reads back exactly. */
import { countOf } from './expand-shims.ts';
import type { ShimRow } from './project.ts';
import { parseShimList } from './shim-list.ts';
import { writeFeatures } from './shim-list-features.ts';

const write = (row: ShimRow, unit: string): string =>
  `${countOf(row)} x ${row.outerDiameter_mm}${unit} x ${row.thickness_mm}${unit}${writeFeatures(row)}`;

function readsBack(line: string, row: ShimRow): boolean {
  const { rows, faults } = parseShimList(line);
  const [read] = rows;
  if (faults.length > 0 || rows.length !== 1) return false;
  return (
    read.outerDiameter_mm === row.outerDiameter_mm &&
    read.thickness_mm === row.thickness_mm &&
    read.count === countOf(row)
  );
}

/** `3 x 30 x 0.15` or `1 x 24 x 0.3 ring 20`, one row a line, in millimetres; units are written only where the sizes alone would be misread. */
export function formatShimList(rows: readonly ShimRow[]): string {
  return rows
    .map((row) => {
      const plain = write(row, '');
      return readsBack(plain, row) ? plain : write(row, ' mm');
    })
    .join('\n');
}
