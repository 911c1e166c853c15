/** The numbers at the speed cursor, build beside build, for both directions. */
import type { JSX } from 'preact';
import type { Build } from '../../model/project.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { lineOf } from '../app/lines.ts';
import { show, showBare, showPercent, unitOfShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import type { ForcePoint } from '../app/solved.ts';
import { baseline, cursorSpeed, type Direction, visibleBuilds } from '../app/store.ts';
import { pointOf, stateOf } from '../app/views.ts';
import { LineSample } from '../panels/icons.tsx';
import { isSolved, type StackState } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { bleedShare } from './chart-data.ts';
import { lifeReserve, yieldReserve } from './reserve.ts';

interface Reading {
  readonly build: Build;
  readonly point?: ForcePoint;
  readonly state?: StackState;
  readonly against?: ForcePoint;
  readonly stale: boolean;
}

function readingOf(build: Build, way: Direction): Reading {
  const outcome = outcomes.value.get(build.id);
  const solved = (point: ReturnType<typeof pointOf>): ForcePoint | undefined =>
    point && isSolved(point) ? point : undefined;
  return {
    build,
    point: solved(pointOf(outcome, way)),
    state: stateOf(outcome, way),
    against: build.id === baseline.value.id ? undefined : solved(pointOf(outcomes.value.get(baseline.value.id), way)),
    stale: outcome?.stale ?? false,
  };
}

const gauge = (absolute_Pa: number): string => showBare('pressure', absolute_Pa - STANDARD_ATMOSPHERE_PA);

type Cell = (reading: Reading & { readonly point: ForcePoint }) => string;

const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;

/** Name of each row and how it reads a point. */
function rows(): [string, string, Cell][] {
  const pressure = unitOfShown('pressure');
  const r = text.readout;
  return [
    ['force', withUnit(r.force, unitOfShown('force')), ({ point }) => showBare('force', point.force_N)],
    [
      'difference',
      r.difference,
      ({ point, against }) => (against ? showPercent(point.force_N / against.force_N - 1, true) : text.builds.baseline),
    ],
    ['damping', withUnit(r.ofDamping, unitOfShown('force')), ({ point }) => showBare('force', point.dampingForce_N)],
    ['opening', withUnit(r.opening, unitOfShown('lift')), ({ point }) => showBare('lift', point.seatOpening_m)],
    ['bleed', r.bleedShare, ({ point }) => showPercent(bleedShare(point))],
    ['shims', withUnit(r.shimPressure, pressure), ({ point }) => showBare('pressure', point.shimPressure_Pa)],
    ['chamber-c', withUnit(r.chamberC, pressure), ({ point }) => gauge(point.compressionPressure_Pa)],
    ['chamber-r', withUnit(r.chamberR, pressure), ({ point }) => gauge(point.reboundPressure_Pa)],
    [
      'stress',
      withUnit(r.stress, unitOfShown('stress')),
      ({ state }) => (state ? showBare('stress', Math.max(...state.shimStress_Pa)) : r.none),
    ],
    ['life', r.lifeReserve, ({ point }) => lifeReserve(point)],
    ['yield', r.yieldReserve, ({ point }) => yieldReserve(point)],
  ];
}

function Head({ readings, way }: { readings: readonly Reading[]; way: Direction }): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">{way === 1 ? text.place.pistonCompression : text.place.pistonRebound}</th>
        {readings.map(({ build }) => (
          <th key={build.id} scope="col" class="number-col" title={build.name}>
            <LineSample {...lineOf(build.id)} />
            <span>{build.name}</span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** Air release is told in the readout too, with the gas pressure that would prevent it. */
function AirRow({ readings }: { readings: readonly Reading[] }): JSX.Element | null {
  if (!readings.some(({ point }) => point?.airRelease)) return null;
  return (
    <tr class="air">
      <th scope="row">{text.readout.airRelease}</th>
      {readings.map(({ build, point }) => (
        <td key={build.id} class="number-col">
          {point?.airRelease
            ? text.readout.gasNeeded(show('pressure', point.gasPressureNeeded_Pa - STANDARD_ATMOSPHERE_PA))
            : text.readout.none}
        </td>
      ))}
    </tr>
  );
}

function DirectionTable({ way }: { way: Direction }): JSX.Element {
  const readings = visibleBuilds.value.map((build) => readingOf(build, way));
  return (
    <table class="readings" data-way={way === 1 ? 'compression' : 'rebound'}>
      <Head readings={readings} way={way} />
      <tbody>
        {rows().map(([id, name, cell]) => (
          <tr key={id} data-row={id}>
            <th scope="row">{name}</th>
            {readings.map(({ point, ...rest }) => (
              <td key={rest.build.id} class={`number-col ${rest.stale ? 'stale' : ''}`} data-build={rest.build.id}>
                {point ? cell({ point, ...rest }) : text.readout.notSolved}
              </td>
            ))}
          </tr>
        ))}
        <AirRow readings={readings} />
      </tbody>
    </table>
  );
}

export function Readout(): JSX.Element {
  return (
    <section class="sheet readout" aria-label={text.readout.title(show('speed', cursorSpeed.value))}>
      <header>
        <h2>{text.readout.title(show('speed', cursorSpeed.value))}</h2>
        <span class="hint">{text.readout.gauge}</span>
      </header>
      <div class="reading-tables">
        <DirectionTable way={1} />
        <DirectionTable way={-1} />
      </div>
    </section>
  );
}
