/** The planes in which a section is drawn and told: one where the stack is round, crest and trough where it waves. */
import { text } from '../text/en.ts';
import type { DrawnSection } from './drawn-section.ts';
import type { StackState } from './shape-at.ts';

interface Plane {
  readonly section: DrawnSection;
  /** Says of a name in which plane it holds. */
  readonly named: (name: string) => string;
}

export function planesOf(section: DrawnSection): Plane[] {
  const { waved } = section;
  if (!waved) return [{ section, named: (name) => name }];
  return [
    { section: waved.crest, named: text.wave.at.crest },
    { section: waved.trough, named: text.wave.at.trough },
  ];
}

/** One length of the state in every plane, its mean round the circle first. */
export function inPlanes(
  section: DrawnSection,
  name: string,
  write: (state: StackState) => string,
): (readonly [string, string])[] {
  const told = ({ stack: { state } }: DrawnSection, named: string): (readonly [string, string])[] =>
    state ? [[named, write(state)]] : [];
  const mean = section.waved ? told(section, text.wave.ofMean(name)) : [];
  return [...mean, ...planesOf(section).flatMap((plane) => told(plane.section, plane.named(name)))];
}
