/** What is said while the list is empty; once a search has ended so, what was refused and the way past the limits of strength. */
import type { JSX } from 'preact';
import type { SearchLimits } from '../../model/search-request.ts';
import { readOnly } from '../app/store.ts';
import { searchWords as words } from '../text/search.ts';
import { draftRefusal } from './draft.ts';
import { form, setForm } from './form.ts';
import { begin, done, phase, study } from './run.ts';

const withoutReserves = ({ minFatigueReserve: _l, minYieldReserve: _y, ...rest }: SearchLimits): SearchLimits => rest;

const hasReserves = ({ minFatigueReserve, minYieldReserve }: SearchLimits): boolean =>
  minFatigueReserve !== undefined || minYieldReserve !== undefined;

function loosen(): void {
  setForm({ reservesAsNow: false, limits: withoutReserves(form.value.limits) });
  void begin();
}

function Unasked(): JSX.Element {
  const why = draftRefusal.value;
  return (
    <div class="nothing">
      {why !== undefined && <p class="caution-text">{words.refused(why)}</p>}
      <p class="hint">{words.none}</p>
    </div>
  );
}

export function NothingFound(): JSX.Element {
  const of = study.value;
  if (!of) return <Unasked />;
  if (phase.value !== 'finished') return <p class="hint nothing">{words.nothingYet}</p>;
  const refused = done.value.reduce((sum, each) => sum + each.refused, 0);
  return (
    <div class="nothing">
      <p class="hint">
        {words.nothing} {refused > 0 && words.refusedStacks(refused)}
      </p>
      {hasReserves(of.request.limits ?? {}) && (
        <button type="button" class="button" disabled={readOnly.value} onClick={loosen}>
          {words.loosen}
        </button>
      )}
    </div>
  );
}
