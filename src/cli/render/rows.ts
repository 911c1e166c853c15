/** Rows of one result in its three forms: one list of columns makes the table for people, the CSV and the JSON. */
import type { Form } from '../command.ts';
import { csv } from './csv.ts';
import { json } from './json.ts';
import { type Cell, type Heading, textTable } from './text-table.ts';

export interface Column<Item> {
  readonly key: string;
  /** In the table for people; the others are in JSON and CSV only. */
  readonly heading?: Heading;
  readonly read: (item: Item) => Cell;
  /** What the table for people says instead, where JSON and CSV have a name that programs know. */
  readonly words?: (item: Item) => Cell;
}

/** A number or name that a row answers to, as it was asked for, so that the echo is exact. */
export interface Asked {
  readonly key: string;
  readonly heading: Heading;
  readonly value: number | string;
  /** As a remark says it: `0.5 m/s`. */
  readonly words: string;
}

export interface Row<Item> {
  readonly asked: readonly Asked[];
  readonly status: string;
  /** Absent where the solve failed: every column is empty then. */
  readonly item?: Item;
}

/** `at 0.5 m/s, 40 °C` */
export const whereOf = (asked: readonly Asked[]): string => `at ${asked.map(({ words }) => words).join(', ')}`;

/** @param head what stands in the JSON before the points */
export function renderRows<Item>(
  rows: readonly Row<Item>[],
  columns: readonly Column<Item>[],
  head: Readonly<Record<string, unknown>>,
  { values, width }: Form,
): string {
  const asked = rows[0]?.asked ?? [];
  const cells = (row: Row<Item>, reads: readonly ((item: Item) => Cell)[]): Cell[] => [
    ...row.asked.map(({ value }) => value),
    row.status,
    ...reads.map((read) => (row.item === undefined ? null : read(row.item))),
  ];
  const keys = [...asked.map(({ key }) => key), 'status', ...columns.map(({ key }) => key)];
  const whole = rows.map((row) =>
    cells(
      row,
      columns.map(({ read }) => read),
    ),
  );
  if (values.has('csv')) return csv(keys, whole);
  if (values.has('json')) {
    const points = whole.map((row) => Object.fromEntries(keys.map((key, index) => [key, row[index]])));
    return json({ ...head, points });
  }
  const shown = columns.filter(({ heading }) => heading !== undefined);
  const headings = [...asked.map(({ heading }) => heading), 'status', ...shown.map(({ heading = '' }) => heading)];
  return textTable(
    headings,
    rows.map((row) =>
      cells(
        row,
        shown.map(({ read, words }) => words ?? read),
      ),
    ),
    { width, names: asked.length },
  );
}
