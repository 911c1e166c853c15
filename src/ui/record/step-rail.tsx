/** All steps with their state, and what comes after them; on a narrow screen it folds into one line. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { recordWords as words } from '../text/record.ts';
import { type RecordView, showView, stateOf, steps, view } from './record-state.ts';

interface ItemProps {
  readonly of: RecordView;
  readonly name: string;
  readonly state?: ReturnType<typeof stateOf>;
  readonly onGo: () => void;
}

const Item = ({ of, name, state, onGo }: ItemProps): JSX.Element => (
  <li>
    <button
      type="button"
      aria-current={view.value === of ? 'step' : undefined}
      data-view={of}
      data-state={state}
      onClick={() => {
        showView(of);
        onGo();
      }}
    >
      <span>{name}</span>
      {state && <span class={state === 'open' ? 'unseen' : 'state'}>{words.states[state]}</span>}
    </button>
  </li>
);

export function StepRail(): JSX.Element {
  const isOpen = useSignal(false);
  const fold = (): void => {
    isOpen.value = false;
  };
  const states = steps.value.map(stateOf);
  const count = (wanted: string): number => states.filter((state) => state === wanted).length;
  const progress = words.progress(count('done'), count('skipped'), states.length);
  return (
    <nav class="sheet rail" aria-label={words.railLabel}>
      <button
        type="button"
        class="rail-fold"
        aria-expanded={isOpen.value}
        onClick={() => {
          isOpen.value = !isOpen.value;
        }}
      >
        {words.railLabel} <span class="hint">{progress}</span>
      </button>
      <div class={isOpen.value ? 'rail-list open' : 'rail-list'}>
        <p class="hint rail-progress">{progress}</p>
        <ol>
          {steps.value.map((step) => (
            <Item key={step} of={step} name={words.steps[step].name} state={stateOf(step)} onGo={fold} />
          ))}
        </ol>
        <ul>
          <Item of="missing" name={words.missing.name} onGo={fold} />
          <Item of="sheet" name={words.sheet.name} onGo={fold} />
        </ul>
      </div>
    </nav>
  );
}
