/** What can be done with the projects on this machine. */
import { encodeProject } from '../../model/codec.ts';
import type { Layout, Project } from '../../model/project.ts';
import { validateProject } from '../../model/validate.ts';
import { editProject, faultInWords } from '../app/apply.ts';
import { blankProject } from '../app/blank-project.ts';
import { demoProject } from '../app/demo.ts';
import { openAsNew } from '../app/files.ts';
import { openId, project, readOnly, replaceProject } from '../app/store.ts';
import { flush, readText, setBasis } from '../storage/autosave.ts';
import { withDb } from '../storage/connection.ts';
import { download } from '../storage/download.ts';
import { openKept, putAway } from '../storage/opening.ts';
import { copyPhotos } from '../storage/photos.ts';
import { type Aside, removeAside, removeForGood, type ShelfEntry, setDeleted } from '../storage/shelf.ts';
import { readNewest, saveState } from '../storage/states.ts';
import { tellTabs } from '../storage/tabs.ts';
import { text } from '../text/en.ts';
import { keeping } from '../text/keeping.ts';
import type { DemoEntry } from './demos.ts';
import { closeView, refresh, said, shelf } from './shown.ts';

const words = keeping.projects;

const refuse = (message: string): void => {
  said.value = { message, tone: 'problem' };
};

/** Whether another tab has it; its work is then left alone. */
async function isTakenElsewhere({ id, name }: ShelfEntry): Promise<boolean> {
  await refresh();
  const isTaken = id === openId.value ? readOnly.value : shelf.value.isHeld(id);
  if (isTaken) refuse(words.heldElsewhere(name));
  return isTaken;
}

async function done(id: string, message: string, undo?: () => Promise<void>): Promise<void> {
  tellTabs({ kind: 'shelf-changed', project: id });
  said.value = { message, undo: undo && (() => void undo().then(refresh)) };
  await refresh();
}

/** As it is now: on the bench, or as it was saved last. */
async function currentOf({ id, name }: ShelfEntry): Promise<Project | undefined> {
  if (id === openId.value) return project.value;
  const found = await withDb((db) => readNewest(db, id, readText));
  if (found && !found.document) refuse(words.unreadable(name));
  return found?.document;
}

export async function openEntry(entry: ShelfEntry): Promise<void> {
  if (entry.id === openId.value) return closeView();
  if (await openKept(entry.id)) return closeView();
  refuse(words.unreadable(entry.name));
  await refresh();
}

export async function duplicateEntry(entry: ShelfEntry): Promise<void> {
  const source = await currentOf(entry);
  if (!source) return;
  const id = crypto.randomUUID();
  const name = keeping.copyName(source.name);
  const projectText = encodeProject({ ...source, name });
  const save = { id, name, projectText, note: '', basis: 0, savedAt: Date.now() };
  const isKept = await withDb(async (db) => {
    await copyPhotos(db, entry.id, id);
    return saveState(db, save);
  });
  if (isKept) await done(id, words.duplicated(name));
}

export async function renameEntry(entry: ShelfEntry, name: string): Promise<boolean> {
  said.value = undefined;
  if (await isTakenElsewhere(entry)) return false;
  if (entry.id === openId.value) {
    const fault = editProject(() => ({ ...project.value, name }), { label: text.bar.projectName });
    if (fault) refuse(fault.message);
    else await flush(entry.id);
    await refresh();
    return !fault;
  }
  const found = await withDb((db) => readNewest(db, entry.id, readText));
  if (!found?.record || !found.document) {
    refuse(words.unreadable(entry.name));
    return false;
  }
  const renamed = { ...found.document, name };
  const checked = validateProject(renamed);
  if (!checked.ok) {
    refuse(faultInWords(checked.faults[0]).message);
    return false;
  }
  const { revision: basis } = found.record;
  const save = { id: entry.id, name, projectText: encodeProject(renamed), note: text.bar.projectName, basis };
  const saved = await withDb((db) => saveState(db, { ...save, savedAt: Date.now() }));
  if (saved?.kind === 'conflict') refuse(words.heldElsewhere(entry.name));
  if (saved?.kind === 'saved') tellTabs({ kind: 'saved', project: entry.id });
  await refresh();
  return saved?.kind === 'saved';
}

/** The next project takes the place of an open one that is deleted; without any, the demo does. */
async function makeRoomFor({ id, name }: ShelfEntry): Promise<void> {
  for (const next of shelf.value.kept) if (next.id !== id && (await openKept(next.id))) return;
  const demo = { id: crypto.randomUUID(), document: demoProject() };
  setBasis(demo.id, { revision: 0, head: 0, document: demo.document });
  replaceProject(demo.document, words.remove(name), demo.id);
}

export async function removeEntry(entry: ShelfEntry): Promise<void> {
  if (await isTakenElsewhere(entry)) return;
  const wasOpen = entry.id === openId.value;
  if (wasOpen) await makeRoomFor(entry);
  await putAway(entry.id);
  await done(entry.id, words.removed(entry.name), async () => {
    await withDb((db) => setDeleted(db, entry.id, undefined));
    if (wasOpen) await openKept(entry.id);
    said.value = undefined;
  });
}

export async function takeBack(entry: ShelfEntry): Promise<void> {
  await withDb((db) => setDeleted(db, entry.id, undefined));
  await done(entry.id, words.tookBack(entry.name));
}

export async function removeEntryForGood(entry: ShelfEntry): Promise<void> {
  await withDb((db) => removeForGood(db, entry.id));
  await done(entry.id, words.goneForGood(entry.name));
}

export async function startFrom(demo: DemoEntry): Promise<void> {
  const document = await demo.read().catch(() => undefined);
  if (!document) return refuse(words.demoNotFetched(demo.title));
  closeView();
  openAsNew(document, demo.title, words.demoOpened(demo.title));
}

/** A damper of one's own, of which nothing is known yet. */
export function startBlank(layout: Layout): void {
  closeView();
  const name = text.damper.layoutName[layout];
  openAsNew(blankProject(layout), text.blank.label(name), text.blank.opened(name));
}

export const downloadAside = ({ number, projectText }: Aside): void =>
  download(`kept-aside-${number}.shimwright.json`, projectText);

export async function throwAway({ number, project: id }: Aside): Promise<void> {
  await withDb((db) => removeAside(db, number));
  await done(id, words.asideRemoved);
}
