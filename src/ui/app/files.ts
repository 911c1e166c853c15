/** Project files in and out: by dialog, by drop, as a download. */
import { decodeProject, encodeProject } from '../../model/codec.ts';
import { MAX_CHARACTERS } from '../../model/json-text.ts';
import type { Project } from '../../model/project.ts';
import type { InputFault } from '../../units/fault.ts';
import { withDb } from '../storage/connection.ts';
import { download, fileNameFor } from '../storage/download.ts';
import { putAway } from '../storage/opening.ts';
import { countPhotos } from '../storage/photos.ts';
import { text } from '../text/en.ts';
import { keeping } from '../text/keeping.ts';
import { faultInWords } from './apply.ts';
import { demoProject } from './demo.ts';
import { tell } from './notices.ts';
import { showNumber } from './quantities.ts';
import { openId, project, replaceProject, undoEdit } from './store.ts';
import { undoAct } from './undo-act.ts';

const SHOWN_FAULTS = 6;

const megabytes = (bytes: number): string => `${showNumber(bytes / 1024 / 1024, 1)} MB`;

function refuse(fileName: string, details: readonly string[]): void {
  const left = details.length - SHOWN_FAULTS;
  const shown = details.slice(0, SHOWN_FAULTS);
  const all = left > 0 ? [...shown, text.notices.moreFaults(left)] : shown;
  tell(text.notices.notOpened(fileName), { tone: 'problem', details: all });
}

const inWords = (fault: InputFault): string => `${fault.path}: ${faultInWords(fault).message}`;

/** Opens a project file, or says what is wrong with it; the open project stays until the new one is whole. */
export async function openFile(file: File): Promise<void> {
  // One character takes up to three bytes: what is larger cannot be within the limit and is not read at all.
  if (file.size > MAX_CHARACTERS * 3)
    return refuse(file.name, [text.notices.tooLarge(megabytes(file.size), megabytes(MAX_CHARACTERS))]);
  const written = await file.text().catch(() => undefined);
  if (written === undefined) return refuse(file.name, [text.notices.unreadable]);
  const decoded = decodeProject(written);
  if (!decoded.ok) return refuse(file.name, decoded.faults.map(inWords));
  openAsNew(decoded.document, text.bar.openLabel(file.name), text.notices.opened(file.name));
}

/** Photos are no part of the file; the person is told how many stay behind. */
export async function saveCopy(): Promise<void> {
  const name = fileNameFor(project.value.name);
  download(name, encodeProject(project.value));
  const left = (await withDb((db) => countPhotos(db, openId.value))) ?? 0;
  tell(text.notices.saved(name), { details: left > 0 ? [keeping.photosLeftOut(left)] : [] });
}

/** A project of its own beside those that are kept; undo goes back to the one before. */
export function openAsNew(document: Project, label: string, message: string): void {
  const id = crypto.randomUUID();
  replaceProject(document, label, id);
  const takeBack = (): void => {
    undoEdit();
    if (openId.value !== id) void putAway(id);
  };
  tell(message, { action: undoAct(takeBack) });
}

export const openDemo = (): void => openAsNew(demoProject(), text.bar.demo, text.notices.demoOpened);
