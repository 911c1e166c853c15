/** The undo that a message offers: of the edit that it tells of, and so for as long as no other edit stands above it. */
import { text } from '../text/en.ts';
import type { NoticeAct } from './notices.ts';
import { lastStep, undoEdit } from './store.ts';

/** Asked right after the edit. */
export function undoAct(run: () => void = undoEdit): NoticeAct {
  const step = lastStep.peek();
  return { label: text.notices.undo, run, isOffered: () => step !== undefined && lastStep.value === step };
}
