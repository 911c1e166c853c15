/** The teardown record: steps in the order in which the damper comes apart, what is missing, and the sheet to print. */
import type { JSX } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import { baseline, place, selectBuild, selectedBuild, showPlace } from '../app/store.ts';
import { PageHead } from '../shell/page-head.tsx';
import { recordWords as words } from '../text/record.ts';
import { MissingView } from './missing-view.tsx';
import { RecordSheet } from './record-sheet.tsx';
import { type RecordView, view } from './record-state.ts';
import { StepRail } from './step-rail.tsx';
import { StepView } from './step-view.tsx';
import { STACK_OF } from './steps.ts';
import './record.css';

/** The forms of the bench work on the build and stack on show: here that is the baseline, and the stack of the step. */
function useBaselineOnShow(now: RecordView): void {
  useLayoutEffect(() => {
    const [build, stack] = [selectedBuild.peek().id, place.peek()];
    return () => {
      selectBuild(build);
      showPlace(stack);
    };
  }, []);
  const stack = now === 'missing' || now === 'sheet' ? undefined : STACK_OF[now];
  const { id } = baseline.value;
  useLayoutEffect(() => {
    selectBuild(id);
    if (stack) showPlace(stack);
  }, [id, stack]);
}

function View({ of }: { of: RecordView }): JSX.Element {
  if (of === 'missing') return <MissingView />;
  if (of === 'sheet') return <RecordSheet />;
  return <StepView key={of} step={of} />;
}

export function RecordPage(): JSX.Element {
  useBaselineOnShow(view.value);
  return (
    <main class="record">
      <PageHead title={words.title}>
        <p class="hint">
          {words.lead} {words.ofBuild(baseline.value.name)}
        </p>
      </PageHead>
      <StepRail />
      <div id="record-view" tabIndex={-1}>
        <View of={view.value} />
      </div>
    </main>
  );
}
