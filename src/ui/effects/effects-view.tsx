/** What each shim of the stack on show does to the force at the speed cursor: a bar for each change, and a sentence. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { millimetresFromMetres } from '../../units/si.ts';
import { effectsProgress, shownEffects, startEffects } from '../app/effects-solve.ts';
import { lineOf } from '../app/lines.ts';
import { inShown, show, showField, showNumber, showPercent, unitOfShown, writeField } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { activeRow, cursorSpeed, place, project, selectedBuild } from '../app/store.ts';
import { SpeedSlider } from '../charts/speed-slider.tsx';
import { text } from '../text/en.ts';
import { forceOf, isNothing, signed } from './effect-force.ts';
import { type EffectRow, effectRows, fullEffects, steps } from './effect-rows.ts';

const words = text.effects;

const withUnit = (number: string): string => `${number} ${unitOfShown('force')}`;
const step = (length_m: number): string => showField('length', millimetresFromMetres(length_m));
const sizeOf = ({ outerDiameter_mm, thickness_mm }: EffectRow): string =>
  text.shims.size(writeField('length', outerDiameter_mm), showField('length', thickness_mm));

interface CellProps {
  readonly force_N: number | null | undefined;
  readonly full_N: number;
  readonly name: string;
}

function Cell({ force_N, full_N, name }: CellProps): JSX.Element {
  if (force_N === undefined) return <td class="number-col">{words.refused}</td>;
  if (force_N === null) return <td class="number-col">{text.readout.notSolved}</td>;
  const half = 50 * Math.min(1, Math.abs(force_N) / full_N);
  return (
    <td class="number-col" data-effect={name}>
      {signed(force_N)}
      <span class="shim-bar effect-bar" aria-hidden="true">
        <i style={{ left: `${force_N < 0 ? 50 - half : 50}%`, width: `${half}%` }} />
        <b style={{ left: '50%' }} />
      </span>
    </td>
  );
}

const follow = (row: number) => ({
  onPointerEnter: () => {
    activeRow.value = row;
  },
  onPointerLeave: () => {
    activeRow.value = undefined;
  },
});

function Row({ shim }: { shim: EffectRow }): JSX.Element {
  const full = fullEffects.value;
  return (
    <tr data-shim={shim.n} class={activeRow.value === shim.row ? 'active' : ''} {...follow(shim.row)}>
      <th scope="row">
        {shim.n} <span class="size">{sizeOf(shim)}</span>
      </th>
      <Cell force_N={shim.thicker_N} full_N={full.thicker_N} name="thicker" />
      <Cell force_N={shim.wider_N} full_N={full.wider_N} name="wider" />
      <Cell force_N={shim.out_N} full_N={full.out_N} name="out" />
    </tr>
  );
}

function doesOf(force_N: number | null): string {
  if (force_N === null) return words.unknown;
  if (isNothing(force_N)) return words.same;
  const size = withUnit(forceOf(Math.abs(force_N)));
  return force_N > 0 ? words.firmer(size) : words.softer(size);
}

function sentenceOf({ thicker_N, wider_N, out_N }: EffectRow): string {
  const { thickness_m, diameter_m } = steps.value;
  const without = out_N === undefined ? words.needed : words.without(doesOf(out_N));
  return words.sentence(step(thickness_m), doesOf(thicker_N), step(diameter_m), doesOf(wider_N), without);
}

function Sentences({ rows }: { rows: readonly EffectRow[] }): JSX.Element {
  return (
    <section class="effect-words" aria-label={words.inWords}>
      <h3>{words.inWords}</h3>
      <ul>
        {rows.map((shim) => (
          <li key={shim.n} class={activeRow.value === shim.row ? 'active' : ''} {...follow(shim.row)}>
            <b>{words.name(shim.n, sizeOf(shim))}</b>: {sentenceOf(shim)}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Effects({ rows }: { rows: readonly EffectRow[] }): JSX.Element {
  const build = selectedBuild.value;
  const stack = text.placeOf(project.value.damper.layout, place.value).name;
  const { thickness_m, diameter_m } = steps.value;
  return (
    <div class={shownEffects.value.stale ? 'stale' : ''} style={{ '--build': lineOf(build.id).colour }}>
      <table class="readings shim-bars effects">
        <caption>{words.caption(stack, build.name, show('speed', cursorSpeed.value), unitOfShown('force'))}</caption>
        <thead>
          <tr>
            <th scope="col">{words.shim}</th>
            <th scope="col">{words.thicker(step(thickness_m))}</th>
            <th scope="col">{words.wider(step(diameter_m))}</th>
            <th scope="col">{words.out}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((shim) => (
            <Row key={shim.n} shim={shim} />
          ))}
        </tbody>
      </table>
      <Sentences rows={rows} />
      <p class="hint shim-hint">
        {words.note} {words.error(withUnit(showNumber(inShown('force', worstError(rows)), 3)))}
      </p>
    </div>
  );
}

const worstError = (rows: readonly EffectRow[]): number => Math.max(0, ...rows.map(({ error_N }) => error_N));

export function EffectsView(): JSX.Element {
  useEffect(startEffects, []);
  const rows = effectRows.value;
  const { failure, stale } = shownEffects.value;
  const progress = effectsProgress.value;
  return (
    <div class="shim-effects" data-effects={progress === undefined && !stale ? 'solved' : 'solving'}>
      <SpeedSlider />
      <p class="hint shim-hint" role="status">
        {failure !== undefined && words.failed(errorInWords(failure))}
        {progress !== undefined && words.running(showPercent(progress))}
        {progress === undefined && failure === undefined && rows.length === 0 && words.waiting}
      </p>
      {rows.length > 0 && <Effects rows={rows} />}
    </div>
  );
}
