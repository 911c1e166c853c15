/** The head of the proof: the run, and its results as files. */
import type { JSX } from 'preact';
import { PageHead } from '../shell/page-head.tsx';
import { download } from '../storage/download.ts';
import { proofWords } from '../text/proof.ts';
import { proofCsv, proofJson } from './proof-export.ts';
import { casesInAll, phase, reports, startRun, stopRun } from './proof-run.ts';

const words = proofWords.run;

/** So that a spreadsheet reads the signs of units as they are. */
const BYTE_ORDER_MARK = '\ufeff';

function saveJson(): void {
  if (!('finished' in phase.value)) return;
  const occasion = {
    finished: phase.value.finished.toISOString(),
    browser: navigator.userAgent,
    cases: casesInAll.value,
  };
  download('shimwright-proof.json', proofJson(reports.value, occasion));
}

const saveCsv = (): void => download('shimwright-proof.csv', BYTE_ORDER_MARK + proofCsv(reports.value), 'text/csv');

function RunButtons(): JSX.Element {
  const isRunning = phase.value.name === 'running';
  const nothingToSave = isRunning || reports.value.length === 0;
  return (
    <div class="group">
      <button type="button" class="button" onClick={isRunning ? stopRun : () => void startRun()}>
        {isRunning ? words.stop : words.again}
      </button>
      <button type="button" class="button" title={words.csvWhy} disabled={nothingToSave} onClick={saveCsv}>
        {words.csv}
      </button>
      <button type="button" class="button" title={words.jsonWhy} disabled={nothingToSave} onClick={saveJson}>
        {words.json}
      </button>
    </div>
  );
}

export const ProofHead = (): JSX.Element => (
  <PageHead title={proofWords.title}>
    <RunButtons />
  </PageHead>
);
