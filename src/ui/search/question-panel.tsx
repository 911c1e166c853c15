/** What is wanted: from which build, which stacks may change, and the curve to come near. */
import type { JSX } from 'preact';
import type { ValvePlace } from '../../model/project.ts';
import { places, project } from '../app/store.ts';
import { toggled } from '../app/toggled.ts';
import { Choice } from '../panels/choice.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { Tick } from '../panels/tick.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';
import { type AimChoice, form, setForm } from './form.ts';
import { ListField } from './list-field.tsx';

const stackName = (place: ValvePlace): string => text.placeOf(project.value.damper.layout, place).name;

function aimChoices(): AimChoice[] {
  const { aims = [], builds } = project.value;
  return [
    ...aims.map(({ id }) => ({ kind: 'aim' as const, id })),
    ...builds.map(({ id }) => ({ kind: 'build' as const, id })),
    ...builds.map(({ id }) => ({ kind: 'change' as const, id })),
  ];
}

function nameOf({ kind, id }: AimChoice): string {
  const { aims = [], builds } = project.value;
  const named: readonly { id: string; name: string }[] = kind === 'aim' ? aims : builds;
  return words.aimKinds[kind](named.find((each) => each.id === id)?.name ?? '');
}

function ChangeFields(): JSX.Element {
  const { change } = form.value;
  const set = (part: Partial<typeof change>): void => setForm({ change: { ...change, ...part } });
  return (
    <>
      <ViewField
        label={words.change}
        kind="percent"
        value={change.percent}
        holds={(value) => value >= -95 && value <= 1000}
        wanted={words.percentWanted}
        onValue={(percent) => set({ percent })}
      />
      <div class="field">
        <span class="field-name">{words.side}</span>
        <Choice
          label={words.side}
          options={['above', 'below'] as const}
          chosen={change.side}
          name={(side) => words.sides[side]}
          onChoose={(side) => set({ side })}
        />
      </div>
      <ViewField
        label={words.changeSpeed}
        kind="speed"
        value={change.speed_m_s}
        holds={(value) => value > 0}
        wanted={words.speedWanted}
        onValue={(speed_m_s) => set({ speed_m_s })}
      />
      <p class="hint">{words.changeHint}</p>
    </>
  );
}

function Aim(): JSX.Element {
  const choices = aimChoices();
  const keys = choices.map(({ kind, id }) => `${kind}:${id}`);
  const { aim } = form.value;
  return (
    <>
      <div class="wide-box" data-choose="aim">
        <SelectField
          label={words.aim}
          options={keys}
          chosen={`${aim.kind}:${aim.id}`}
          name={(key) => nameOf(choices[keys.indexOf(key)])}
          onChoose={(key) => setForm({ aim: choices[keys.indexOf(key)] })}
        />
      </div>
      {aim.kind === 'change' && <ChangeFields />}
    </>
  );
}

function Source(): JSX.Element {
  const { source, outerDiameters_mm, thicknesses_mm } = form.value;
  const shims = project.value.drawer.reduce((sum, { count }) => sum + count, 0);
  return (
    <>
      <div class="field">
        <span class="field-name">{words.source}</span>
        <Choice
          label={words.source}
          options={['drawer', 'catalogue'] as const}
          chosen={source}
          name={(each) => words.sources[each]}
          onChoose={(each) => setForm({ source: each })}
        />
      </div>
      {source === 'drawer' ? (
        <p class="hint">{words.drawerHolds(shims)}</p>
      ) : (
        <>
          <p class="hint">{words.sizesWhy}</p>
          <ListField
            label={words.diameters}
            kind="length"
            values={outerDiameters_mm}
            wanted={words.listWanted}
            onValues={(values) => setForm({ outerDiameters_mm: values })}
          />
          <ListField
            label={words.thicknesses}
            kind="length"
            values={thicknesses_mm}
            wanted={words.listWanted}
            onValues={(values) => setForm({ thicknesses_mm: values })}
          />
        </>
      )}
    </>
  );
}

export function QuestionPanel(): JSX.Element {
  const { builds } = project.value;
  const { buildId, places: chosen } = form.value;
  return (
    <div class="search-fields">
      <div class="wide-box">
        <SelectField
          label={words.build}
          options={builds.map(({ id }) => id)}
          chosen={buildId}
          name={(id) => builds.find((build) => build.id === id)?.name ?? ''}
          onChoose={(id) => setForm({ buildId: id, keep: [] })}
        />
      </div>
      <fieldset class="ticks">
        <legend>{words.stacks}</legend>
        {places.value.map((place) => (
          <Tick
            key={place}
            label={stackName(place)}
            checked={chosen.includes(place)}
            onToggle={() => setForm({ places: places.value.filter((each) => toggled(chosen, place).includes(each)) })}
          />
        ))}
      </fieldset>
      <Aim />
      <Source />
    </div>
  );
}
