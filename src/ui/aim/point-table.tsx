/** A table of two numbers a row that can be typed into, with rows to add and to take out. */
import type { JSX } from 'preact';
import type { Project } from '../../model/project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { type FieldKind, unitOf } from '../app/quantities.ts';
import { NumberField } from '../panels/number-field.tsx';
import { aimWords } from '../text/aim.ts';

const words = aimWords.table;

export interface Column<Row> {
  readonly key: keyof Row & string;
  readonly label: string;
  readonly kind: FieldKind;
}

interface PointTableProps<Row> {
  readonly caption: string;
  readonly rows: readonly Row[];
  readonly columns: readonly Column<Row>[];
  /** The project with other rows. */
  readonly put: (rows: Row[]) => Project;
  /** What a new row holds. */
  readonly next: (rows: readonly Row[]) => Row;
  /** Rows that must stay. */
  readonly least: number;
}

function Cells<Row extends object>({ row, at, props }: { row: Row; at: number; props: PointTableProps<Row> }) {
  const { rows, columns, put } = props;
  const changed = (key: keyof Row, value: number): Row[] =>
    rows.map((each, i) => (i === at ? { ...each, [key]: value } : each));
  return (
    <>
      {columns.map(({ key, label, kind }) => (
        <td key={key}>
          <NumberField
            bare
            label={words.row(label, at + 1)}
            kind={kind}
            value={row[key] as number}
            edit={(value) => put(changed(key, value))}
          />
        </td>
      ))}
    </>
  );
}

export function PointTable<Row extends object>(props: PointTableProps<Row>): JSX.Element {
  const { caption, rows, columns, put, next, least } = props;
  const remove = (at: number): void => {
    editOrTell(() => put(rows.filter((_, i) => i !== at)), words.remove(at + 1));
  };
  return (
    <div class="point-table">
      <table class="readings">
        <caption class="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ key, label, kind }) => (
              <th key={key} scope="col">
                {label} {unitOf(kind) && <span class="unit">{unitOf(kind)}</span>}
              </th>
            ))}
            <th scope="col">
              <span class="unseen">{words.removeShort}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, at) => (
            <tr key={at}>
              <Cells row={row} at={at} props={props} />
              <td class="row-act">
                <button
                  type="button"
                  class="button"
                  aria-label={words.remove(at + 1)}
                  title={words.remove(at + 1)}
                  disabled={rows.length <= least}
                  onClick={() => remove(at)}
                >
                  ×
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button
        type="button"
        class="button"
        onClick={() => editOrTell(() => put([...rows, next(rows)]), words.addLabel(caption))}
      >
        {words.add}
      </button>
    </div>
  );
}
