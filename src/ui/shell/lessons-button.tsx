/** Unfolds the lessons beside the bench. */
import type { JSX } from 'preact';
import { LESSONS_BUTTON, LESSONS_PANEL } from '../lessons/lessons-panel.tsx';
import { isPanelOpen } from '../lessons/session.ts';
import { lessonsWords as words } from '../text/lessons.ts';

/** @param before called before the panel opens or closes */
export function LessonsButton({ before }: { before?: () => void }): JSX.Element {
  return (
    <button
      type="button"
      class="button"
      id={LESSONS_BUTTON}
      title={words.buttonWhy}
      aria-expanded={isPanelOpen.value}
      aria-controls={isPanelOpen.value ? LESSONS_PANEL : undefined}
      onClick={() => {
        before?.();
        isPanelOpen.value = !isPanelOpen.value;
      }}
    >
      {words.button}
    </button>
  );
}
