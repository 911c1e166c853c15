/** A sweep as tables: one a direction, a row a place, a column a build. */
import type { JSX } from 'preact';
import type { Direction } from '../app/places.ts';
import { show, showBare, unitOfShown } from '../app/quantities.ts';
import { cursorSpeed } from '../app/store.ts';
import { BuildHeads } from '../charts/build-heads.tsx';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import { type SweepCurve, WAYS } from './sweep-curves.ts';

function cellOf({ at, force_N }: SweepCurve, place: number): string {
  const i = at.indexOf(place);
  if (i === -1) return text.readout.none;
  const force = force_N[i];
  return force === null ? text.readout.notSolved : showBare('force', force);
}

function Head({ sweep, curves }: { sweep: Sweep; curves: readonly SweepCurve[] }): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">{sweep.axis()}</th>
        <BuildHeads builds={curves.map(({ build }) => build)} />
      </tr>
    </thead>
  );
}

function WayTable({ sweep, way }: { sweep: Sweep; way: Direction }): JSX.Element {
  const curves = sweep.curves.value.filter((curve) => curve.way === way);
  const places = [...new Set(curves.flatMap(({ at }) => at))].sort((a, b) => a - b);
  const name = way === 1 ? text.way.compression : text.way.rebound;
  return (
    <table class="readings" data-way={way === 1 ? 'compression' : 'rebound'}>
      <caption>{text.sweep.caption(name, unitOfShown('force'), show('speed', cursorSpeed.value))}</caption>
      <Head sweep={sweep} curves={curves} />
      <tbody>
        {places.map((place) => (
          <tr key={place} data-at={place}>
            <th scope="row">{sweep.inWords(place)}</th>
            {curves.map((curve) => (
              <td
                key={curve.build.id}
                class={`number-col ${curve.stale ? 'stale' : ''} ${curve.set?.at === place ? 'as-set' : ''}`}
              >
                {cellOf(curve, place)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function SweepTable({ sweep }: { sweep: Sweep }): JSX.Element {
  return (
    <details class="sweep-numbers">
      <summary>{text.sweep.table}</summary>
      <div class="reading-tables">
        {WAYS.map((way) => (
          <WayTable key={way} sweep={sweep} way={way} />
        ))}
      </div>
    </details>
  );
}
