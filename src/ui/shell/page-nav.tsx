/** The way to every page that there is. */
import type { JSX } from 'preact';
import { pageWords as words } from '../text/pages.ts';
import { currentPage } from './current-page.ts';
import { PAGES } from './pages.ts';

export function PageNav({ onFollow }: { onFollow?: () => void }): JSX.Element {
  return (
    <nav class="pages" aria-label={words.nav}>
      {PAGES.map(({ id }) => (
        <a
          key={id}
          href={`#${id}`}
          title={words.pages[id].why}
          aria-current={currentPage.value.id === id ? 'page' : undefined}
          onClick={onFollow}
        >
          {words.pages[id].name}
        </a>
      ))}
    </nav>
  );
}
