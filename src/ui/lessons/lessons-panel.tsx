/** The panel of the lessons: their list, or the one that is open. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { lessonsDone } from '../app/preferences.ts';
import { Icon, IconButton } from '../panels/icons.tsx';
import { MENU_BUTTON } from '../shell/bar-menu.tsx';
import { lessonsWords as words } from '../text/lessons.ts';
import { LESSONS } from './catalogue.ts';
import type { Lesson } from './lesson.ts';
import { LessonView } from './lesson-view.tsx';
import { active, isPanelOpen, openLesson } from './session.ts';

export const LESSONS_PANEL = 'lessons';
export const LESSONS_BUTTON = 'lessons-button';

/** The keyboard goes on where the lessons were opened: at their button, or at the menu that holds it. */
function leave(): void {
  isPanelOpen.value = false;
  (document.getElementById(LESSONS_BUTTON) ?? document.getElementById(MENU_BUTTON))?.focus();
}

const isDone = ({ id }: Lesson): boolean => lessonsDone.value.includes(id);

function ListRow({ lesson, n }: { lesson: Lesson; n: number }): JSX.Element {
  return (
    <li>
      <button type="button" class="lesson-pick" data-lesson={lesson.id} onClick={() => openLesson(lesson)}>
        <span class="lesson-number">{n}</span>
        <span>{words.lessons[lesson.id].title}</span>
        {isDone(lesson) && (
          <span class="lesson-done">
            <Icon name="check" />
            {words.done}
          </span>
        )}
      </button>
    </li>
  );
}

function LessonList(): JSX.Element {
  return (
    <div class="lesson-body">
      <p class="hint">{words.intro}</p>
      <ol class="lesson-list" aria-label={words.list}>
        {LESSONS.map((lesson, i) => (
          <ListRow key={lesson.id} lesson={lesson} n={i + 1} />
        ))}
      </ol>
      <p class="hint">{words.doneCount(LESSONS.filter(isDone).length, LESSONS.length)}</p>
    </div>
  );
}

export function LessonsPanel(): JSX.Element | null {
  const head = useRef<HTMLHeadingElement>(null);
  const shown = active.value?.copyId;
  const isOpen = isPanelOpen.value;
  // The keyboard goes on at the head of what was opened.
  useEffect(() => {
    if (isOpen) head.current?.focus();
  }, [isOpen, shown]);
  if (!isOpen) return null;
  const session = active.value;
  return (
    <section class="sheet lessons" id={LESSONS_PANEL} aria-labelledby="lessons-title">
      <header>
        <h2 id="lessons-title" tabIndex={-1} ref={head}>
          {session ? words.lessons[session.lesson.id].title : words.title}
        </h2>
        <IconButton icon="remove" label={words.close} onClick={leave} />
      </header>
      {session ? <LessonView key={session.copyId} session={session} /> : <LessonList />}
    </section>
  );
}
