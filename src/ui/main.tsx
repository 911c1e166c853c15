/** Opens the bench: what is kept on this machine, or the demo project. */
import { render } from 'preact';
import { startBands } from './app/band-solve.ts';
import { demoProject } from './app/demo.ts';
import { listenToKeys } from './app/keys.ts';
import { watchStale } from './app/long-stale.ts';
import { keepPreferences } from './app/preferences.ts';
import { loadParser } from './app/quantities.ts';
import { startSolving } from './app/solve.ts';
import { type Opened, startWith } from './app/store.ts';
import { startWaves } from './app/wave-solve.ts';
import { startLessons } from './lessons/result.ts';
import { startFitChoices } from './measured/fit-choices.ts';
import { startFitted } from './measured/fitted-solve.ts';
import { startOffline } from './offline/updates.ts';
import { followLinks } from './projects/sharing.ts';
import { Shell } from './shell/shell.tsx';
import { startAccess } from './storage/access.ts';
import { setBasis, startAutosave } from './storage/autosave.ts';
import { readKept } from './storage/opening.ts';
import './style/index.css';

/** The demo is kept from its first edit on. */
function newDemo(): Opened {
  const first = { id: crypto.randomUUID(), project: demoProject() };
  setBasis(first.id, { revision: 0, head: 0, document: first.project });
  return first;
}

async function open(): Promise<void> {
  keepPreferences();
  listenToKeys();
  const first = (await readKept()) ?? newDemo();
  startWith(first.project, first.id);
  startSolving();
  watchStale();
  startWaves();
  startBands();
  startFitChoices();
  startFitted();
  startLessons();
  startAutosave();
  startAccess();
  followLinks();
  render(<Shell />, document.getElementById('app') as HTMLElement);
  await loadParser();
  startOffline();
}

void open();
