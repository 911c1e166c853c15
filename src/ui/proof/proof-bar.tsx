/** Way back to the bench, the run, its results as files, and the colours. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { isDark, nextTheme } from '../app/preferences.ts';
import { cameFrom } from '../app/route.ts';
import { IconButton, Mark } from '../panels/icons.tsx';
import { download } from '../storage/download.ts';
import { text } from '../text/en.ts';
import { proofWords } from '../text/proof.ts';
import { proofGateWords } from '../text/proof-gate.ts';
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

export function ProofBar(): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (cameFrom.value !== undefined) heading.current?.focus();
  }, []);
  return (
    <header class="bar proof-bar">
      <a class="button" href="#bench">
        {proofGateWords.toBench}
      </a>
      <h1 class="mark" ref={heading} tabIndex={-1}>
        <Mark />
        {proofWords.title}
      </h1>
      <RunButtons />
      <IconButton
        icon={isDark() ? 'dark' : 'light'}
        label={text.bar.themeNow(isDark() ? text.bar.theme.dark : text.bar.theme.light)}
        onClick={nextTheme}
      />
    </header>
  );
}
