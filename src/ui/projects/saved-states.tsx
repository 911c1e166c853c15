/** The saved states of one project: when, after which edit, what differs from now; restore one, or open it apart. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Project } from '../../model/project.ts';
import { openAsNew } from '../app/files.ts';
import { tell } from '../app/notices.ts';
import { openId, project, readOnly, replaceProject } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { flush, readText } from '../storage/autosave.ts';
import { withDb } from '../storage/connection.ts';
import { openKept } from '../storage/opening.ts';
import { listStates, readNewest } from '../storage/states.ts';
import type { StateRecord } from '../storage/stores.ts';
import { keeping } from '../text/keeping.ts';
import { Act } from './bar.tsx';
import { compareProjects } from './compare-projects.ts';
import { closeView, said, showAll, writeMoment, writeSize } from './shown.ts';

const words = keeping.states;

async function readState({ project: id, revision, savedAt }: StateRecord): Promise<Project | undefined> {
  const document = await withDb(async (db) => readText((await db.get('texts', [id, revision])) ?? ''));
  if (!document) said.value = { message: words.unreadable(writeMoment(savedAt)), tone: 'problem' };
  return document;
}

async function restore(state: StateRecord): Promise<void> {
  const [document, when] = [await readState(state), writeMoment(state.savedAt)];
  if (!document) return;
  if (state.project !== openId.value && !(await openKept(state.project))) return;
  if (readOnly.value) {
    said.value = { message: keeping.access.refused, tone: 'problem' };
    return;
  }
  // What is on the bench now is among the states before anything takes its place.
  await flush(state.project);
  replaceProject(document, words.restoreLabel(when), state.project);
  closeView();
  tell(words.restored(when), { action: undoAct() });
}

async function openApart(state: StateRecord): Promise<void> {
  const [document, when] = [await readState(state), writeMoment(state.savedAt)];
  if (!document) return;
  closeView();
  openAsNew({ ...document, name: keeping.copyName(document.name) }, words.asCopyShort, words.copied(when));
}

async function compare(state: StateRecord): Promise<readonly string[]> {
  const then = await readState(state);
  const isOpen = state.project === openId.value;
  const found = isOpen ? undefined : await withDb((db) => readNewest(db, state.project, readText));
  const now = isOpen ? project.value : found?.document;
  return then && now ? compareProjects(now, then) : [];
}

function StateRow({ state, isNewest }: { state: StateRecord; isNewest: boolean }): JSX.Element {
  const differences = useSignal<readonly string[]>([]);
  const when = writeMoment(state.savedAt);
  const look = async (): Promise<void> => {
    differences.value = await compare(state);
  };
  return (
    <li class="shelf-row" data-revision={state.revision}>
      <p>
        <span>{words.facts(when, writeSize(state.bytes))}</span>
        {isNewest && <span class="tag">{words.newest}</span>}
        {state.note && <span class="hint">{words.after(state.note)}</span>}
      </p>
      <div class="acts">
        <Act label={words.lookShort} name={words.look(when)} onClick={() => void look()} />
        <Act label={words.restoreShort} name={words.restore(when)} onClick={() => void restore(state)} />
        <Act label={words.asCopyShort} name={words.asCopy(when)} onClick={() => void openApart(state)} />
      </div>
      {differences.value.length > 0 && (
        <ul class="hint" role="status">
          {differences.value.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </li>
  );
}

export function SavedStates({ id, name }: { id: string; name: string }): JSX.Element {
  const states = useSignal<readonly StateRecord[]>([]);
  useEffect(() => {
    const read = async (): Promise<void> => {
      await flush(id);
      states.value = (await withDb((db) => listStates(db, id))) ?? [];
    };
    void read();
  }, [id, states]);
  return (
    <section aria-label={words.title(name)}>
      <h3>{words.title(name)}</h3>
      <p class="hint">{words.why}</p>
      <ul class="shelf">
        {states.value.map((state, i) => (
          <StateRow key={state.revision} state={state} isNewest={i === 0} />
        ))}
      </ul>
      <Act label={words.back} onClick={showAll} />
    </section>
  );
}
