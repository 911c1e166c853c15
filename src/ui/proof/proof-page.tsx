/** The proof: every reference case run in this browser, now, and shown with its source. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { proofWords } from '../text/proof.ts';
import { CaseTable } from './case-table.tsx';
import { FilterBar, KINDS } from './filter-bar.tsx';
import { ProofHead } from './proof-head.tsx';
import { filterReports, NO_FILTER } from './proof-model.ts';
import { reports, startOnce } from './proof-run.ts';
import { RunStatus } from './run-status.tsx';
import { TotalsTable } from './totals-table.tsx';
import './proof.css';

function Introduction(): JSX.Element {
  return (
    <section class="sheet proof-intro" aria-label={proofWords.title}>
      <RunStatus />
      <p>{proofWords.intro}</p>
      <p class="hint">{proofWords.limits}</p>
      <details>
        <summary>{proofWords.kindsTitle}</summary>
        <dl class="kinds">
          {KINDS.map((kind) => (
            <div key={kind}>
              <dt>{proofWords.kinds[kind]}</dt>
              <dd>{proofWords.kindsWhy[kind]}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

function Cases(): JSX.Element {
  const filter = useSignal(NO_FILTER);
  const open = useSignal<ReadonlySet<string>>(new Set<string>());
  const all = reports.value;
  const shown = filterReports(all, filter.value);
  return (
    <>
      <FilterBar filter={filter} open={open} all={all} shown={shown} />
      {shown.length > 0 && <CaseTable reports={shown} open={open} />}
      {all.length > 0 && shown.length === 0 && (
        <p class="nothing-shown">
          {filter.value.onlyOutside ? proofWords.filter.nothingOutside : proofWords.filter.nothing}
        </p>
      )}
    </>
  );
}

export function ProofPage(): JSX.Element {
  useEffect(() => void startOnce(), []);
  return (
    <main class="proof">
      <ProofHead />
      <Introduction />
      <section class="sheet proof-totals" aria-labelledby="proof-totals">
        <header>
          <h2 id="proof-totals">{proofWords.totals.title}</h2>
        </header>
        <TotalsTable reports={reports.value} />
      </section>
      <section class="sheet proof-cases" id="proof-list" aria-labelledby="proof-cases" tabIndex={-1}>
        <header>
          <h2 id="proof-cases">{proofWords.cases.title}</h2>
        </header>
        <Cases />
      </section>
    </main>
  );
}
