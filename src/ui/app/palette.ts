/**
 * Colours of builds: the order of Okabe and Ito (2008), darkened for a light sheet and lightened for a dark one until each
 * keeps 4.5 : 1 against it. A build is never told by colour alone: the baseline has the phantom line of a drawing.
 */
const LIGHT = ['#0a63a8', '#bd4405', '#08765a', '#98417a', '#7a6100', '#2f6f7d'] as const;
const DARK = ['#62b5f0', '#ff9460', '#3ecda0', '#e59ac8', '#e8c34d', '#8fd3df'] as const;

/** Dashes of the lines after the baseline: whole, dashed, dotted, with two dots, long, in pairs. They alone tell six builds apart. [px] */
const DASHES = ['solid', '9px,4px', '2px,4px', '14px,3px,2px,3px,2px,3px', '22px,6px', '7px,3px,7px,9px'] as const;
/** The chain line that drawings use for what was there before. */
const BASELINE_DASH = '16px,4px,3px,4px';

/** Marks of the builds after the baseline, by the names of the charts library; with the circle of the baseline they tell seven apart without colour. */
const MARKS = [
  'square-open',
  'diamond-open',
  'triangle-up-open',
  'triangle-down-open',
  'cross-open',
  'pentagon-open',
] as const;
const BASELINE_MARK = 'circle-open';
export type BuildMark = (typeof MARKS)[number] | typeof BASELINE_MARK;

const taken = new Map<string, number>();

/** A build keeps its colour while the page is open, whatever is deleted around it. */
export function colourIndex(ids: readonly string[], id: string): number {
  for (const gone of [...taken.keys()].filter((key) => !ids.includes(key))) taken.delete(gone);
  for (const each of ids) {
    if (taken.has(each)) continue;
    const used = new Set(taken.values());
    let free = 0;
    while (used.has(free)) free++;
    taken.set(each, free);
  }
  return taken.get(id) ?? 0;
}

export const buildColour = (index: number, dark: boolean): string => (dark ? DARK : LIGHT)[index % LIGHT.length];

/** The colour on a light sheet of a build that may be shown on a dark one. */
export function onLight(colour: string): string {
  const place = (DARK as readonly string[]).indexOf(colour);
  return place === -1 ? colour : LIGHT[place];
}

export function buildDash(position: number, isBaseline: boolean): string {
  return isBaseline ? BASELINE_DASH : DASHES[position % DASHES.length];
}

export const buildMark = (position: number, isBaseline: boolean): BuildMark =>
  isBaseline ? BASELINE_MARK : MARKS[position % MARKS.length];
