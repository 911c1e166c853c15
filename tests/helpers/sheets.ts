/** Sheets for tests: an invented project by hand, and what stands in the tree of a sheet. */
import type { Build, Project } from '../../src/model/project.ts';
import { buildSheet } from '../../src/sheet/build-sheet.ts';
import type { SheetCurve, SheetInput } from '../../src/sheet/input.ts';
import type { SheetChild, SheetNode } from '../../src/sheet/node.ts';
import { soundProject } from './documents.ts';

/** Forces that a person can check: 100 N at every speed and 500 N for each m/s more. */
export const PLAIN_CURVE: SheetCurve = {
  status: 'solved',
  shaftSpeed_m_s: [-2, -1, -0.3, -0.1, -0.05, 0.05, 0.1, 0.3, 1, 2],
  force_N: [-1100, -600, -250, -150, -125, 125, 150, 250, 600, 1100],
  reasons: [],
  theories: { compression: 'large-deflection', rebound: 'large-deflection' },
};

/** The first build of the sound project, changed, in a sheet of its own baseline. */
export function sheetInput(change: Partial<Build> = {}, more: Partial<SheetInput> = {}): SheetInput {
  const project: Project = soundProject();
  const build = { ...project.builds[0], ...change };
  const curves = { build: PLAIN_CURVE, baseline: PLAIN_CURVE };
  return { project, build, baseline: build, family: 'metric', curves, ...more };
}

/** All elements of a sheet that a test picks, in the order of the page. */
export function found(child: SheetChild, picks: (node: SheetNode) => boolean): SheetNode[] {
  if (typeof child === 'string') return [];
  return [...(picks(child) ? [child] : []), ...child.children.flatMap((each) => found(each, picks))];
}

/** What a person reads there. */
export const textIn = (child: SheetChild): string =>
  typeof child === 'string' ? child : child.children.map(textIn).join(' ');

export const byTag = (child: SheetChild, tag: string): SheetNode[] => found(child, (node) => node.tag === tag);

export const byClass = (child: SheetChild, name: string): SheetNode[] =>
  found(child, ({ attributes }) =>
    String(attributes.class ?? '')
      .split(' ')
      .includes(name),
  );

/** The section of a sheet with this class. */
export function sectionOf(input: SheetInput, name: string): SheetNode {
  const [section] = byClass(buildSheet(input), name);
  if (!section) throw new Error(`the sheet has no section ${name}`);
  return section;
}

/** The facts under a section: what is known of each label; undefined where a line is left to write on. */
export function factsOf(section: SheetNode): Record<string, string | undefined> {
  const pairs = byTag(section, 'dl').flatMap((list) => list.children.map((child) => byEntry(child)));
  return Object.fromEntries(pairs);
}

function byEntry(entry: SheetChild): [string, string | undefined] {
  const [[label], [value]] = [byTag(entry, 'dt'), byTag(entry, 'dd')];
  return [textIn(label), value.attributes.class === 'blank' ? undefined : textIn(value)];
}

export const rowsOf = (section: SheetNode): string[][] =>
  byTag(section, 'tbody').flatMap((body) =>
    byTag(body, 'tr').map((row) => row.children.map((cell) => textIn(cell).trim())),
  );
