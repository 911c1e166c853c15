/** One lesson: what to look at, the question, and the result as it stands. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { Icon } from '../panels/icons.tsx';
import { lessonsWords as words } from '../text/lessons.ts';
import { LESSONS } from './catalogue.ts';
import type { Finding, Verdict } from './check.ts';
import type { Goal, Lesson } from './lesson.ts';
import { SHARED_PARTS } from './parts.ts';
import { isSettled, type Result, result } from './result.ts';
import { findingWords, goalName, goalRange } from './result-words.ts';
import { leaveLesson, neighbour, openLesson, placeOf, type Session } from './session.ts';

const GoalRow = ({ goal }: { goal: Goal }): JSX.Element => (
  <li>
    <span>{goalName(goal)}</span>
    <strong>{goalRange(goal)}</strong>
  </li>
);

const FindingRow = ({ finding }: { finding: Finding }): JSX.Element => (
  <li data-state={finding.state}>
    {goalName(finding.goal)}: <strong>{findingWords(finding)}</strong>
  </li>
);

function VerdictWords({ verdict }: { verdict: Verdict }): JSX.Element {
  const { isMet, findings, strayed, ownIsGone } = verdict;
  return (
    <>
      <p class="lesson-mark">
        {isMet && <Icon name="check" />}
        {isMet ? words.met : words.notYet}
      </p>
      {ownIsGone && <p>{words.ownIsGone}</p>}
      <ul>
        {findings.map((finding, i) => (
          <FindingRow key={i} finding={finding} />
        ))}
      </ul>
      {!ownIsGone && (
        <p data-strayed={strayed.join(' ')}>
          {strayed.length > 0 ? words.strayed(strayed.map((part) => words.parts[part])) : words.nothingStrayed}
        </p>
      )}
    </>
  );
}

function ResultWords({ shown }: { shown: Result | undefined }): JSX.Element {
  if (shown?.state === 'judged') return <VerdictWords verdict={shown.verdict} />;
  return <p>{shown?.state === 'start-failed' ? words.startFailed : words.solving}</p>;
}

function Buttons({ session }: { session: Session }): JSX.Element {
  const { lesson } = session;
  const [previous, next] = [neighbour(lesson.id, -1), neighbour(lesson.id, 1)];
  return (
    <div class="lesson-acts">
      <button type="button" class="button" disabled={!previous} onClick={() => previous && openLesson(previous)}>
        {words.previous}
      </button>
      <button type="button" class="button" disabled={!next} onClick={() => next && openLesson(next)}>
        {words.next}
      </button>
      <button type="button" class="button" onClick={() => openLesson(lesson)}>
        {words.again}
      </button>
      <button type="button" class="button" title={words.leaveWhy} onClick={() => void leaveLesson()}>
        {words.leave}
      </button>
    </div>
  );
}

/** Whether the answer lies in the person's build; in a change to damper, oil or gas the build beside it moves too. */
const isOfBuild = ({ mayChange }: Lesson): boolean => !mayChange.some((part) => SHARED_PARTS.includes(part));

export function LessonView({ session }: { session: Session }): JSX.Element {
  const { lesson } = session;
  const said = words.lessons[lesson.id];
  const shown = result.value;
  const isFolded = useSignal(false);
  const isMet = shown?.state === 'judged' && shown.verdict.isMet;
  return (
    <div class="lesson-body">
      <div class="lesson-place">
        <p class="hint">{words.place(placeOf(lesson.id) + 1, LESSONS.length)}</p>
        <button
          type="button"
          class="button"
          aria-expanded={!isFolded.value}
          onClick={() => {
            isFolded.value = !isFolded.value;
          }}
        >
          {isFolded.value ? words.more : words.less}
        </button>
      </div>
      <div class="lesson-parts">
        <section aria-label={words.steps} hidden={isFolded.value}>
          <h3>{words.steps}</h3>
          <ol class="lesson-steps">
            {said.steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
        </section>
        <section aria-label={words.question}>
          <h3 hidden={isFolded.value}>{words.question}</h3>
          <p hidden={isFolded.value}>{said.question}</p>
          {lesson.goals.some(({ kind }) => kind === 'force') && (
            <p class="hint" hidden={isFolded.value}>
              {isOfBuild(lesson) ? words.measure : words.measureStart}
            </p>
          )}
          <ul class="lesson-goals">
            {lesson.goals.map((goal, i) => (
              <GoalRow key={i} goal={goal} />
            ))}
          </ul>
          <div
            class={`lesson-result ${isMet ? 'met' : ''}`}
            role="status"
            aria-label={words.result}
            data-result={isMet ? 'met' : 'not-yet'}
            data-settled={isSettled.value}
          >
            <ResultWords shown={shown} />
            {isMet && <p>{said.learnt}</p>}
          </div>
        </section>
      </div>
      {!isFolded.value && <Buttons session={session} />}
    </div>
  );
}
