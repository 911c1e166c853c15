/** Keys of the whole page: undo and redo, where no text is being edited by the browser's own undo. */
import { redoEdit, redoLabel, undoEdit, undoLabel } from './store.ts';

const isWriting = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && target.value !== target.defaultValue);

export function listenToKeys(): void {
  document.addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const redo = key === 'y' || (key === 'z' && event.shiftKey);
    if ((key !== 'z' && key !== 'y') || isWriting(event.target)) return;
    event.preventDefault();
    if (redo && redoLabel.value !== undefined) redoEdit();
    else if (!redo && undoLabel.value !== undefined) undoEdit();
  });
}
