/** The photos of the open project as the page shows them. */
import { signal } from '@preact/signals';
import type { RecordStep } from '../../model/record.ts';
import { tell } from '../app/notices.ts';
import { openId } from '../app/store.ts';
import { connect, troubleOf, withDb } from '../storage/connection.ts';
import { addPhoto, changePhoto, listPhotos, pictureOf } from '../storage/photos.ts';
import type { PhotoRecord } from '../storage/stores.ts';
import { recordWords } from '../text/record.ts';
import { scaled } from './scaled-picture.ts';

const words = recordWords.photos;

export const photos = signal<readonly PhotoRecord[]>([]);

/** Of the project that is open when the answer comes. */
export async function readPhotos(): Promise<void> {
  const id = openId.value;
  const read = await withDb((db) => listPhotos(db, id));
  if (openId.value === id) photos.value = read ?? [];
}

export const readPicture = (id: string): Promise<Blob | undefined> => withDb((db) => pictureOf(db, id));

export async function takeIn(file: File, step: RecordStep): Promise<void> {
  const project = openId.value;
  const picture = await scaled(file).catch(() => undefined);
  if (!picture) return tell(words.unreadable(file.name), { tone: 'problem' });
  const { blob, width, height } = picture;
  const photo = { id: crypto.randomUUID(), project, step, caption: '', takenAt: Date.now(), width, height };
  const db = await connect();
  if (!db) return tell(words.failed, { tone: 'problem' });
  try {
    await addPhoto(db, { ...photo, bytes: blob.size }, blob);
  } catch (error) {
    // Of this photo alone: whether the project can be kept is told where that is tried.
    tell(troubleOf(error) === 'full' ? words.full : words.failed, { tone: 'problem' });
  }
  await readPhotos();
}

export async function setCaption(id: string, caption: string): Promise<void> {
  photos.value = photos.value.map((photo) => (photo.id === id ? { ...photo, caption } : photo));
  await withDb((db) => changePhoto(db, id, { caption }));
}

export async function removePhoto(id: string): Promise<void> {
  const mark = async (deletedAt: number | undefined): Promise<void> => {
    await withDb((db) => changePhoto(db, id, { deletedAt }));
    await readPhotos();
  };
  await mark(Date.now());
  tell(words.removed, { action: { label: words.undo, run: () => void mark(undefined) } });
}
