import type { Cell } from './text-table.ts';

const field = (cell: Cell): string => {
  const text = cell === null ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** Comma-separated values after RFC 4180, with a header; null is an empty field. */
export const csv = (header: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  [header, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
