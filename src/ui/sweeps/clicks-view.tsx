/** What an adjuster does at the speed cursor, from closed to open. */
import type { JSX } from 'preact';
import { places, showPlace } from '../app/store.ts';
import { SelectField } from '../panels/select-field.tsx';
import { text } from '../text/en.ts';
import { ClickAnswers } from './click-answers.tsx';
import { adjusterName, adjustersShown, clickSweep, sweepAdjuster, sweptAdjuster } from './click-sweep.ts';
import { SweepBoard } from './sweep-board.tsx';

/** The boxes of the needle stand beneath every stack of the piston. */
function goToNeedle(): void {
  showPlace(places.value[0]);
  // The stack comes on show with the next frame.
  requestAnimationFrame(() => {
    const group = document.querySelector<HTMLDetailsElement>('details[data-group=needle]');
    if (!group) return;
    group.open = true;
    group.querySelector('summary')?.focus();
    group.scrollIntoView({ block: 'center' });
  });
}

export function ClickOptions(): JSX.Element | null {
  if (sweptAdjuster.value === undefined) return null;
  return (
    <SelectField
      label={text.sweep.adjuster}
      options={adjustersShown.value}
      chosen={sweptAdjuster.value}
      name={adjusterName}
      onChoose={sweepAdjuster}
    />
  );
}

export function ClicksView(): JSX.Element {
  if (sweptAdjuster.value === undefined) {
    return (
      <div class="no-adjusters">
        <p>{text.sweep.noAdjusters}</p>
        <button type="button" class="button" onClick={goToNeedle}>
          {text.sweep.addNeedle}
        </button>
      </div>
    );
  }
  return (
    <SweepBoard sweep={clickSweep}>
      <ClickAnswers />
    </SweepBoard>
  );
}
