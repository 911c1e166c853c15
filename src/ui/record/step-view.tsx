/** One step: what to do, with what, what goes wrong, the boxes beside their sketch, notes, photos, and the way on. */
import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { RecordStep } from '../../model/record.ts';
import { project } from '../app/store.ts';
import { WordsField } from '../panels/words-field.tsx';
import { recordWords as words } from '../text/record.ts';
import { PhotoStrip } from './photo-strip.tsx';
import { markStep, recordOf, showView, stateOf, steps, turns, withStep } from './record-state.ts';
import { StepBody } from './step-body.tsx';

/** The heading takes the keyboard when the person went on to this step. */
function StepTitle({ step }: { step: RecordStep }): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (turns.peek() === 0) return;
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [step]);
  const at = steps.value.indexOf(step) + 1;
  return (
    <header>
      <h2 id="record-step" ref={heading} tabIndex={-1}>
        {words.steps[step].name}
      </h2>
      <span class="hint">{words.stepOf(at, steps.value.length)}</span>
      <span class="tag" data-state={stateOf(step)}>
        {words.states[stateOf(step)]}
      </span>
    </header>
  );
}

function Guide({ step }: { step: RecordStep }): JSX.Element {
  const { act, tools, trap, caution } = words.steps[step];
  return (
    <>
      {caution && (
        <p class="caution-text step-caution" role="note">
          <b>{words.caution}</b> {caution}
        </p>
      )}
      <dl class="guide">
        <dt>{words.act}</dt>
        <dd>{act}</dd>
        <dt>{words.tools}</dt>
        <dd>{tools}</dd>
        <dt>{words.trap}</dt>
        <dd>{trap}</dd>
      </dl>
    </>
  );
}

function Onward({ step }: { step: RecordStep }): JSX.Element {
  const before = steps.value[steps.value.indexOf(step) - 1];
  return (
    <footer class="onward">
      <button type="button" class="button" disabled={!before} onClick={() => before && showView(before)}>
        {words.back}
      </button>
      {stateOf(step) === 'open' ? (
        <button type="button" class="button" onClick={() => markStep(step, 'skipped')}>
          {words.markSkipped}
        </button>
      ) : (
        <button type="button" class="button" onClick={() => markStep(step, undefined)}>
          {words.reopen}
        </button>
      )}
      <button type="button" class="button main" onClick={() => markStep(step, 'done')}>
        {words.markDone}
      </button>
    </footer>
  );
}

export function StepView({ step }: { step: RecordStep }): JSX.Element {
  return (
    <section class="sheet record-step" aria-labelledby="record-step" data-step={step}>
      <StepTitle step={step} />
      <Guide step={step} />
      <div class="step-body">
        <StepBody step={step} />
      </div>
      <WordsField
        label={words.notes}
        rows={2}
        value={recordOf(project.value).steps?.[step]?.notes}
        edit={(notes) => withStep(step, { notes })}
      />
      <PhotoStrip step={step} />
      <Onward step={step} />
    </section>
  );
}
