/** The adjusters of a build: what a person turns by clicks without opening the damper. */
import { ADJUSTER_IDS, type AdjusterId } from './adjuster-ids.ts';
import { child, type Place } from './place.ts';
import type { Build, PreloadAdjuster } from './project.ts';

export { ADJUSTER_IDS, type AdjusterId } from './adjuster-ids.ts';

/** Where each adjuster lies in its build. */
const WHERE = {
  needle: ['bleed', 'needle'],
  'base-needle': ['baseBleed', 'needle'],
  poppet: ['basePoppet', 'adjuster'],
  'compression-spring': ['valves', 'pistonCompression', 'coilSpring', 'adjuster'],
  'rebound-spring': ['valves', 'pistonRebound', 'coilSpring', 'adjuster'],
  'base-spring': ['valves', 'baseCompression', 'coilSpring', 'adjuster'],
} as const satisfies Readonly<Record<AdjusterId, readonly string[]>>;

export interface Adjuster {
  readonly id: AdjusterId;
  /** From closed. */
  readonly clicks: number;
  /** How many clicks it has. */
  readonly clickCount: number;
}

type Clicked = Pick<PreloadAdjuster, 'clicks' | 'clickCount'>;

/** Where an adjuster stands in a document, or would stand. @param path of the build */
export const adjusterPlace = (build: Build, id: AdjusterId, path = ''): Place =>
  child({ value: build, path }, ...WHERE[id]);

const clickedAt = (build: Build, id: AdjusterId): Clicked | undefined =>
  adjusterPlace(build, id).value as Clicked | undefined;

/** The adjusters that a build has, needles first. @param build that has been checked */
export function adjustersOf(build: Build): Adjuster[] {
  return ADJUSTER_IDS.flatMap((id) => {
    const clicked = clickedAt(build, id);
    return clicked ? [{ id, clicks: clicked.clicks, clickCount: clicked.clickCount }] : [];
  });
}

/** A copy of the build with one adjuster, which it must have, turned to `clicks`; what is not on the way is shared. */
export const withClicks = (build: Build, id: AdjusterId, clicks: number): Build =>
  replaced(build, WHERE[id], (adjuster) => ({ ...(adjuster as Clicked), clicks })) as Build;

function replaced(holder: unknown, [key, ...rest]: readonly string[], change: (at: unknown) => unknown): unknown {
  if (key === undefined) return change(holder);
  const parts = holder as Readonly<Record<string, unknown>>;
  return { ...parts, [key]: replaced(parts[key], rest, change) };
}
