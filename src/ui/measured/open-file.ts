/** Reads the text of a file of a test bench, and opens the dialog for it, which is fetched when first needed. */
import { signal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { tell } from '../app/notices.ts';
import { measuredWords } from '../text/measured.ts';

const words = measuredWords.dialog;

/** Minutes of samples of a fast bench. */
const MOST_BYTES = 30 * 1024 * 1024;

export const ImportDialog = signal<FunctionComponent | undefined>(undefined);

const megabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(1)} MB`;

/** Some benches write in the older code page of their language, which UTF-8 does not read. */
async function textOf(file: File): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

export async function openMeasuredFile(buildId: string, file: File): Promise<void> {
  const refuse = (why: string): void => tell(words.notRead(file.name), { tone: 'problem', details: [why] });
  if (file.size > MOST_BYTES) return refuse(words.tooLarge(megabytes(file.size), megabytes(MOST_BYTES)));
  const content = await textOf(file).catch(() => undefined);
  if (content === undefined || content.includes('\0')) return refuse(words.unreadable);
  const [{ beginReading }, dialog] = await Promise.all([import('./reading.ts'), import('./import-dialog.tsx')]);
  beginReading(buildId, file.name, content);
  ImportDialog.value = dialog.ImportDialog;
}
