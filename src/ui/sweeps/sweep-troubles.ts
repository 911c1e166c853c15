/** Which places of a sweep have no force, and why, in words. */
import type { Build } from '../../model/project.ts';
import { inReaderUnits } from '../app/quantities.ts';
import { visibleBuilds } from '../app/store.ts';
import { type SweepPoint, sweepAnswer } from '../app/sweep-solve.ts';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';

interface Trouble {
  readonly at: number;
  readonly reason: string;
}

function troublesOf(points: readonly SweepPoint[]): Trouble[] {
  return points.flatMap((point) => {
    const answer = sweepAnswer(point);
    const reasons =
      answer?.failure === undefined ? (answer?.forces?.reasons ?? []).map(inReaderUnits) : [answer.failure];
    return reasons.map((reason) => ({ at: point.at, reason }));
  });
}

function linesOf(build: Build, sweep: Sweep): string[] {
  const troubles = troublesOf(sweep.points.value.filter((point) => point.build.id === build.id));
  return [...new Set(troubles.map(({ reason }) => reason))].map((reason) => {
    const places = troubles.filter((trouble) => trouble.reason === reason).map(({ at }) => at);
    const [low, high] = [sweep.inWords(Math.min(...places)), sweep.inWords(Math.max(...places))];
    return text.sweep.troubled(build.name, low === high ? low : text.sweep.span(low, high), reason);
  });
}

/** Each reason once a build. */
export const sweepTroubles = (sweep: Sweep): string[] => visibleBuilds.value.flatMap((build) => linesOf(build, sweep));
