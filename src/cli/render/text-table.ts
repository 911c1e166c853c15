/** Columns of a table, numbers to the right; null shows as a dash. */
export type Cell = string | number | boolean | null;

/** Six digits read well in a terminal; the other formats carry them all. */
const DIGITS = 6;

function textOf(cell: Cell): string {
  if (cell === null) return '-';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'number' ? String(Number(cell.toPrecision(DIGITS))) : cell;
}

export function textTable(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const texts = [header, ...rows.map((row) => row.map(textOf))];
  const widths = header.map((_, column) => Math.max(...texts.map((row) => row[column].length)));
  const isText = header.map((_, column) => rows.some((row) => typeof row[column] === 'string'));
  const line = (row: readonly string[]): string =>
    row
      .map((text, column) => (isText[column] ? text.padEnd(widths[column]) : text.padStart(widths[column])))
      .join('  ')
      .trimEnd();
  return `${texts.map(line).join('\n')}\n`;
}
