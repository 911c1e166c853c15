/** New sizes for the drawer: one by its numbers, or several as a written list. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { parseShimList } from '../../model/shim-list.ts';
import { faultInWords } from '../app/apply.ts';
import { ViewField } from '../panels/view-field.tsx';
import { drawerWords as words } from '../text/drawer.ts';
import { addList, addToDrawer } from './drawer-edits.ts';

interface Draft {
  readonly outerDiameter_mm?: number;
  readonly thickness_mm?: number;
  readonly count: number;
}

export function AddSize(): JSX.Element {
  const draft = useSignal<Draft>({ count: 1 });
  const { outerDiameter_mm, thickness_mm, count } = draft.value;
  const isWhole = outerDiameter_mm !== undefined && thickness_mm !== undefined;
  const length = (label: string, key: 'outerDiameter_mm' | 'thickness_mm'): JSX.Element => (
    <ViewField
      label={label}
      kind="length"
      value={draft.value[key]}
      holds={(value) => value > 0}
      wanted={words.addWanted}
      onValue={(value) => {
        draft.value = { ...draft.value, [key]: value };
      }}
      onEmpty={() => {
        draft.value = { ...draft.value, [key]: undefined };
      }}
    />
  );
  return (
    <form
      class="add-size"
      aria-label={words.addTitle}
      onSubmit={(event) => {
        event.preventDefault();
        if (isWhole && addToDrawer([{ outerDiameter_mm, thickness_mm, count }]))
          draft.value = { outerDiameter_mm, count };
      }}
    >
      {length(words.diameter, 'outerDiameter_mm')}
      {length(words.thickness, 'thickness_mm')}
      <ViewField
        label={words.count}
        kind="count"
        value={count}
        holds={(value) => Number.isInteger(value) && value >= 1}
        wanted={words.countWanted}
        onValue={(value) => {
          draft.value = { ...draft.value, count: value };
        }}
      />
      <button type="submit" class="button" disabled={!isWhole}>
        {words.add}
      </button>
    </form>
  );
}

export function PasteSizes({ onClose }: { onClose: () => void }): JSX.Element {
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
        if (addList(written.value)) onClose();
      }}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <label for={id}>{words.pasteTitle}</label>
      <p class="hint" id={`${id}-hint`}>
        {words.pasteHint}
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
          <li key={fault.path} class="fault">
            {`${fault.path}: ${faultInWords(fault).message}`}
          </li>
        ))}
      </ul>
      <div class="stack-acts">
        <button type="submit" class="button" disabled={rows.length === 0 || faults.length > 0}>
          {words.pasteApply(rows.length)}
        </button>
        <button type="button" class="button" onClick={onClose}>
          {words.cancel}
        </button>
      </div>
    </form>
  );
}
