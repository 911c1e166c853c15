/** Lift, stress and reserves of each shim at the speed cursor, in the order of the stack, as a table with bars. */
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { show, showBare, showField, showNumber, unitOfShown, writeField } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { activeRow, cursorSpeed } from '../app/store.ts';
import { drawnStack } from '../app/views.ts';
import { text } from '../text/en.ts';
import { wayShown } from './chart-model.ts';
import { bareReserve } from './reserve.ts';
import { fullBars, type ShimRow, shimRows } from './shim-rows.ts';

const words = text.shims;
const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;

/** Where the limit stands along a bar of use; beyond it there is room for what is over. */
const LIMIT_AT = 0.8;

interface BarProps {
  /** Of a full bar. */
  readonly share: number;
  readonly limit?: boolean;
  readonly over?: boolean;
}

function Bar({ share, limit, over }: BarProps): JSX.Element {
  const width = `${Math.min(1, Math.max(0, share)) * 100}%`;
  return (
    <span class={`shim-bar ${over ? 'over' : ''}`} aria-hidden="true">
      <i style={{ width }} />
      {limit && <b style={{ left: `${LIMIT_AT * 100}%` }} />}
    </span>
  );
}

function ReserveCell({ use, name }: { use: number | undefined; name: string }): JSX.Element {
  if (use === undefined) return <td class="number-col">{text.readout.none}</td>;
  const over = use > 1;
  return (
    <td class={`number-col ${over ? 'caution' : ''}`} data-use={name}>
      {over ? words.over(bareReserve(use, showNumber)) : bareReserve(use, showNumber)}
      <Bar share={use * LIMIT_AT} limit over={over} />
    </td>
  );
}

function Row({ shim }: { shim: ShimRow }): JSX.Element {
  const { n, row, values } = shim;
  const full = fullBars.value;
  return (
    <tr
      data-shim={n}
      class={activeRow.value === row ? 'active' : ''}
      onPointerEnter={() => {
        activeRow.value = row;
      }}
      onPointerLeave={() => {
        activeRow.value = undefined;
      }}
    >
      <th scope="row">
        {n}{' '}
        <span class="size">
          {words.size(writeField('length', shim.outerDiameter_mm), showField('length', shim.thickness_mm))}
        </span>
      </th>
      <td class="number-col">
        {showBare('lift', values.lift_m)}
        {values.wave && (
          <span class="range" data-wave={n}>
            {words.fromTo(showBare('lift', values.wave.trough_m), showBare('lift', values.wave.crest_m))}
          </span>
        )}
        <Bar share={values.lift_m / full.lift_m} />
      </td>
      <td class="number-col">
        {showBare('stress', values.stress_Pa)}
        <Bar share={values.stress_Pa / full.stress_Pa} />
      </td>
      <ReserveCell use={values.use?.life} name="life" />
      <ReserveCell use={values.use?.yield} name="yield" />
    </tr>
  );
}

export function ShimBars(): JSX.Element {
  const { build } = drawnStack.value;
  const shims = shimRows.value;
  const { colour } = lineOf(build.id);
  const isWaved = shims.some(({ values }) => values.wave);
  const isStale = outcomes.value.get(build.id)?.stale ?? false;
  if (shims.length === 0) return <p class="hint shim-hint">{words.notSolved}</p>;
  return (
    <>
      <table class={`readings shim-bars ${isStale ? 'stale' : ''}`} style={{ '--build': colour }}>
        <caption>{words.caption(wayShown(), show('speed', cursorSpeed.value))}</caption>
        <thead>
          <tr>
            <th scope="col">{words.shim}</th>
            <th scope="col">{withUnit(isWaved ? words.meanLift : words.lift, unitOfShown('lift'))}</th>
            <th scope="col">{withUnit(words.stress, unitOfShown('stress'))}</th>
            <th scope="col">{words.life}</th>
            <th scope="col">{words.yield}</th>
          </tr>
        </thead>
        <tbody>
          {shims.map((shim) => (
            <Row key={shim.n} shim={shim} />
          ))}
        </tbody>
      </table>
      <p class="hint shim-hint">
        {isWaved && `${words.wavesNote} `}
        {words.note}
        {shims.some(({ values }) => !values.use) && ` ${words.unknown}`}
      </p>
    </>
  );
}
