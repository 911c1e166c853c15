/** The best stacks found so far, as cards in their order. */
import type { JSX } from 'preact';
import { project } from '../app/store.ts';
import { searchWords as words } from '../text/search.ts';
import { shownStudy } from './draft.ts';
import { FoundCard } from './found-card.tsx';
import { NothingFound } from './nothing-found.tsx';
import { PresentLine } from './present-line.tsx';
import { ranked, study } from './run.ts';
import { isCurrent } from './study.ts';

export function Results(): JSX.Element {
  const of = shownStudy.value;
  const found = ranked.value;
  return (
    <section class="sheet results" aria-label={words.results} id="found" tabIndex={-1}>
      <header>
        <h2>{words.results}</h2>
        {of && <span class="hint">{words.about(of.aimName, of.project.builds[0].name)}</span>}
      </header>
      {study.value && !isCurrent(study.value, project.value) && <p class="caution-text edited">{words.edited}</p>}
      {of?.present && <PresentLine of={of} present={of.present} />}
      {found.length === 0 || !of ? (
        <NothingFound />
      ) : (
        <ol class="found">
          {found.map((each, i) => (
            <FoundCard key={JSON.stringify(each.shims)} of={of} found={each} rank={i + 1} />
          ))}
        </ol>
      )}
    </section>
  );
}
