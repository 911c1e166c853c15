/** Shows a page, loading it when it is first opened: what is not the bench is no part of the first load. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { pageWords as words } from '../text/pages.ts';
import type { PageEntry } from './pages.ts';

type Component = () => JSX.Element;

/** Pages that came once, by their ids. */
const loaded = new Map<string, Component>();

const atOnce = ({ id, page }: PageEntry): Component | undefined => (typeof page === 'function' ? page : loaded.get(id));

async function load({ id, page }: PageEntry): Promise<Component> {
  const Page = typeof page === 'function' ? page : await page.load();
  loaded.set(id, Page);
  return Page;
}

function NotLoaded({ name, onRetry }: { name: string; onRetry: () => void }): JSX.Element {
  return (
    <main class="opening">
      <p role="alert">{words.notLoaded(name)}</p>
      <p class="group">
        <button type="button" class="button" onClick={onRetry}>
          {words.tryAgain}
        </button>
        <a class="button" href="#bench">
          {words.toBench}
        </a>
      </p>
    </main>
  );
}

/** Keyed by its entry: another page is another gate. */
export function PageGate({ entry }: { entry: PageEntry }): JSX.Element {
  const ready = useSignal(atOnce(entry));
  const hasFailed = useSignal(false);
  const { name } = words.pages[entry.id];
  const open = async (): Promise<void> => {
    hasFailed.value = false;
    try {
      const Page = await load(entry);
      ready.value = Page;
    } catch {
      hasFailed.value = true;
    }
  };
  useEffect(() => {
    if (!ready.value) void open();
  }, []);
  const Page = ready.value;
  if (Page) return <Page />;
  if (hasFailed.value) return <NotLoaded name={name} onRetry={() => void open()} />;
  return (
    <main class="opening" aria-busy="true">
      <p role="status">{words.opening(name)}</p>
    </main>
  );
}
