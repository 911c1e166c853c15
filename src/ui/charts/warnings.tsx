/** What the person must know of these curves: speeds without an answer, air release, builds that could not be solved. */
import type { JSX } from 'preact';
import type { Build } from '../../model/project.ts';
import { show } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import type { ForceCurve } from '../app/solved.ts';
import { visibleBuilds } from '../app/store.ts';
import { text } from '../text/en.ts';
import { airReleaseFrom, failedOf, wavesFrom } from './chart-data.ts';

const WAYS = [
  { direction: 1, name: text.chart.compression },
  { direction: -1, name: text.chart.rebound },
] as const;

/** `0.8 to 2.0 m/s rebound`; reasons are told once each. */
function failureLines(build: Build, curve: ForceCurve): string[] {
  const failed = failedOf(curve);
  return WAYS.flatMap(({ direction, name }) => {
    const points = failed.filter((point) => point.shaftSpeed_m_s * direction > 0);
    return [...new Set(points.map((point) => point.reason))].map((reason) => {
      const speeds = points.filter((p) => p.reason === reason).map((p) => Math.abs(p.shaftSpeed_m_s));
      const [low, high] = [show('speed', Math.min(...speeds)), show('speed', Math.max(...speeds))];
      return text.chart.failedSpeeds(build.name, text.chart.span(low, high, name), reason);
    });
  });
}

function rangeLines(build: Build, curve: ForceCurve): string[] {
  return WAYS.flatMap(({ direction, name }) => {
    const from = airReleaseFrom(curve, direction);
    const waves = wavesFrom(curve, direction);
    return [
      ...(waves === undefined ? [] : [text.chart.waves(build.name, show('speed', waves), name)]),
      ...(from === undefined ? [] : [text.chart.airRelease(build.name, show('speed', from), name)]),
    ];
  });
}

export function Warnings(): JSX.Element | null {
  const lines = visibleBuilds.value.flatMap((build) => {
    const outcome = outcomes.value.get(build.id);
    const failure = outcome?.failure ? [text.solver.failedFor(build.name, outcome.failure)] : [];
    const curve = outcome?.curve;
    return curve ? [...failure, ...failureLines(build, curve), ...rangeLines(build, curve)] : failure;
  });
  if (lines.length === 0) return null;
  return (
    <ul class="warnings" role="status">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
