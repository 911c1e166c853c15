/** Any two builds of the project side by side, in a dialog over the bench; to be read, copied and printed. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Build } from '../../model/project.ts';
import { lineOf } from '../app/lines.ts';
import { project } from '../app/store.ts';
import { IconButton, LineSample } from '../panels/icons.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { Act } from '../projects/bar.tsx';
import { compare as words } from '../text/compare.ts';
import { text } from '../text/en.ts';
import { chooseSide, closeComparison, compared, type Side, swapSides } from './chosen.ts';
import { type Comparison, compareBuilds, isEqual } from './comparison.ts';
import { comparisonText } from './comparison-text.ts';
import { StackTable } from './stack-table.tsx';
import { WRITERS, write } from './writers.ts';

function SideChoice({ side, build }: { side: Side; build: Build }): JSX.Element {
  const { builds } = project.value;
  return (
    <div class="side-choice" data-side={side}>
      <LineSample {...lineOf(build.id)} />
      <SelectField
        label={words[side]}
        options={builds.map(({ id }) => id)}
        chosen={build.id}
        name={(id) => builds.find((each) => each.id === id)?.name ?? ''}
        onChoose={(id) => chooseSide(side, id)}
      />
    </div>
  );
}

function OtherDifferences({ comparison }: { comparison: Comparison }): JSX.Element {
  const { layout } = project.value.damper;
  const groups = [
    ...comparison.places.map(({ place, settings }) => ({ name: text.placeOf(layout, place).stack, settings })),
    ...comparison.besides,
  ].filter(({ settings }) => settings.length > 0);
  return (
    <section aria-label={words.others} class="compare-others">
      <h3>{words.others}</h3>
      {groups.length === 0 && <p>{words.noOthers}</p>}
      {groups.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">{words.othersColumns.part}</th>
              <th scope="col">{words.othersColumns.setting}</th>
              <th scope="col">{words.from}</th>
              <th scope="col">{words.to}</th>
            </tr>
          </thead>
          <tbody>
            {groups.flatMap((group) =>
              group.settings.map(({ name, from, to }) => (
                <tr key={`${group.name} ${name}`}>
                  <td>{group.name}</td>
                  <th scope="row">{name}</th>
                  <td>{from}</td>
                  <td>{to}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      )}
      <p class="hint">{words.shared}</p>
    </section>
  );
}

type Pair = Readonly<Record<Side, Build>>;

const verdictOf = ({ from, to }: Pair, comparison: Comparison): string => {
  if (from.id === to.id) return words.same;
  return isEqual(comparison) ? words.equal : '';
};

function Tools({ pair, comparison }: { pair: Pair; comparison: Comparison }): JSX.Element {
  const said = useSignal('');
  const copy = async (): Promise<void> => {
    const written = comparisonText(comparison, [pair.from, pair.to], project.value.damper.layout, WRITERS);
    try {
      await navigator.clipboard.writeText(written);
      said.value = words.copied;
    } catch {
      said.value = words.copyFailed;
    }
  };
  return (
    <div class="compare-tools">
      <SideChoice side="from" build={pair.from} />
      <IconButton icon="swap" label={words.swap} class="swap" onClick={swapSides} />
      <SideChoice side="to" build={pair.to} />
      <span class="acts">
        <Act label={words.copy} onClick={() => void copy()} />
        <Act label={words.print} onClick={() => window.print()} />
      </span>
      <p class="said" role="status">
        {said.value || verdictOf(pair, comparison)}
      </p>
    </div>
  );
}

function CompareDialog({ pair }: { pair: Pair }): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const comparison = compareBuilds(pair.from, pair.to, write);
  return (
    <dialog ref={dialog} class="projects-view compare-view" aria-labelledby="compare-title" onClose={closeComparison}>
      <div class="view-head">
        <h2 id="compare-title">{words.title}</h2>
        <Act label={words.close} onClick={() => dialog.current?.close()} />
      </div>
      <p class="print-title">{project.value.name}</p>
      <Tools pair={pair} comparison={comparison} />
      {comparison.places.map((place) => (
        <StackTable key={place.place} compared={place} {...pair} />
      ))}
      <OtherDifferences comparison={comparison} />
    </dialog>
  );
}

export const CompareView = (): JSX.Element | null => (compared.value ? <CompareDialog pair={compared.value} /> : null);
