/** One case opened: every quantity, what each may deviate and why, notes, and the source as its text stands. */
import type { JSX } from 'preact';
import type { CaseReport, JudgedCase, ReportedQuantity } from '../../../workers/proof-client.ts';
import { proofWords } from '../text/proof.ts';
import { notesOf, readName, reflow, tolerancesOf } from './proof-model.ts';
import { showComputed, showDeviation, showStored, showTolerance } from './proof-numbers.ts';
import { Result, UsedShare } from './used-share.tsx';

const words = proofWords.details;
const MARKS = 'abcdefghijklmnopqrstuvwxyz';

/** `-` stands for a number without a unit. */
const unitOf = (unit: string): string => (unit === '-' ? '' : unit);

interface QuantityRowProps {
  readonly report: JudgedCase;
  readonly quantity: ReportedQuantity;
  /** Letter of its note, if it has one. */
  readonly mark?: string;
}

function QuantityRow({ report, quantity, mark }: QuantityRowProps): JSX.Element {
  const { name, unit, expected, share, passed } = quantity;
  const tolerance = report.tolerances[quantity.tolerance];
  return (
    <tr class={passed ? '' : 'outside'}>
      <th scope="row">
        {readName(name)}
        {mark && (
          <sup>
            <span class="unseen">{words.noteMark(mark)}</span>
            <span aria-hidden="true">{mark}</span>
          </sup>
        )}
      </th>
      <td class="number-col">{showStored(expected)}</td>
      <td class="number-col">{showComputed(quantity)}</td>
      <td>{unitOf(unit)}</td>
      <td class="number-col">{showDeviation(quantity, tolerance)}</td>
      <td class="number-col" title={quantity.tolerance}>
        {showTolerance(tolerance, unit)}
      </td>
      <td>
        <UsedShare share={share} />
      </td>
      <td>
        <Result good={passed} words={passed ? proofWords.cases.within : proofWords.cases.outside} />
      </td>
    </tr>
  );
}

function QuantityTable({ report }: { report: JudgedCase }): JSX.Element {
  const notes = notesOf(report);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls by itself, and keys must reach it.
    <section class="scroller" aria-label={words.quantitiesOf(report.title)} tabIndex={0}>
      <table class="quantities">
        <thead>
          <tr>
            <th scope="col">{words.quantity}</th>
            <th scope="col" class="number-col">
              {words.expected}
            </th>
            <th scope="col" class="number-col">
              {words.computed}
            </th>
            <th scope="col">{words.unit}</th>
            <th scope="col" class="number-col">
              {words.deviation}
            </th>
            <th scope="col" class="number-col">
              {words.tolerance}
            </th>
            <th scope="col">{words.used}</th>
            <th scope="col">{words.result}</th>
          </tr>
        </thead>
        <tbody>
          {report.quantities.map((quantity) => (
            <QuantityRow
              key={quantity.name}
              report={report}
              quantity={quantity}
              mark={quantity.note && MARKS[notes.indexOf(quantity.note)]}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Tolerances({ report }: { report: JudgedCase }): JSX.Element {
  const unitFor = (name: string): string =>
    report.quantities.find(({ tolerance }) => tolerance === name)?.unit ?? proofWords.cases.none;
  return (
    <>
      <h3>{words.tolerances}</h3>
      <dl>
        {tolerancesOf(report).map(({ name, tolerance, quantities }) => (
          <div key={name}>
            <dt>
              {name}: {words.toleranceFor(showTolerance(tolerance, unitFor(name)), quantities)}
            </dt>
            <dd>{tolerance.reason}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

function Notes({ notes }: { notes: readonly string[] }): JSX.Element | null {
  if (notes.length === 0) return null;
  return (
    <div class="notes">
      <h3>{words.notes}</h3>
      <ul>
        {notes.map((note, i) => (
          <li key={note}>
            <sup>{MARKS[i]}</sup> {note}
          </li>
        ))}
      </ul>
    </div>
  );
}

export function CaseDetails({ report }: { report: CaseReport }): JSX.Element {
  if (report.status === 'unreadable') {
    return <p class="case-failure">{proofWords.cases.unreadableWhy(report.reason)}</p>;
  }
  return (
    <>
      {report.failure !== undefined && <p class="case-failure">{proofWords.cases.failure(report.failure)}</p>}
      <QuantityTable report={report} />
      <div class="case-words">
        <div>
          <h3>{words.source}</h3>
          <p class="source">{reflow(report.source)}</p>
          <p class="hint">
            {words.kind(proofWords.kinds[report.kind], proofWords.kindsWhy[report.kind])} {words.stored(report.folder)}
          </p>
        </div>
        <div>
          <Notes notes={notesOf(report)} />
          <Tolerances report={report} />
        </div>
      </div>
    </>
  );
}
