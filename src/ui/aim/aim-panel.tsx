/** The aims of the project: one chosen, on its chart and in its table, with the distance of each build. */
import type { JSX } from 'preact';
import type { Aim, AimOrigin } from '../../model/project.ts';
import { editProject } from '../app/apply.ts';
import { lineOf } from '../app/lines.ts';
import { show, showField, showNumber, showPercent } from '../app/quantities.ts';
import { project, visibleBuilds } from '../app/store.ts';
import { LineSample } from '../panels/icons.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { aimWords } from '../text/aim.ts';
import { AimChart } from './aim-chart.tsx';
import { type DistanceAnswer, distances } from './aim-distance.ts';
import { aimOnBench, aims, chooseAim, chosenAim, removeAim, withAim, withPoints } from './aim-store.ts';
import { PointTable } from './point-table.tsx';

const words = aimWords.aims;

function originInWords(origin: AimOrigin | undefined): string {
  if (!origin) return words.origins.none;
  if (origin.kind === 'drawn') return words.origins.drawn;
  const speed = (speed_m_s: number): string => showField('speed', speed_m_s);
  if (origin.kind === 'damping-ratio') {
    const goals = (['compression', 'rebound'] as const).map((way) => {
      const { lowSpeedRatio, highSpeedRatio, kneeSpeed_m_s } = origin[way];
      const [low, high] = [lowSpeedRatio, highSpeedRatio].map((ratio) => showNumber(ratio, 2));
      return `${words.ways[way]} ${words.origins.ratio(low, high, speed(kneeSpeed_m_s))}`;
    });
    return goals.join('; ');
  }
  const changes = origin.changes.map(({ direction, range, speed_m_s, change_percent }) =>
    words.change(showPercent(change_percent / 100, true), words.ways[direction], words.range[range](speed(speed_m_s))),
  );
  const build = project.value.builds.find(({ id }) => id === origin.buildId);
  return words.origins.change(build?.name ?? origin.buildId, changes.join(', '));
}

function Name({ aim }: { aim: Aim }): JSX.Element {
  return (
    <div class="field">
      <label for="aim-name">{words.name}</label>
      <span class="box">
        <input
          id="aim-name"
          autocomplete="off"
          maxLength={200}
          value={aim.name}
          onInput={(event) => {
            const name = event.currentTarget.value;
            editProject(() => withAim(aim.id, { name }), { label: words.name, mergeKey: `aim-name:${aim.id}` });
          }}
        />
      </span>
    </div>
  );
}

function inWords(distance: DistanceAnswer): readonly [string, string] {
  if (distance === undefined) return [words.solving, ''];
  if (distance === 'unsolved') return [words.unsolved, ''];
  const { rms_N, share } = distance;
  return [show('force', rms_N), share === undefined ? '' : `${showNumber(share * 100, 1)} %`];
}

function Distances(): JSX.Element {
  return (
    <table class="readings" data-table="distance">
      <caption>{words.distances}</caption>
      <thead>
        <tr>
          <th scope="col">{aimWords.make.of}</th>
          <th scope="col" class="number-col">
            {words.rms}
          </th>
          <th scope="col" class="number-col">
            {words.share}
          </th>
        </tr>
      </thead>
      <tbody>
        {visibleBuilds.value.map(({ id, name }) => {
          const [rms, share] = inWords(distances.value.get(id));
          return (
            <tr key={id} data-build={id}>
              <th scope="row">
                <LineSample {...lineOf(id)} /> {name}
              </th>
              <td class="number-col">{rms}</td>
              <td class="number-col">{share}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function Points({ aim }: { aim: Aim }): JSX.Element {
  return (
    <details class="group-of-fields" data-group="aim-points" open>
      <summary>
        <span class="lettering">{words.points}</span> <span class="hint">{aim.points.length}</span>
      </summary>
      <PointTable
        caption={words.points}
        rows={aim.points}
        least={1}
        columns={[
          { key: 'shaftSpeed_m_s', label: words.speed, kind: 'speed' },
          { key: 'force_N', label: words.force, kind: 'force' },
        ]}
        put={(points) => withPoints(aim.id, points)}
        next={(rows) => {
          const last = rows[rows.length - 1];
          return {
            ...last,
            shaftSpeed_m_s: Number((last.shaftSpeed_m_s / (last.shaftSpeed_m_s < 0 ? 2 : 0.8)).toFixed(3)),
          };
        }}
      />
    </details>
  );
}

function Chosen({ aim }: { aim: Aim }): JSX.Element {
  return (
    <>
      <div class="aim-choice">
        <SelectField
          label={words.chosen}
          options={aims.value.map(({ id }) => id)}
          chosen={aim.id}
          name={(id) => aims.value.find((each) => each.id === id)?.name || id}
          onChoose={chooseAim}
        />
        <Name aim={aim} />
        <label class="check">
          <input
            type="checkbox"
            checked={aimOnBench.value}
            onChange={(event) => {
              aimOnBench.value = event.currentTarget.checked;
            }}
          />
          {words.onBench}
        </label>
        <button type="button" class="button" onClick={() => removeAim(aim)}>
          {words.remove}
        </button>
      </div>
      <p class="hint" data-origin={aim.origin?.kind ?? 'none'}>
        {words.made}: {originInWords(aim.origin)}
      </p>
      <Distances />
      <Points aim={aim} />
    </>
  );
}

export function AimPanel(): JSX.Element {
  const aim = chosenAim.value;
  return (
    <section class="sheet charts aim-panel" aria-labelledby="aims-title">
      <header>
        <h2 id="aims-title">{words.title}</h2>
      </header>
      <p class="hint sheet-body">{words.intro}</p>
      <AimChart />
      <div class="sheet-body">{aim ? <Chosen aim={aim} /> : <p>{words.none}</p>}</div>
    </section>
  );
}
