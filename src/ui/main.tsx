/** Opens the bench: what is kept on this machine, or the demo project. */
import { render } from 'preact';
import { demoProject } from './app/demo.ts';
import { listenToKeys } from './app/keys.ts';
import { keepPreferences } from './app/preferences.ts';
import { loadParser } from './app/quantities.ts';
import { startSolving } from './app/solve.ts';
import { startWith } from './app/store.ts';
import { Bench } from './bench.tsx';
import { readKept, startAutosave } from './storage/autosave.ts';
import './style/index.css';

async function open(): Promise<void> {
  keepPreferences();
  listenToKeys();
  const kept = await readKept();
  const first = kept ?? demoProject();
  startWith(first);
  startSolving();
  startAutosave(first);
  render(<Bench />, document.getElementById('app') as HTMLElement);
  await loadParser();
}

void open();
