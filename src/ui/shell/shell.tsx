/** What every page stands in: top bar, bars about the project, messages, and the page that the address names. */
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect } from 'preact/hooks';
import { isOpen, project } from '../app/store.ts';
import { ImportGate } from '../measured/import-gate.tsx';
import { NoticeList } from '../panels/notice-list.tsx';
import { Bars } from '../projects/bars.tsx';
import { ProjectsView } from '../projects/projects-view.tsx';
import { text } from '../text/en.ts';
import { pageWords as words } from '../text/pages.ts';
import { currentPage } from './current-page.ts';
import { DropVeil } from './drop-veil.tsx';
import { PageGate } from './page-gate.tsx';
import { TopBar } from './top-bar.tsx';

/** The bench is known by its project, so that two tabs are told apart. */
function titleNow(): string {
  const { id } = currentPage.value;
  return words.title(id === 'bench' ? project.value.name || text.bar.unnamed : words.pages[id].name, text.appName);
}

/** How far down each page was left. */
const leftAt = new Map<string, number>();

function usePlaceOnPage(id: string): void {
  useLayoutEffect(() => {
    window.scrollTo(0, leftAt.get(id) ?? 0);
    const remember = (): void => void leftAt.set(id, window.scrollY);
    window.addEventListener('scroll', remember, { passive: true });
    return () => window.removeEventListener('scroll', remember);
  }, [id]);
}

function skip(to: string): void {
  const place = document.getElementById(to);
  place?.focus({ preventScroll: true });
  place?.scrollIntoView();
}

function Pages(): JSX.Element {
  const entry = currentPage.value;
  const title = titleNow();
  usePlaceOnPage(entry.id);
  useEffect(() => {
    document.title = title;
  }, [title]);
  return (
    <>
      <button type="button" class="skip" onClick={() => skip(entry.skipTo)}>
        {words.pages[entry.id].skip}
      </button>
      <TopBar />
      <Bars />
      <PageGate key={entry.id} entry={entry} />
      <ProjectsView />
      <ImportGate />
      <NoticeList />
      <DropVeil />
    </>
  );
}

export const Shell = (): JSX.Element => (isOpen.value ? <Pages /> : <p class="opening">{text.loading}</p>);
