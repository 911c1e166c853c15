/** Cases, quantities and the worst deviation, field by field and in all. */
import type { JSX } from 'preact';
import type { CaseReport } from '../../../workers/proof-client.ts';
import { proofWords } from '../text/proof.ts';
import { fieldName } from './case-table.tsx';
import { groupByField, readName, type Totals, totalsOf } from './proof-model.ts';
import { Result, UsedShare } from './used-share.tsx';

const words = proofWords.totals;

function TotalsRow({ name, totals }: { name: string; totals: Totals }): JSX.Element {
  const { cases, quantities, casesOutside, worst } = totals;
  return (
    <tr>
      <th scope="row">{name}</th>
      <td class="number-col">{cases}</td>
      <td class="number-col">{quantities}</td>
      <td class="number-col">
        {casesOutside === 0 ? words.none : <Result good={false} words={String(casesOutside)} />}
      </td>
      <td>{worst && <UsedShare share={worst.quantity.share} />}</td>
      <td class="worst-col">{worst && words.of(readName(worst.quantity.name), worst.report.title)}</td>
    </tr>
  );
}

export function TotalsTable({ reports }: { reports: readonly CaseReport[] }): JSX.Element {
  return (
    <table class="totals">
      <thead>
        <tr>
          <th scope="col">{words.field}</th>
          <th scope="col" class="number-col">
            {words.cases}
          </th>
          <th scope="col" class="number-col">
            {words.quantities}
          </th>
          <th scope="col" class="number-col">
            {words.outside}
          </th>
          <th scope="col">{words.worst}</th>
          <th scope="col" class="worst-col">
            {words.worstCase}
          </th>
        </tr>
      </thead>
      <tbody>
        {groupByField(reports).map((group) => (
          <TotalsRow key={group.field} name={fieldName(group.field)} totals={totalsOf(group.reports)} />
        ))}
      </tbody>
      <tfoot>
        <TotalsRow name={words.all} totals={totalsOf(reports)} />
      </tfoot>
    </table>
  );
}
