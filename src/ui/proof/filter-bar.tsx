/** Which cases are shown, and whether they stand open. */
import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { CaseKind, CaseReport } from '../../../workers/proof-client.ts';
import { Choice } from '../panels/choice.tsx';
import { proofWords } from '../text/proof.ts';
import { fieldName } from './case-table.tsx';
import { ALL, type Filter, groupByField, kindsOf } from './proof-model.ts';

const words = proofWords.filter;
export const KINDS = Object.keys(proofWords.kinds) as CaseKind[];

interface FilterBarProps {
  readonly filter: Signal<Filter>;
  readonly open: Signal<ReadonlySet<string>>;
  readonly all: readonly CaseReport[];
  readonly shown: readonly CaseReport[];
}

export function FilterBar({ filter, open, all, shown }: FilterBarProps): JSX.Element {
  const change = (part: Partial<Filter>): void => {
    filter.value = { ...filter.value, ...part };
  };
  const allOpen = shown.length > 0 && shown.every(({ folder }) => open.value.has(folder));
  const openOrClose = (): void => {
    open.value = allOpen ? new Set() : new Set(shown.map(({ folder }) => folder));
  };
  return (
    <fieldset class="filter-bar" aria-label={words.title}>
      <Choice
        label={words.field}
        options={[ALL, ...groupByField(all).map(({ field }) => field)]}
        chosen={filter.value.field}
        name={(field) => (field === ALL ? words.all : fieldName(field))}
        onChoose={(field) => change({ field })}
      />
      <Choice
        label={words.kind}
        options={[ALL, ...kindsOf(all, KINDS)] as const}
        chosen={filter.value.kind}
        name={(kind) => (kind === ALL ? words.all : proofWords.kinds[kind])}
        onChoose={(kind) => change({ kind })}
      />
      <label class="only-outside">
        <input
          type="checkbox"
          checked={filter.value.onlyOutside}
          onChange={(event) => change({ onlyOutside: event.currentTarget.checked })}
        />
        {words.onlyOutside}
      </label>
      <span class="shown hint" role="status">
        {words.shown(shown.length, all.length)}
      </span>
      <button type="button" class="button" disabled={shown.length === 0} onClick={openOrClose}>
        {allOpen ? words.collapseAll : words.expandAll}
      </button>
    </fieldset>
  );
}
