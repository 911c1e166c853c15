/** Written lists in and out: paste with a preview, copy as text. */
import type { JSX } from 'preact';
import { formatShimList } from '../../model/format-shim-list.ts';
import { type ParsedShimList, parseShimList } from '../../model/shim-list.ts';
import { faultInWords } from '../app/apply.ts';
import { isAssumed } from '../app/assumed-parts.ts';
import { withList } from '../app/blank-project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { tell } from '../app/notices.ts';
import { place, project, selectedBuild, selectedValving } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { text } from '../text/en.ts';
import { WrittenList } from './written-list.tsx';

const faultLines = ({ faults }: ParsedShimList): string[] =>
  faults.map((fault) => `${fault.path}: ${faultInWords(fault).message}`);

/** Replaces the stack by a written list; a list with a fault changes nothing. */
export function pasteRows(written: string): boolean {
  const list = parseShimList(written);
  if (list.faults.length > 0) {
    tell(text.stack.notPasted, { tone: 'problem', details: faultLines(list) });
    return false;
  }
  const isFollowed = isAssumed(project.value, place.value);
  const edit = () => withList(project.value, selectedBuild.value.id, place.value, [...list.rows]);
  if (!editOrTell(edit, text.stack.pasteLabel)) return false;
  const details = isFollowed && place.value !== 'baseCompression' ? [text.blank.fitted] : [];
  tell(text.stack.pasted(list.rows.length), { details, action: undoAct() });
  return true;
}

export async function copyList(): Promise<void> {
  const list = formatShimList(selectedValving.value.shims);
  try {
    await navigator.clipboard.writeText(list);
    tell(text.stack.copied, { details: list.split('\n') });
  } catch {
    tell(text.stack.copyFailed, { tone: 'problem', details: list.split('\n') });
  }
}

export const PasteBox = ({ onClose }: { onClose: () => void }): JSX.Element => (
  <WrittenList
    title={text.stack.pasteTitle}
    hint={text.stack.pasteHint}
    apply={text.stack.pasteApply}
    cancel={text.stack.pasteCancel}
    onApply={pasteRows}
    onClose={onClose}
  />
);
