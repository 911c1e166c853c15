/** A new aim, made in one of three ways. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { tell } from '../app/notices.ts';
import { outcomes } from '../app/solve.ts';
import { project, selectedBuild, topSpeed } from '../app/store.ts';
import { Choice } from '../panels/choice.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { aimWords } from '../text/aim.ts';
import { addAim } from './aim-store.ts';
import { ChangeRows, changes } from './change-rows.tsx';
import { aimSpeeds, boundsOf, pointsOn } from './changed-force.ts';
import { dampingOf } from './chassis-solve.ts';
import { makeByRatio, RatioGoals } from './ratio-goals.tsx';

const words = aimWords.make;

const WAYS = ['drawn', 'ratio', 'change'] as const;
const way = signal<(typeof WAYS)[number]>('drawn');

const wantedBuild = signal('');
const fromBuild = () => project.value.builds.find(({ id }) => id === wantedBuild.value) ?? selectedBuild.value;

function makeFromBuild(isDrawn: boolean): void {
  const { id, name } = fromBuild();
  const curve = outcomes.value.get(id)?.curve;
  if (!curve) {
    tell(words.noCurve, { tone: 'problem' });
    return;
  }
  const wanted = isDrawn ? [] : changes.value;
  const points = pointsOn(dampingOf(curve), aimSpeeds(topSpeed.value, boundsOf(wanted)), wanted);
  if (isDrawn) addAim(words.names.drawn, points, { kind: 'drawn' });
  else addAim(words.names.change(name), points, { kind: 'change', buildId: id, changes: [...wanted] });
}

const make = (): void => {
  if (way.value === 'ratio') void makeByRatio();
  else makeFromBuild(way.value === 'drawn');
};

function FromBuild({ label }: { label: string }): JSX.Element {
  return (
    <SelectField
      label={label}
      options={project.value.builds.map(({ id }) => id)}
      chosen={fromBuild().id}
      name={(id) => project.value.builds.find((build) => build.id === id)?.name ?? id}
      onChoose={(id) => {
        wantedBuild.value = id;
      }}
    />
  );
}

function Ways(): JSX.Element {
  switch (way.value) {
    case 'drawn':
      return (
        <>
          <p class="hint">{words.drawnWhy}</p>
          <FromBuild label={words.from} />
        </>
      );
    case 'ratio':
      return (
        <>
          <p class="hint">{words.ratioWhy}</p>
          <RatioGoals />
        </>
      );
    case 'change':
      return (
        <>
          <p class="hint">{words.changeWhy}</p>
          <FromBuild label={words.of} />
          <ChangeRows />
        </>
      );
  }
}

export const MakeAim = (): JSX.Element => (
  <section class="sheet make-aim" aria-labelledby="make-title">
    <header>
      <h2 id="make-title">{words.title}</h2>
      <Choice
        label={words.way}
        options={WAYS}
        chosen={way.value}
        name={(each) => words.ways[each]}
        onChoose={(each) => {
          way.value = each;
        }}
      />
    </header>
    <div class="sheet-body">
      <Ways />
      <button type="button" class="button" onClick={make}>
        {words.make}
      </button>
    </div>
  </section>
);
