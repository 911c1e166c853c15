/** What the person must know of these curves: speeds without an answer, air release, builds that could not be solved. */
import type { JSX } from 'preact';
import type { Build } from '../../model/project.ts';
import { bandsFailure } from '../app/band-solve.ts';
import { placesOf, stackOf } from '../app/places.ts';
import { bands } from '../app/preferences.ts';
import { inReaderUnits, show } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { outcomes } from '../app/solve.ts';
import type { ForceCurve } from '../app/solved.ts';
import { baseline, project, visibleBuilds } from '../app/store.ts';
import { wavesFailures } from '../app/wave-solve.ts';
import { isSolved } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { airReleaseFrom, cavitatesFrom, failedOf, wavesFrom } from './chart-data.ts';

import { comparing, comparisonLines } from './comparison.ts';
import { WarningList } from './warning-list.tsx';

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
      return text.chart.failedSpeeds(build.name, text.chart.span(low, high, name), inReaderUnits(reason));
    });
  });
}

function airLines(build: Build, curve: ForceCurve): string[] {
  return WAYS.flatMap(({ direction, name }) => {
    const from = airReleaseFrom(curve, direction);
    return from === undefined ? [] : [text.chart.airRelease(build.name, show('speed', from), name)];
  });
}

const VALVES = ['piston', 'base'] as const;

/** One line for all builds: where less oil passes than is counted, so that the force is higher. */
function cavitationLine(solved: readonly { build: Build; curve: ForceCurve }[]): string[] {
  const found = solved.flatMap(({ build, curve }) => {
    const places = WAYS.flatMap(({ direction, name }) =>
      VALVES.flatMap((valve) => {
        const from = cavitatesFrom(curve, direction, valve);
        const where = `${text.chart.valve[valve].toLowerCase()} ${name}`;
        return from === undefined ? [] : [text.chart.fromSpeed(show('speed', from), where)];
      }),
    );
    return places.length === 0 ? [] : [text.chart.ofBuild(build.name, places.join(', '))];
  });
  return found.length === 0 ? [] : [text.chart.cavitates(found.join('; '))];
}

/** One line for all builds: where each leaves the range in which the theory is proven. */
function wavesLine(solved: readonly { build: Build; curve: ForceCurve }[]): string[] {
  const { layout } = project.value.damper;
  const found = solved.flatMap(({ build, curve }) => {
    const stacks = placesOf(layout).flatMap((each) => {
      const from = wavesFrom(curve, stackOf(each));
      const name = text.placeOf(layout, each).tab.toLowerCase();
      return from === undefined ? [] : [text.chart.fromSpeed(show('speed', from), name)];
    });
    return stacks.length === 0 ? [] : [text.chart.ofBuild(build.name, stacks.join(', '))];
  });
  return found.length === 0 ? [] : [text.chart.waves(found.join('; '))];
}

/** Where the round theory stands in for want of the waves. */
function fallbackLines(build: Build, curve: ForceCurve, key: string): string[] {
  const { layout } = project.value.damper;
  const failure = wavesFailures.value.get(key);
  const stacks = placesOf(layout).flatMap((each) => {
    const fallback = curve.stacks[stackOf(each)]?.fallback;
    const name = text.placeOf(layout, each).tab.toLowerCase();
    return fallback ? [text.theories.fellBack(build.name, name, inReaderUnits(fallback.reason))] : [];
  });
  return [...stacks, ...(failure === undefined ? [] : [text.theories.failed(build.name, errorInWords(failure))])];
}

/** Why a build has no band at some speeds, once for each reason. */
function bandLines(build: Build, curve: ForceCurve): string[] {
  if (bands.value !== 'shown') return [];
  const failed = curve.points.flatMap((point) =>
    isSolved(point) && point.band && point.band.status !== 'converged' ? [point.band.reason] : [],
  );
  return [...new Set(failed)].map((reason) => text.chart.bandFailed(build.name, inReaderUnits(reason)));
}

/** Those on show, and the baseline where others are measured from it: what it lacks, the differences lack. */
function buildsTold(): readonly Build[] {
  const others = visibleBuilds.value;
  return comparing.value && !others.includes(baseline.value) ? [baseline.value, ...others] : others;
}

/** Whether the numbers are of a damper that somebody has measured. */
function assumedLine(): string[] {
  const { part, told } = text.damper.assumed;
  const parts = project.value.damper.assumedParts ?? [];
  return parts.length === 0 ? [] : [told(parts.map((each) => part[each]).join(', '))];
}

/** Of the builds on show, as the chart stands now. */
export function warningLines(): string[] {
  const known = buildsTold().map((build) => ({ build, outcome: outcomes.value.get(build.id) }));
  const solved = known.flatMap(({ build, outcome }) =>
    outcome?.curve ? [{ build, curve: outcome.curve, key: outcome.key }] : [],
  );
  return [
    ...assumedLine(),
    ...(comparing.value ? comparisonLines(bands.value !== 'hidden') : []),
    ...known.flatMap(({ build, outcome }) =>
      outcome?.failure ? [text.solver.failedFor(build.name, errorInWords(outcome.failure))] : [],
    ),
    ...solved.flatMap(({ build, curve, key }) => [
      ...failureLines(build, curve),
      ...fallbackLines(build, curve, key),
      ...airLines(build, curve),
      ...bandLines(build, curve),
    ]),
    ...(bandsFailure.value === undefined ? [] : [text.chart.bandsFailed(errorInWords(bandsFailure.value))]),
    ...cavitationLine(solved),
    ...wavesLine(solved),
  ];
}

export const Warnings = (): JSX.Element => <WarningList lines={warningLines()} />;
