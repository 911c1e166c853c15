/** Written lists in and out: paste with a preview, copy as text. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { formatShimList } from '../../model/format-shim-list.ts';
import { type ParsedShimList, parseShimList } from '../../model/shim-list.ts';
import { faultInWords } from '../app/apply.ts';
import { isAssumed } from '../app/assumed-parts.ts';
import { withList } from '../app/blank-project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { tell } from '../app/notices.ts';
import { place, project, selectedBuild, selectedValving, undoEdit } from '../app/store.ts';
import { text } from '../text/en.ts';

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
  tell(text.stack.pasted(list.rows.length), { details, action: { label: text.notices.undo, run: undoEdit } });
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

export function PasteBox({ onClose }: { onClose: () => void }): JSX.Element {
  const id = useId();
  const written = useSignal('');
  const box = useRef<HTMLTextAreaElement>(null);
  useLayoutEffect(() => box.current?.focus(), []);
  const list = parseShimList(written.value);
  const faults = faultLines(list);
  return (
    <form
      class="paste-box"
      onSubmit={(event) => {
        event.preventDefault();
        if (pasteRows(written.value)) onClose();
      }}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <label for={id}>{text.stack.pasteTitle}</label>
      <p class="hint" id={`${id}-hint`}>
        {text.stack.pasteHint}
      </p>
      <textarea
        ref={box}
        id={id}
        class="words"
        rows={5}
        aria-describedby={`${id}-hint ${id}-faults`}
        value={written.value}
        onInput={(event) => {
          written.value = event.currentTarget.value;
        }}
      />
      <ul id={`${id}-faults`} aria-live="polite">
        {faults.slice(0, 5).map((fault) => (
          <li key={fault} class="fault">
            {fault}
          </li>
        ))}
      </ul>
      <div class="stack-acts">
        <button type="submit" class="button" disabled={list.rows.length === 0 || faults.length > 0}>
          {text.stack.pasteApply(list.rows.length)}
        </button>
        <button type="button" class="button" onClick={onClose}>
          {text.stack.pasteCancel}
        </button>
      </div>
    </form>
  );
}
