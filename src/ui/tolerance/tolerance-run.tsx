/** How many samples there are, of how many, and the buttons that stop it and let it go on. */

import type { JSX } from 'preact';
import { errorInWords } from '../app/reasons.ts';
import { SelectField } from '../panels/select-field.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';
import {
  failure,
  goal,
  goOn,
  isPaused,
  isRunning,
  pause,
  SAMPLE_CHOICES,
  sampleGoal,
  samplesDone,
  seed,
  share,
} from './tolerance-solve.ts';

const words = text.tolerance;
const MOST_SEED = 1_000_000;
const isSeed = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= MOST_SEED;

export type Standing = 'failed' | 'paused' | 'solved' | 'solving' | 'waiting';

export function standingNow(): Standing {
  if (failure.value !== undefined) return 'failed';
  if (samplesDone.value >= goal.value && !isRunning.value) return 'solved';
  if (isPaused.value) return 'paused';
  return isRunning.value ? 'solving' : 'waiting';
}

function inWords(standing: Standing): string {
  const [done, all] = [Math.min(samplesDone.value, goal.value), goal.value];
  switch (standing) {
    case 'failed':
      return failure.value ? words.failed(errorInWords(failure.value)) : '';
    case 'solved':
      return words.standing(done, all);
    case 'paused':
      return words.stopped(done, all);
    case 'solving':
      return words.running(done, all);
    case 'waiting':
      return words.waiting;
  }
}

function Act({ standing }: { standing: Standing }): JSX.Element | null {
  if (standing === 'solved') return null;
  const isOn = standing === 'solving' || standing === 'waiting';
  const name = isOn ? words.stop : standing === 'failed' ? words.retry : words.goOn;
  return (
    <button type="button" class="button" onClick={isOn ? pause : goOn}>
      {name}
    </button>
  );
}

/** Without the choices, for places where there is no room for them. */
export function ToleranceProgress(): JSX.Element {
  const standing = standingNow();
  return (
    <div class="tolerance-progress" data-standing={standing}>
      <progress max={1} value={share.value} aria-label={words.progress}>
        {share.value}
      </progress>
      <p class={standing === 'failed' ? 'fault' : 'hint'} role={standing === 'failed' ? 'alert' : undefined}>
        {inWords(standing)}
      </p>
      <Act standing={standing} />
    </div>
  );
}

export function ToleranceRun(): JSX.Element {
  return (
    <div class="tolerance-run">
      <ToleranceProgress />
      <div class="tolerance-choices">
        <SelectField
          label={words.samples}
          options={SAMPLE_CHOICES}
          chosen={sampleGoal.value}
          name={(n) => n}
          onChoose={(n) => {
            sampleGoal.value = n;
          }}
        />
        <ViewField
          label={words.seed}
          title={words.seedWhy}
          kind="count"
          value={seed.value}
          holds={isSeed}
          wanted={words.seedWanted}
          onValue={(value) => {
            seed.value = value;
          }}
        />
      </div>
    </div>
  );
}
