/** The tolerances by their share of the scatter, as a table with bars. */
import type { JSX } from 'preact';
import type { ShareEstimate } from '../../../workers/protocol.ts';
import { show } from '../app/quantities.ts';
import { cursorSpeed, direction, selectedBuild, topSpeed } from '../app/store.ts';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';
import { SORTS, type ToleranceRow } from './scatter-rows.ts';
import { sortedBy, toleranceRows } from './tolerance-rows.ts';
import { clipped, percent } from './tolerance-words.ts';

const words = text.tolerance;

const width = (share: number): string => `${clipped(share) * 100}%`;

function Bar({ first, total }: ShareEstimate): JSX.Element {
  return (
    <span class="share-bar" aria-hidden="true">
      <i class="total" style={{ width: width(total.value) }} />
      <i class="first" style={{ width: width(Math.min(first.value, total.value)) }} />
      <b style={{ left: width(total.low), width: width(clipped(total.high) - clipped(total.low)) }} />
    </span>
  );
}

interface CellProps {
  readonly share: ShareEstimate | undefined;
  readonly name: string;
}

function Cell({ share, name }: CellProps): JSX.Element {
  if (!share) return <td class="number-col">{words.noForce}</td>;
  const { total } = share;
  const [low, high] = [percent(total.low), percent(total.high)];
  return (
    <td class="number-col" data-share={name}>
      {percent(total.value)} {low !== high && <span class="hint">{words.range(low, high)}</span>}
      <Bar {...share} />
    </td>
  );
}

function Row({ row }: { row: ToleranceRow }): JSX.Element {
  return (
    <tr data-row={row.name}>
      <th scope="row">{words.names[row.name]}</th>
      {row.hasPart ? (
        <>
          <Cell share={row.cursor} name="cursor" />
          <Cell share={row.range} name="range" />
        </>
      ) : (
        <td class="number-col hint" colSpan={2}>
          {words.noPart}
        </td>
      )}
    </tr>
  );
}

export function ShareTable(): JSX.Element {
  const way = direction.value === 1 ? text.chart.compression : text.chart.rebound;
  return (
    <section class="tolerance-shares" aria-label={words.title}>
      <header>
        <h3>{words.title}</h3>
        <Choice
          label={words.sort}
          options={SORTS}
          chosen={sortedBy.value}
          name={(each) => words.sorts[each]}
          onChoose={(each) => {
            sortedBy.value = each;
          }}
        />
      </header>
      <table class="readings share-table">
        <caption>{words.caption(selectedBuild.value.name, way)}</caption>
        <thead>
          <tr>
            <th scope="col">{words.column}</th>
            <th scope="col" class="number-col">
              {words.atSpeed(show('speed', cursorSpeed.value))}
            </th>
            <th scope="col" class="number-col">
              {words.overRange(show('speed', topSpeed.value))}
            </th>
          </tr>
        </thead>
        <tbody>
          {toleranceRows.value.map((row) => (
            <Row key={row.name} row={row} />
          ))}
        </tbody>
      </table>
      <p class="hint">{words.legend}</p>
    </section>
  );
}
