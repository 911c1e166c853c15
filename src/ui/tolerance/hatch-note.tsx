/** What the hatched area of the force chart is, how far it is solved, and the way to what it comes from. */
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { selectedBuild } from '../app/store.ts';
import { showTab } from '../charts/tabs.ts';
import { text } from '../text/en.ts';
import { hatchLines } from './hatch-lines.ts';
import { standingNow, ToleranceProgress } from './tolerance-run.tsx';
import './tolerance.css';

const words = text.tolerance;

export function HatchNote(): JSX.Element {
  return (
    <div class="hatch-note" style={{ '--build': lineOf(selectedBuild.value.id).colour }}>
      <p>
        <span class="hatch-sample" aria-hidden="true" /> {hatchLines().join(' ')}
      </p>
      {standingNow() !== 'solved' && <ToleranceProgress />}
      <button type="button" class="button" onClick={() => showTab('tolerance')}>
        {words.open}
      </button>
    </div>
  );
}
