/** How the force of the build on show scatters when it is built and filled, and what that comes from. */
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { selectedBuild } from '../app/store.ts';
import { SpeedSlider } from '../charts/speed-slider.tsx';
import { text } from '../text/en.ts';
import { ShareTable } from './share-table.tsx';
import { ToleranceForm } from './tolerance-form.tsx';
import { standingNow, ToleranceRun } from './tolerance-run.tsx';
import { shownStudy } from './tolerance-solve.ts';
import { bandInWords, lackInWords, verdictInWords } from './tolerance-words.ts';
import './tolerance.css';

const words = text.tolerance;

function Answer(): JSX.Element {
  const { stale } = shownStudy.value;
  const [told, band, lack] = [verdictInWords(), bandInWords(), lackInWords()];
  return (
    <div class={stale ? 'tolerance-answer stale' : 'tolerance-answer'}>
      {stale && <p class="caution-text">{words.stale}</p>}
      <p class="tolerance-verdict">{told ? told.first : words.nothing}</p>
      {band && <p>{band}</p>}
      {told && <p>{told.rest}</p>}
      {lack && <p class="caution-text">{lack}</p>}
    </div>
  );
}

export function ToleranceView(): JSX.Element {
  const { study, stale } = shownStudy.value;
  return (
    <div
      class="tolerance"
      style={{ '--build': lineOf(selectedBuild.value.id).colour }}
      data-tolerances={stale ? 'stale' : standingNow()}
    >
      <SpeedSlider />
      {study && <Answer />}
      <ToleranceRun />
      <div class="tolerance-columns">
        {study && <ShareTable />}
        <ToleranceForm />
      </div>
    </div>
  );
}
