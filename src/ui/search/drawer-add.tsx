/** New sizes for the drawer: one by its numbers, or several as a written list. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { ViewField } from '../panels/view-field.tsx';
import { WrittenList } from '../panels/written-list.tsx';
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

export const PasteSizes = ({ onClose }: { onClose: () => void }): JSX.Element => (
  <WrittenList
    title={words.pasteTitle}
    hint={words.pasteHint}
    apply={words.pasteApply}
    cancel={words.cancel}
    onApply={addList}
    onClose={onClose}
  />
);
