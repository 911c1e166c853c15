/** Every case on one line, by field; each line opens. */
import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CaseReport, JudgedCase } from '../../../workers/proof-client.ts';
import { proofWords } from '../text/proof.ts';
import { CaseDetails } from './case-details.tsx';
import { groupByField, isOutside, quantitiesOutside, tolerancesOf, worstOf } from './proof-model.ts';
import { showTolerance } from './proof-numbers.ts';
import { Result, UsedShare } from './used-share.tsx';

const words = proofWords.cases;
const COLUMNS = 6;

export const fieldName = (field: string): string => proofWords.fields[field] ?? field;

/** Each tolerance of the case once: `1.5 %, 4 %, ±4.4 MPa`. */
function toleranceSummary(report: JudgedCase): string {
  const shown = tolerancesOf(report).map(({ name, tolerance }) => {
    const quantity = report.quantities.find((each) => each.tolerance === name);
    return showTolerance(tolerance, quantity?.unit ?? '-');
  });
  return [...new Set(shown)].join(', ');
}

function resultWords(report: CaseReport): string {
  if (report.status === 'unreadable') return words.unreadable;
  if (report.failure !== undefined) return words.failed;
  const outside = quantitiesOutside(report);
  return outside === 0 ? words.within : words.outsideOf(outside, report.quantities.length);
}

function JudgedCells({ report }: { report: JudgedCase }): JSX.Element {
  const noted = report.quantities.filter(({ note }) => note !== undefined).length;
  return (
    <>
      <td class="kind-col" title={proofWords.kindsWhy[report.kind]}>
        {proofWords.kinds[report.kind]}
      </td>
      <td class="number-col count-col">{report.quantities.length}</td>
      <td class="tolerance-col">
        {toleranceSummary(report)}
        {noted > 0 && <span class="hint noted">{words.noted(noted)}</span>}
      </td>
      <td>
        <UsedShare share={worstOf(report).share} />
      </td>
    </>
  );
}

function UnreadableCells(): JSX.Element {
  return (
    <>
      <td class="kind-col" />
      <td class="count-col" />
      <td class="tolerance-col" />
      <td />
    </>
  );
}

interface CaseRowsProps {
  readonly report: CaseReport;
  readonly open: Signal<ReadonlySet<string>>;
}

function CaseRows({ report, open }: CaseRowsProps): JSX.Element {
  const { folder } = report;
  const isOpen = open.value.has(folder);
  const detailsId = `case-${folder.replaceAll('/', '-')}`;
  const toggle = (): void => {
    const next = new Set(open.value);
    if (!next.delete(folder)) next.add(folder);
    open.value = next;
  };
  return (
    <>
      <tr class={`case ${isOutside(report) ? 'outside' : ''}`} data-case={folder}>
        <th scope="row">
          <button type="button" class="opener" aria-expanded={isOpen} aria-controls={detailsId} onClick={toggle}>
            {report.status === 'judged' ? report.title : folder}
          </button>
        </th>
        {report.status === 'judged' ? <JudgedCells report={report} /> : <UnreadableCells />}
        <td>
          <Result good={!isOutside(report)} words={resultWords(report)} />
        </td>
      </tr>
      <tr class="details" id={detailsId} hidden={!isOpen}>
        {isOpen && (
          <td colSpan={COLUMNS}>
            <CaseDetails report={report} />
          </td>
        )}
      </tr>
    </>
  );
}

export function CaseTable({ reports, open }: { reports: readonly CaseReport[]; open: CaseRowsProps['open'] }) {
  return (
    <table class="cases">
      <caption class="unseen">{words.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.case}</th>
          <th scope="col" class="kind-col">
            {words.kind}
          </th>
          <th scope="col" class="number-col count-col">
            {words.quantities}
          </th>
          <th scope="col" class="tolerance-col">
            {words.tolerance}
          </th>
          <th scope="col" class="used-col">
            {words.used}
          </th>
          <th scope="col" class="result-col">
            {words.result}
          </th>
        </tr>
      </thead>
      {groupByField(reports).map((group) => (
        <tbody key={group.field}>
          <tr class="field-row">
            <th scope="rowgroup" colSpan={COLUMNS}>
              {fieldName(group.field)}
            </th>
          </tr>
          {group.reports.map((report) => (
            <CaseRows key={report.folder} report={report} open={open} />
          ))}
        </tbody>
      ))}
    </table>
  );
}
