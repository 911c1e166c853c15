/** The changes of a build that an aim is made of: how much, in which direction, at which speeds. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { ForceChange } from '../../model/project.ts';
import { SelectField } from '../panels/select-field.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { aimWords } from '../text/aim.ts';

const words = aimWords.make;
const DIRECTIONS = ['both', 'compression', 'rebound'] as const;
const RANGES = ['above', 'below', 'all'] as const;
const MAX_CHANGES = 20;

const START: ForceChange = { direction: 'both', range: 'above', speed_m_s: 1, change_percent: 15 };
export const changes = signal<readonly ForceChange[]>([START]);

const change = (at: number, part: Partial<ForceChange>): void => {
  changes.value = changes.value.map((each, i) => (i === at ? { ...each, ...part } : each));
};

function ChangeRow({ of: { direction, range, speed_m_s, change_percent }, at }: { of: ForceChange; at: number }) {
  return (
    <fieldset class="part change-row" data-change={at}>
      <ViewField
        label={words.amount}
        kind="percent"
        value={change_percent}
        holds={(value) => value >= -100 && value <= 1000}
        wanted={words.wantedPercent}
        onValue={(value) => change(at, { change_percent: value })}
      />
      <SelectField
        label={words.direction}
        options={DIRECTIONS}
        chosen={direction}
        name={(each) => aimWords.aims.ways[each]}
        onChoose={(each) => change(at, { direction: each })}
      />
      <SelectField
        label={words.range}
        options={RANGES}
        chosen={range}
        name={(each) => words.ranges[each]}
        onChoose={(each) => change(at, { range: each })}
      />
      {range !== 'all' && (
        <ViewField
          label={words.speed}
          kind="speed"
          value={speed_m_s}
          holds={(value) => value > 0 && value <= 100}
          wanted={words.wantedSpeed}
          onValue={(value) => change(at, { speed_m_s: value })}
        />
      )}
      {changes.value.length > 1 && (
        <button
          type="button"
          class="button"
          onClick={() => {
            changes.value = changes.value.filter((_, i) => i !== at);
          }}
        >
          {words.removeChange(at + 1)}
        </button>
      )}
    </fieldset>
  );
}

export const ChangeRows = (): JSX.Element => (
  <>
    {changes.value.map((each, at) => (
      <ChangeRow key={at} of={each} at={at} />
    ))}
    <button
      type="button"
      class="button"
      disabled={changes.value.length >= MAX_CHANGES}
      onClick={() => {
        changes.value = [...changes.value, { ...START, direction: 'rebound', range: 'below', speed_m_s: 0.2 }];
      }}
    >
      {words.addChange}
    </button>
  </>
);
