/** The pages of the job, in its order. A page is an entry here, with its words in `src/ui/text/pages.ts`. */
import type { JSX } from 'preact';
import { BenchPage } from '../bench.tsx';
import type { PageId } from '../text/pages.ts';

type Component = () => JSX.Element;

export interface PageEntry {
  /** Also the fragment of its address. */
  readonly id: PageId;
  /** Whether the page is about the open project, which the top bar then names and can undo. */
  readonly ofProject: boolean;
  /** Id of the element that the skip button leads to. */
  readonly skipTo: string;
  /** The bench comes with the first load; every other page when it is first opened. */
  readonly page: Component | { readonly load: () => Promise<Component> };
}

const bench: PageEntry = { id: 'bench', ofProject: true, skipTo: 'stack', page: BenchPage };

export const PAGES: readonly PageEntry[] = [
  bench,
  {
    id: 'record',
    ofProject: true,
    skipTo: 'record-view',
    page: { load: async () => (await import('../record/record-page.tsx')).RecordPage },
  },
  {
    id: 'aim',
    ofProject: true,
    skipTo: 'chassis',
    page: { load: async () => (await import('../aim/aim-page.tsx')).AimPage },
  },
  {
    id: 'search',
    ofProject: true,
    skipTo: 'question',
    page: { load: async () => (await import('../search/search-page.tsx')).SearchPage },
  },
  {
    id: 'sheet',
    ofProject: true,
    skipTo: 'build-sheet',
    page: { load: async () => (await import('../sheet/sheet-page.tsx')).SheetPage },
  },
  {
    id: 'proof',
    ofProject: false,
    skipTo: 'proof-list',
    page: { load: async () => (await import('../proof/proof-page.tsx')).ProofPage },
  },
];

export const pageAt = (fragment: string): PageEntry => PAGES.find(({ id }) => id === fragment) ?? bench;
