/** Under the chart: which plate theory is asked for, and which one gave what is on show. */
import type { JSX } from 'preact';
import type { TheoryChoice } from '../app/solved.ts';
import { theory } from '../app/store.ts';
import { wavesAwaited } from '../app/wave-solve.ts';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';
import { tab } from './tabs.ts';
import { theoryOnShow } from './theory-on-show.ts';

const CHOICES: readonly TheoryChoice[] = ['auto', 'small-deflection', 'large-deflection', 'port-periodic'];

function Used(): JSX.Element | null {
  const used = theoryOnShow();
  const follows = wavesAwaited.value && tab.value !== 'cycle' && tab.value !== 'effects';
  const isRoundOnly = tab.value === 'effects' && theory.value === 'auto';
  return (
    <p class="theory-used" role="status" data-waves={follows ? 'solving' : 'settled'}>
      {follows ? text.theories.following : used && text.theories.used(used)}
      {isRoundOnly && ` ${text.theories.effects}`}
    </p>
  );
}

export function TheoryFoot(): JSX.Element {
  return (
    <div class="chart-foot">
      <Choice
        label={text.theoryChoice}
        options={CHOICES}
        chosen={theory.value}
        name={(each) => text.theoryShort[each]}
        onChoose={(each) => {
          theory.value = each;
        }}
      />
      <Used />
      <p class="hint">
        {text.theoryHint[theory.value]} {text.chart.estimate}
      </p>
    </div>
  );
}
