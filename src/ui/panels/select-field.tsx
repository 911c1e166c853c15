/** One of several, by name. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { MeasureId } from '../text/measures.ts';
import { LetteredLabel } from './lettered-label.tsx';

interface SelectProps<T extends string | number> {
  readonly label: string;
  readonly options: readonly T[];
  readonly chosen: T;
  readonly name: (option: T) => string;
  readonly onChoose: (option: T) => void;
  /** What it is in the sketch beside it. */
  readonly dimension?: MeasureId;
}

export function SelectField<T extends string | number>(props: SelectProps<T>): JSX.Element {
  const { label, options, chosen, name, onChoose, dimension } = props;
  const id = useId();
  return (
    <div class="field" data-dimension={dimension}>
      <label for={id}>
        <LetteredLabel label={label} dimension={dimension} />
      </label>
      <select
        id={id}
        class="select"
        value={String(chosen)}
        onChange={(event) => {
          const select = event.currentTarget;
          const option = options[select.selectedIndex];
          onChoose(option);
          // A choice that was refused stays as it was.
          select.value = String(chosen);
        }}
      >
        {options.map((option) => (
          <option key={option} value={String(option)}>
            {name(option)}
          </option>
        ))}
      </select>
    </div>
  );
}
