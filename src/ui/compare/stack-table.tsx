/** One place of two builds as a table: the stack of the one at the left, of the other at the right, each shim drawn to its diameter. */
import type { JSX } from 'preact';
import type { PlacedRow, RowPair } from '../../model/align-rows.ts';
import type { Build, ShimRow } from '../../model/project.ts';
import { showLength } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { compare as words } from '../text/compare.ts';
import { text } from '../text/en.ts';
import type { PlaceComparison } from './comparison.ts';
import { totalInWords } from './comparison-text.ts';
import { riseInWords, shimInWords, wordsOf } from './row-words.ts';
import { bare, write } from './writers.ts';

const largestIn = (pairs: readonly RowPair[]): number =>
  Math.max(
    ...pairs.flatMap((pair) => [
      'before' in pair ? pair.before.row.outerDiameter_mm : 0,
      'after' in pair ? pair.after.row.outerDiameter_mm : 0,
    ]),
  );

interface SideProps {
  readonly placed: PlacedRow | undefined;
  readonly largest_mm: number;
}

/** Half of the shim, out from the axis between the two stacks; the words beside it say the same. */
const Half = ({ row, largest_mm }: { row: ShimRow; largest_mm: number }): JSX.Element => (
  <span class="half" aria-hidden="true" style={{ '--reach': row.outerDiameter_mm / largest_mm }} />
);

function Left({ placed, largest_mm }: SideProps): JSX.Element {
  if (!placed) return <EmptySide />;
  return (
    <>
      <td class="no">{placed.at + 1}</td>
      <td class="shim before">
        <div class="laid">
          <span>{shimInWords(placed.row, write, bare)}</span>
          <Half row={placed.row} largest_mm={largest_mm} />
        </div>
      </td>
    </>
  );
}

function Right({ placed, largest_mm }: SideProps): JSX.Element {
  if (!placed) return <EmptySide />;
  return (
    <>
      <td class="shim after">
        <div class="laid">
          <Half row={placed.row} largest_mm={largest_mm} />
          <span>{shimInWords(placed.row, write, bare)}</span>
        </div>
      </td>
      <td class="no">{placed.at + 1}</td>
    </>
  );
}

const EmptySide = (): JSX.Element => <td colSpan={2} class="empty" />;

function PairRow({ pair, largest_mm }: { pair: RowPair; largest_mm: number }): JSX.Element {
  const { sign, mark, note } = wordsOf(pair, write, bare);
  const isOn = (side: 'before' | 'after'): boolean => pair.mark !== 'moved' || pair.side === side;
  return (
    <tr data-mark={pair.mark}>
      <Left placed={'before' in pair && isOn('before') ? pair.before : undefined} largest_mm={largest_mm} />
      <td class="change">
        <span class="sign" aria-hidden="true">
          {sign}
        </span>
        <span>
          <span class="mark">{mark}</span> {note && <span class="note">{note}</span>}
        </span>
      </td>
      <Right placed={'after' in pair && isOn('after') ? pair.after : undefined} largest_mm={largest_mm} />
    </tr>
  );
}

function Totals({ before, after }: Pick<PlaceComparison, 'before' | 'after'>): JSX.Element {
  return (
    <tfoot>
      <tr>
        <td colSpan={2} class="total">
          {totalInWords(before, showLength)}
        </td>
        <td class="change">{before && after && riseInWords(before, after, showLength)}</td>
        <td colSpan={2} class="total">
          {totalInWords(after, showLength)}
        </td>
      </tr>
    </tfoot>
  );
}

interface StackTableProps {
  readonly compared: PlaceComparison;
  readonly from: Build;
  readonly to: Build;
}

function Head({ from, to }: { from: Build; to: Build }): JSX.Element {
  const number = (build: Build): JSX.Element => (
    <th scope="col" class="no">
      <span aria-hidden="true">{words.columns.numberShort}</span>
      <span class="unseen">{words.columns.number(build.name)}</span>
    </th>
  );
  return (
    <thead>
      <tr>
        {number(from)}
        <th scope="col" class="shim before">
          {from.name}
        </th>
        <th scope="col" class="change">
          {words.columns.mark}
        </th>
        <th scope="col" class="shim after">
          {to.name}
        </th>
        {number(to)}
      </tr>
    </thead>
  );
}

export function StackTable({ compared, from, to }: StackTableProps): JSX.Element {
  const { place, pairs, before, after } = compared;
  const largest_mm = largestIn(pairs);
  return (
    <table class="compare-stack" data-place={place}>
      <caption>{text.placeOf(project.value.damper.layout, place).stack}</caption>
      <Head from={from} to={to} />
      <tbody>
        {pairs.map((pair, index) => (
          <PairRow key={index} pair={pair} largest_mm={largest_mm} />
        ))}
      </tbody>
      <Totals before={before} after={after} />
    </table>
  );
}
