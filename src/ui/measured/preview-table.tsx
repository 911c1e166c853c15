/** The first rows of the file, with what each column holds and in which unit. */
import type { JSX } from 'preact';
import { QUANTITIES, type Quantity, unitsOf } from '../../measured/mapping.ts';
import { numberIn } from '../../measured/table.ts';
import { measuredWords } from '../text/measured.ts';
import { assign, draft, table } from './reading.ts';

const words = measuredWords.dialog;
const ROWS = 6;

function ColumnHead({ at, name }: { at: number; name: string }): JSX.Element {
  const column = draft.value?.mapping.columns.find((each) => each.at === at);
  const title = words.column(at + 1, name);
  return (
    <th scope="col" class={column ? 'used' : ''}>
      <span class="column-name">{name || at + 1}</span>
      <select
        class="select"
        aria-label={words.holds(title)}
        data-holds={at}
        value={column?.quantity ?? ''}
        onChange={(event) => assign(at, (event.currentTarget.value || undefined) as Quantity | undefined)}
      >
        <option value="">{words.unused}</option>
        {QUANTITIES.map((quantity) => (
          <option key={quantity} value={quantity}>
            {words.quantity[quantity]}
          </option>
        ))}
      </select>
      {column && (
        <select
          class={`select ${column.unit === undefined ? 'wanting' : ''}`}
          aria-label={words.unit(title)}
          data-unit={at}
          value={column.unit ?? ''}
          onChange={(event) => assign(at, column.quantity, event.currentTarget.value || undefined)}
        >
          <option value="">{words.noUnit}</option>
          {unitsOf(column.quantity).map((unit) => (
            <option key={unit} value={unit}>
              {unit}
            </option>
          ))}
        </select>
      )}
    </th>
  );
}

export function PreviewTable(): JSX.Element | null {
  const read = table.value;
  if (!read) return null;
  const used = new Set(draft.value?.mapping.columns.map(({ at }) => at));
  const isBad = (cell: string, at: number): boolean =>
    used.has(at) && Number.isNaN(numberIn(cell, read.settings.decimalMark));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keys
    <section class="preview" aria-label={words.preview} tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            {read.headings.map(({ name }, at) => (
              <ColumnHead key={at} at={at} name={name} />
            ))}
          </tr>
        </thead>
        <tbody>
          {read.rows.slice(0, ROWS).map(({ line, cells }) => (
            <tr key={line}>
              <th scope="row">{line}</th>
              {read.headings.map((_, at) => (
                <td key={at} class={`${used.has(at) ? 'used' : ''} ${isBad(cells[at] ?? '', at) ? 'bad' : ''}`}>
                  {cells[at] ?? ''}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
