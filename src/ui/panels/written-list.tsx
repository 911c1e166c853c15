/** A form for a written list of shims: faults at their lines while it is typed, and nothing taken in until there are none. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { parseShimList } from '../../model/shim-list.ts';
import { faultInWords } from '../app/apply.ts';

interface WrittenListProps {
  readonly title: string;
  readonly hint: string;
  readonly apply: (rows: number) => string;
  readonly cancel: string;
  /** @returns whether it was taken in, which closes the form */
  readonly onApply: (written: string) => boolean;
  readonly onClose: () => void;
}

const MOST_FAULTS = 5;

export function WrittenList({ title, hint, apply, cancel, onApply, onClose }: WrittenListProps): JSX.Element {
  const id = useId();
  const written = useSignal('');
  const box = useRef<HTMLTextAreaElement>(null);
  useLayoutEffect(() => box.current?.focus(), []);
  const { rows, faults } = parseShimList(written.value);
  return (
    <form
      class="paste-box"
      onSubmit={(event) => {
        event.preventDefault();
        if (onApply(written.value)) onClose();
      }}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <label for={id}>{title}</label>
      <p class="hint" id={`${id}-hint`}>
        {hint}
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
        {faults.slice(0, MOST_FAULTS).map((fault) => (
          <li key={fault.path} class="fault">
            {`${fault.path}: ${faultInWords(fault).message}`}
          </li>
        ))}
      </ul>
      <div class="stack-acts">
        <button type="submit" class="button" disabled={rows.length === 0 || faults.length > 0}>
          {apply(rows.length)}
        </button>
        <button type="button" class="button" onClick={onClose}>
          {cancel}
        </button>
      </div>
    </form>
  );
}
