/** What a found stack must keep, and how much is looked at. */
import type { JSX } from 'preact';
import { countOf } from '../../model/expand-shims.ts';
import type { ValvePlace } from '../../model/project.ts';
import type { SearchLimits } from '../../model/search-request.ts';
import { CORES } from '../app/pool.ts';
import { type FieldKind, showField, writeField } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { toggled } from '../app/toggled.ts';
import { Tick } from '../panels/tick.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';
import { form, rowKey, searchedBuild, setForm, workerCount } from './form.ts';

interface LimitEntry {
  readonly limit: keyof SearchLimits;
  readonly label: string;
  readonly kind: FieldKind;
  readonly title?: string;
}

const RESERVES: readonly LimitEntry[] = [
  { limit: 'minFatigueReserve', label: words.lifeReserve, kind: 'plain' },
  { limit: 'minYieldReserve', label: words.yieldReserve, kind: 'plain' },
];
const LIMITS: readonly LimitEntry[] = [
  { limit: 'minGasMargin_bar', label: words.gasMargin, kind: 'gasPressure', title: words.gasMarginWhy },
  { limit: 'maxShims', label: words.maxShims, kind: 'count' },
  { limit: 'maxChanges', label: words.maxChanges, kind: 'count' },
  { limit: 'minHeight_mm', label: words.minHeight, kind: 'length' },
  { limit: 'maxHeight_mm', label: words.maxHeight, kind: 'length' },
];

const isWhole = (value: number): boolean => Number.isInteger(value) && value >= 1;

function Limit({ limit, label, kind, title }: LimitEntry): JSX.Element {
  const { limits } = form.value;
  const without = ({ [limit]: _, ...rest }: SearchLimits): SearchLimits => rest;
  return (
    <ViewField
      label={label}
      kind={kind}
      title={title}
      value={limits[limit]}
      holds={kind === 'count' ? isWhole : (value) => value >= 0}
      wanted={kind === 'count' ? words.wholeFrom1 : words.atLeast0}
      onValue={(value) => setForm({ limits: { ...form.value.limits, [limit]: value } })}
      onEmpty={() => setForm({ limits: without(form.value.limits) })}
      placeholder={words.limitNone}
    />
  );
}

function KeepRows({ place }: { place: ValvePlace }): JSX.Element | null {
  const valving = searchedBuild.value.valves[place];
  const { keep } = form.value;
  if (!valving) return null;
  return (
    <fieldset class="ticks">
      <legend>{text.placeOf(project.value.damper.layout, place).stack}</legend>
      {valving.shims.map((row, i) => {
        const key = rowKey(place, i, valving);
        const size = text.difference.size(
          writeField('length', row.outerDiameter_mm),
          showField('length', row.thickness_mm),
        );
        return (
          <Tick
            key={key}
            label={words.keepRow(countOf(row), size)}
            checked={keep.includes(key)}
            onToggle={() => setForm({ keep: toggled(form.value.keep, key) })}
          />
        );
      })}
    </fieldset>
  );
}

export function LimitsPanel(): JSX.Element {
  const { keepFace, places, keep, reservesAsNow = false } = form.value;
  return (
    <>
      <div class="search-fields">
        <Tick
          label={words.reservesAsNow}
          checked={reservesAsNow}
          onToggle={() => setForm({ reservesAsNow: !reservesAsNow })}
        />
        {reservesAsNow ? (
          <p class="hint">{words.reservesAsNowWhy}</p>
        ) : (
          RESERVES.map((entry) => <Limit key={entry.limit} {...entry} />)
        )}
        {LIMITS.map((entry) => (
          <Limit key={entry.limit} {...entry} />
        ))}
        <Tick label={words.keepFace} checked={keepFace} onToggle={() => setForm({ keepFace: !keepFace })} />
      </div>
      <details class="group-of-fields" data-group="keep">
        <summary>
          <span class="lettering">{words.keep}</span> <span class="hint">{keep.length > 0 ? keep.length : ''}</span>
        </summary>
        <div class="search-fields">
          {places.map((place) => (
            <KeepRows key={place} place={place} />
          ))}
        </div>
      </details>
    </>
  );
}

interface WholeProps {
  readonly name: 'starts' | 'steps' | 'seed';
  readonly label: string;
  readonly title?: string;
}

const MOST = { starts: 10_000, steps: 100_000, seed: 1e9 } as const;

const Whole = ({ name, label, title }: WholeProps): JSX.Element => (
  <ViewField
    label={label}
    kind="count"
    title={title}
    value={form.value[name]}
    holds={(value) => isWhole(value) && value <= MOST[name]}
    wanted={words.wholeFrom1}
    onValue={(value) => setForm({ [name]: value })}
  />
);

export const EffortPanel = (): JSX.Element => (
  <div class="search-fields">
    <Whole name="starts" label={words.starts} title={words.startsWhy} />
    <Whole name="steps" label={words.steps} />
    <Whole name="seed" label={words.seed} title={words.seedWhy} />
    <ViewField
      label={words.workers}
      kind="count"
      title={words.workersWhy(CORES)}
      value={workerCount.value}
      holds={(value) => isWhole(value) && value <= Math.max(CORES, 2)}
      wanted={words.wholeFrom1}
      onValue={(value) => {
        workerCount.value = value;
      }}
    />
  </div>
);
