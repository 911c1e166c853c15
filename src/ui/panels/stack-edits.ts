/** Edits of the stack on show, and keeping the keyboard where the row went. */
import type { Valving } from '../../model/project.ts';
import { editProject } from '../app/apply.ts';
import { moveRow } from '../app/edits.ts';
import { tell } from '../app/notices.ts';
import { activeRow, selectedValving, withValving } from '../app/store.ts';
import { text } from '../text/en.ts';

/** An edit by button: a refusal becomes a message. */
export function editStack(change: (valving: Valving) => Valving, label: string): boolean {
  const fault = editProject(() => withValving(change), { label });
  if (fault) tell(fault.message, { tone: 'problem' });
  return fault === undefined;
}

export const focusCell = (row: number, column: string): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(`[data-cell="${row}:${column}"]`)?.focus());
};

/** Moves a row and, when the keyboard was in it, goes along. */
export function moveWithFocus(from: number, to: number, column?: string): void {
  if (to < 0 || to >= selectedValving.value.shims.length || from === to) return;
  const label = to < from ? text.stack.up(from + 1) : text.stack.down(from + 1);
  if (!editStack((valving) => moveRow(valving, from, to), label)) return;
  activeRow.value = to;
  if (column) focusCell(to, column);
}
