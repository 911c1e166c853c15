/** A text of the document in a box of one or of several lines. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Project } from '../../model/project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';

interface WordsProps {
  readonly label: string;
  readonly value: string | undefined;
  /** An empty box is no text. */
  readonly edit: (value: string | undefined) => Project;
  readonly rows?: number;
  readonly type?: 'date';
  readonly placeholder?: string;
}

export function WordsField({ label, value = '', edit, rows, type, placeholder }: WordsProps): JSX.Element {
  const id = useId();
  const take = (typed: string): void => {
    editOrTell(() => edit(typed === '' ? undefined : typed), label, `${label}${id}`);
  };
  return (
    <div class={rows ? 'field words-field wide' : 'field words-field'}>
      <label for={id}>{label}</label>
      {rows ? (
        <textarea
          id={id}
          class="words"
          rows={rows}
          placeholder={placeholder}
          value={value}
          onInput={(event) => take(event.currentTarget.value)}
        />
      ) : type === 'date' ? (
        <input id={id} class="words" type="date" value={value} onInput={(event) => take(event.currentTarget.value)} />
      ) : (
        <input
          id={id}
          class="words"
          placeholder={placeholder}
          value={value}
          onInput={(event) => take(event.currentTarget.value)}
        />
      )}
    </div>
  );
}
