/** What differs between two builds beside their stacks: bleeds, poppet, and what their adjusters are turned to. */
import { adjustersOf } from '../../model/adjusters.ts';
import type { Bleed, Build, Layout } from '../../model/project.ts';
import { text } from '../text/en.ts';

/** Writes lengths in the person's units, without the unit. */
export type LengthWriter = (length_mm: number) => string;

/** A part of a build as text, but for what its adjuster is turned to. */
export const withoutClicks = (part: unknown): string =>
  JSON.stringify(part, (key, value) => (key === 'clicks' ? undefined : value)) ?? '';

function describeBleed(
  name: string,
  before: Bleed | undefined,
  after: Bleed | undefined,
  length: LengthWriter,
): string[] {
  if (withoutClicks(before) === withoutClicks(after)) return [];
  const write = (bleed: Bleed | undefined): string =>
    bleed ? text.difference.bleed(bleed.count, length(bleed.diameter_mm)) : text.difference.none;
  const [from, to] = [write(before), write(after)];
  return [from === to ? text.difference.otherwise(name) : text.difference.setting(name, from, to)];
}

function describePoppet({ basePoppet: before }: Build, { basePoppet: after }: Build, length: LengthWriter): string[] {
  if (withoutClicks(before) === withoutClicks(after)) return [];
  const write = (poppet: Build['basePoppet']): string =>
    poppet ? text.difference.poppet(length(poppet.seatDiameter_mm)) : text.difference.none;
  const [from, to] = [write(before), write(after)];
  const name = text.stack.poppetShort;
  return [from === to ? text.difference.otherwise(name) : text.difference.setting(name, from, to)];
}

/** Adjusters that both builds have and that stand differently. */
function describeClicks(before: Build, after: Build, layout: Layout): string[] {
  const others = new Map(adjustersOf(before).map(({ id, clicks }) => [id, clicks]));
  return adjustersOf(after).flatMap(({ id, clicks }) => {
    const from = others.get(id);
    if (from === undefined || from === clicks) return [];
    return [text.difference.clicks(text.adjusterOf(layout, id), from, clicks)];
  });
}

export const describeBeside = (before: Build, after: Build, layout: Layout, length: LengthWriter): string[] => [
  ...describeBleed(text.stack.bleedShort, before.bleed, after.bleed, length),
  ...describeBleed(text.stack.baseBleedShort, before.baseBleed, after.baseBleed, length),
  ...describePoppet(before, after, length),
  ...describeClicks(before, after, layout),
];
