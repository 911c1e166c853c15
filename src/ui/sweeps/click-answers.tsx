/** What one click does at the speed cursor, and how many do what the shims of another build do. */
import type { JSX } from 'preact';
import type { Adjuster } from '../../model/adjusters.ts';
import type { Build } from '../../model/project.ts';
import { lineOf } from '../app/lines.ts';
import type { Direction } from '../app/places.ts';
import { show, showBare, showNumber, showPercent, unitOfShown } from '../app/quantities.ts';
import { cursorSpeed, selectedBuild, visibleBuilds } from '../app/store.ts';
import { LineSample } from '../panels/icons.tsx';
import { text } from '../text/en.ts';
import { clicksEqualTo, forceAtClicks } from './click-equals.ts';
import { adjusterName, clickSweep, turnedBuilds } from './click-sweep.ts';
import { forceAsSet, type SweepCurve, WAYS } from './sweep-curves.ts';

const words = text.sweep;

interface Turned {
  readonly build: Build;
  readonly adjuster: Adjuster;
}

interface AnswerRow {
  readonly id: string;
  readonly name: string;
  readonly cell: (curve: SweepCurve) => string;
}

/** Firmer is more of the same sign, whichever way the shaft goes. */
function changeTo(curve: SweepCurve, clicks: number): string {
  const now = curve.set?.force_N;
  const then = forceAtClicks(curve, clicks);
  if (now === undefined || then === null) return text.readout.none;
  const more = (then - now) * curve.way;
  const bare = showBare('force', more);
  return words.change(more > 0 && Number(bare) !== 0 ? `+${bare}` : bare, showPercent(then / now - 1, true));
}

function forceRow(id: string, name: string, clicks: number): AnswerRow {
  const cell = (curve: SweepCurve): string => {
    const force = forceAtClicks(curve, clicks);
    return force === null ? text.readout.none : showBare('force', force);
  };
  return { id, name, cell };
}

function rowsFor({ build, adjuster: { clicks, clickCount } }: Turned): AnswerRow[] {
  const others = visibleBuilds.value.filter(({ id }) => id !== build.id);
  const equal = (other: Build): AnswerRow => ({
    id: `as-${other.id}`,
    name: words.equalTo(other.name),
    cell: (curve) => {
      const target = forceAsSet(other, curve.way);
      if (!target) return text.readout.none;
      const at = clicksEqualTo(curve, target.force_N, clicks);
      return at === undefined ? words.outOfReach : words.clicksFrom(showNumber(at, 1));
    },
  });
  return [
    forceRow('set', words.asSet(clicks), clicks),
    ...(clicks > 0 ? [{ id: 'closer', name: words.closer, cell: (c: SweepCurve) => changeTo(c, clicks - 1) }] : []),
    ...(clicks < clickCount
      ? [{ id: 'opener', name: words.opener, cell: (c: SweepCurve) => changeTo(c, clicks + 1) }]
      : []),
    forceRow('closed', words.closed, 0),
    forceRow('open', words.open(clickCount), clickCount),
    ...others.map(equal),
  ];
}

const wayName = (way: Direction): string => (way === 1 ? text.way.compression : text.way.rebound);

export function ClickAnswers(): JSX.Element | null {
  const turned =
    turnedBuilds.value.find(({ build }) => build.id === selectedBuild.value.id) ?? turnedBuilds.value.at(0);
  if (!turned) return null;
  const { build, adjuster } = turned;
  const curves = clickSweep.curves.value.filter((curve) => curve.build.id === build.id);
  return (
    <table class="readings click-answers">
      <caption>
        <LineSample {...lineOf(build.id)} />{' '}
        {words.answers(build.name, adjusterName(adjuster.id), show('speed', cursorSpeed.value), unitOfShown('force'))}
      </caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">{words.setting}</span>
          </th>
          {WAYS.map((way) => (
            <th key={way} scope="col" class="number-col">
              {wayName(way)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rowsFor(turned).map(({ id, name, cell }) => (
          <tr key={id} data-answer={id}>
            <th scope="row">{name}</th>
            {curves.map((curve) => (
              <td key={curve.way} class={`number-col ${curve.stale ? 'stale' : ''}`}>
                {cell(curve)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
