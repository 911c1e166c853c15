/** The search: what is wanted and what is owned at the side, the curve and the stacks found beside it. */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { PageHead } from '../shell/page-head.tsx';
import { trouble } from '../storage/connection.ts';
import { searchWords as words } from '../text/search.ts';
import { followDraft, shownStudy } from './draft.ts';
import { DrawerPanel } from './drawer-panel.tsx';
import { EffortPanel, LimitsPanel } from './limits-panel.tsx';
import { QuestionPanel } from './question-panel.tsx';
import { Results } from './results.tsx';
import { followProject } from './run.ts';
import { RunBar } from './run-bar.tsx';
import { SearchChart } from './search-chart.tsx';
import './search.css';

export function SearchPage(): JSX.Element {
  useEffect(followProject, []);
  useEffect(followDraft, []);
  const of = shownStudy.value;
  return (
    <main class="search">
      <PageHead title={words.title} quiet />
      <div class="search-side">
        <section class="sheet" aria-label={words.question} id="question" tabIndex={-1}>
          <header>
            <h2>{words.question}</h2>
          </header>
          <QuestionPanel />
          <h3 class="search-part">{words.limits}</h3>
          <LimitsPanel />
          <h3 class="search-part">{words.effort}</h3>
          <EffortPanel />
          <RunBar />
          {trouble.value && <p class="caution-text">{words.notKept}</p>}
        </section>
        <DrawerPanel />
      </div>
      <div class="search-main">
        {of && <SearchChart of={of} />}
        <Results />
      </div>
    </main>
  );
}
