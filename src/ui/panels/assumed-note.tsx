/** Says of a part that nobody has measured it yet, until a person says that it is measured. */
import type { JSX } from 'preact';
import type { AssumedPart } from '../../model/project.ts';
import { isAssumed, withMeasured } from '../app/assumed-parts.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';

/** What a group holds in short, and that it is assumed where it is. */
export const inAssumed = (part: AssumedPart, summary: string): string =>
  isAssumed(project.value, part) ? text.damper.assumed.summary(summary) : summary;

export function AssumedNote({ part }: { part: AssumedPart }): JSX.Element | null {
  if (!isAssumed(project.value, part)) return null;
  const { why, measured, measuredLabel } = text.damper.assumed;
  return (
    <div class="sheet-note assumed" data-assumed={part}>
      <p>{why[part]}</p>
      <button
        type="button"
        class="button"
        aria-label={measuredLabel[part]}
        onClick={() => editOrTell(() => withMeasured(project.value, part), measuredLabel[part])}
      >
        {measured}
      </button>
    </div>
  );
}
