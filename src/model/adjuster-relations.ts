/** What an adjuster by clicks must keep. */
import type { InputFault } from '../units/fault.ts';
import { child, numberAt, type Place } from './place.ts';
import { atMost, relationFault } from './relation.ts';

/** It stands no further out than it goes. @param code of the kind of adjuster */
export function clickFaults(adjuster: Place, code: string): InputFault[] {
  return relationFault(child(adjuster, 'clicks'), {
    code,
    wanted: 'at most the clicks that the adjuster has,',
    limit: numberAt(child(adjuster, 'clickCount')),
    unit: 'clicks',
    holds: atMost,
  });
}

/** The adjuster of a spring can only take off what the spring has. @param spring with an adjuster or without */
export function preloadAdjusterFaults(spring: Place): InputFault[] {
  const adjuster = child(spring, 'adjuster');
  if (adjuster.value === undefined) return [];
  const preload = child(spring, 'preload_N');
  const wanted = 'a preload above 0, which the adjuster takes off';
  const idle = numberAt(preload) === 0;
  return [
    ...(idle ? [{ code: 'adjuster.idle', path: preload.path, got: '0', wanted, unit: 'N' }] : []),
    ...clickFaults(adjuster, 'adjuster.clicks'),
  ];
}
