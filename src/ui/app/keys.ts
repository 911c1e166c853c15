/** Keys of the whole page: undo and redo of the document. */
import { redoEdit, redoLabel, undoEdit, undoLabel } from './store.ts';

/** A text that is no part of the document yet has the browser's own undo. */
const hasOwnUndo = (target: EventTarget | null): boolean =>
  target instanceof Element && target.closest('.paste-box') !== null;

export function listenToKeys(): void {
  document.addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || hasOwnUndo(event.target)) return;
    const key = event.key.toLowerCase();
    if (key !== 'z' && key !== 'y') return;
    event.preventDefault();
    const forward = key === 'y' || event.shiftKey;
    if (forward && redoLabel.value !== undefined) redoEdit();
    else if (!forward && undoLabel.value !== undefined) undoEdit();
  });
}
