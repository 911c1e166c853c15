/** Opens what is kept: on start the project of this tab, later any other. */
import { encodeProject } from '../../model/codec.ts';
import { tell } from '../app/notices.ts';
import { type Opened, replaceProject } from '../app/store.ts';
import { text } from '../text/en.ts';
import { keeping } from '../text/keeping.ts';
import { flush, readText, setBasis } from './autosave.ts';
import { withDb } from './connection.ts';
import { download } from './download.ts';
import { findLeft, type Leaving } from './leaving.ts';
import { nameIn } from './lift-single-project.ts';
import { removeDeletedPhotos } from './photos.ts';
import { remembered } from './remembered.ts';
import { listProjects, removeLongDeleted, setDeleted } from './shelf.ts';
import { readNewest, saveState } from './states.ts';
import type { KeepingDb } from './stores.ts';
import { tellTabs } from './tabs.ts';

/** The project kept on this machine that this tab showed last, or else the one changed last. */
export async function readKept(): Promise<Opened | undefined> {
  return withDb(async (db) => {
    await takeUpLeft(db);
    await removeLongDeleted(db, Date.now());
    await removeDeletedPhotos(db, Date.now());
    const kept = (await listProjects(db)).filter(({ deletedAt }) => deletedAt === undefined).map(({ id }) => id);
    const wanted = remembered().filter((id) => kept.includes(id));
    for (const id of new Set([...wanted, ...kept])) {
      const opened = await readProject(db, id);
      if (opened) return opened;
    }
    return undefined;
  });
}

async function readProject(db: KeepingDb, id: string): Promise<Opened | undefined> {
  const { record, document, unreadable } = await readNewest(db, id, readText);
  if (unreadable.length > 0) tellUnreadable(unreadable[0], document !== undefined);
  if (!record || !document) return undefined;
  setBasis(id, { revision: record.revision, head: record.head, document });
  return { id, project: document };
}

/** Puts a kept project on the bench; undo brings the one before it back. @returns whether it could be read */
export async function openKept(id: string): Promise<boolean> {
  const opened = await withDb((db) => readProject(db, id));
  if (!opened) return false;
  replaceProject(opened.project, text.bar.openLabel(opened.project.name), id);
  return true;
}

/** Marks a project that is not open as deleted, once its last edits are saved. */
export async function putAway(id: string): Promise<void> {
  await flush(id);
  await withDb((db) => setDeleted(db, id, Date.now()));
  tellTabs({ kind: 'shelf-changed', project: id });
}

function tellUnreadable(saved: string, hasOlder: boolean): void {
  tell(hasOlder ? text.notices.keptAsideOlder : text.notices.keptAside, {
    tone: 'problem',
    action: { label: text.notices.downloadKept, run: () => download('kept-aside.shimwright.json', saved) },
  });
}

async function takeUpLeft(db: KeepingDb): Promise<void> {
  for (const { work, forget } of findLeft()) {
    await takeUp(db, 'id' in work ? work : await fromSingle(db, work.projectText));
    forget();
  }
}

/** Left by version 1, which kept one project: it belongs to the one that became of it. */
async function fromSingle(db: KeepingDb, projectText: string): Promise<Leaving> {
  const [newest] = await listProjects(db);
  const { id = crypto.randomUUID(), revision: basis = 0 } = newest ?? {};
  return { id, basis, name: nameIn(projectText), note: '', projectText };
}

async function takeUp(db: KeepingDb, left: Leaving): Promise<void> {
  const savedAt = Date.now();
  const saved = await saveState(db, { ...left, savedAt });
  if (saved.kind === 'saved') return tellTabs({ kind: 'saved', project: left.id });
  const document = readText(left.projectText);
  const name = keeping.forkName(left.name);
  const projectText = document ? encodeProject({ ...document, name }) : left.projectText;
  await saveState(db, { ...left, id: crypto.randomUUID(), basis: 0, name, projectText, savedAt });
  tell(keeping.access.forkedLeft(left.name, name), { tone: 'problem' });
}
