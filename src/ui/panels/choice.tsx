/** One of a few, side by side. */
import type { JSX } from 'preact';

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly options: readonly T[];
  readonly chosen: T;
  readonly name: (option: T) => string;
  readonly title?: (option: T) => string;
  readonly onChoose: (option: T) => void;
}

export function Choice<T extends string>({
  label,
  options,
  chosen,
  name,
  title,
  onChoose,
}: ChoiceProps<T>): JSX.Element {
  return (
    <fieldset class="choice" aria-label={label}>
      {options.map((option) => (
        <button
          key={option}
          type="button"
          aria-pressed={option === chosen}
          aria-label={title?.(option)}
          title={title?.(option)}
          onClick={() => onChoose(option)}
        >
          {name(option)}
        </button>
      ))}
    </fieldset>
  );
}
