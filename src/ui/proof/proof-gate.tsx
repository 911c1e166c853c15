/** Loads the proof when it is first opened: neither its page nor a case is part of the bench's first load. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { proofGateWords } from '../text/proof-gate.ts';

type Loaded = { readonly name: 'loading' | 'failed' } | { readonly name: 'ready'; readonly Page: () => JSX.Element };

const loaded = signal<Loaded>({ name: 'loading' });

async function load(): Promise<void> {
  if (loaded.value.name === 'ready') return;
  loaded.value = { name: 'loading' };
  try {
    loaded.value = { name: 'ready', Page: (await import('./proof-page.tsx')).ProofPage };
  } catch {
    loaded.value = { name: 'failed' };
  }
}

export function ProofGate(): JSX.Element {
  useEffect(() => {
    void load();
    const toTop = (): void => window.scrollTo(0, 0);
    toTop();
    return toTop;
  }, []);
  const state = loaded.value;
  if (state.name === 'ready') return <state.Page />;
  if (state.name === 'loading') return <p class="opening">{proofGateWords.loading}</p>;
  return (
    <main class="opening">
      <p role="alert">{proofGateWords.notLoaded}</p>
      <p class="group">
        <button type="button" class="button" onClick={() => void load()}>
          {proofGateWords.tryAgain}
        </button>
        <a class="button" href="#bench">
          {proofGateWords.toBench}
        </a>
      </p>
    </main>
  );
}
