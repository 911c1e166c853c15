/** What to take out of the drawer, and what changes from the baseline. */
import { alignRows, type RowPair } from '../model/align-rows.ts';
import { countOf } from '../model/expand-shims.ts';
import type { Build, ShimRow, ValvePlace, Valving } from '../model/project.ts';
import type { Family } from '../units/format.ts';
import type { SheetInput } from './input.ts';
import { el, name, type SheetNode } from './node.ts';
import { type Cell, hint, section, table } from './parts.ts';
import { type PickedShim, pickingList } from './picking.ts';
import { both, settingIn } from './quantities.ts';
import { differingSettings } from './settings.ts';
import { shimSize } from './shim-words.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.picking;
const changes = sheetWords.changes;

function pickRow(pick: PickedShim, family: Family): Cell[] {
  const { innerDiameter_mm, isSpecial, needed, inDrawer, missing, inBaseline, bores } = pick;
  const extras = [
    ...(innerDiameter_mm === undefined ? [] : [words.bore(both('length', innerDiameter_mm, family))]),
    ...(isSpecial ? [words.special] : []),
    ...bores.map(({ innerDiameter_mm: bore, count }) =>
      bore === undefined ? words.noBore(count) : words.inDrawer(count, both('length', bore, family)),
    ),
  ];
  const shim = [shimSize(pick, family), ...extras.map((extra) => el('div', { class: 'hint' }, extra))];
  return [shim, ...[needed, inDrawer, missing, inBaseline].map(String)];
}

export function pickingSection({ project, build, baseline, family }: SheetInput): SheetNode {
  const numbers = [words.needed, words.has, words.missing, words.baseline];
  const columns = [
    { head: `${words.shim}: ${sheetWords.shims.size(family)}` },
    ...numbers.map((head) => ({ head, isNumber: true })),
  ];
  const rows = pickingList(build, baseline, project.drawer).map((pick) => pickRow(pick, family));
  return section(
    'picking',
    words.title,
    '',
    table(columns, rows),
    hint(project.drawer.length === 0 ? words.noDrawer : words.note),
  );
}

const shimInWords = (row: ShimRow, family: Family): string => changes.shim(countOf(row), shimSize(row, family));

/** One line for what became of a row; none for one that was kept, or for the place that a moved one left. */
function pairLine(pair: RowPair, family: Family): string[] {
  if (pair.mark === 'kept' || (pair.mark === 'moved' && pair.side === 'before')) return [];
  const sign = changes.signs[pair.mark];
  if (pair.mark === 'removed') return [`${sign} ${shimInWords(pair.before.row, family)} ${changes.removed}`];
  const after = pair.after.row;
  if (pair.mark !== 'changed') return [`${sign} ${shimInWords(after, family)} ${changes[pair.mark]}`];
  const before = pair.before.row;
  const [was, is] = [shimSize(before, family), shimSize(after, family)];
  const size = was === is ? is : `${was} → ${is}`;
  const count = countOf(before) === countOf(after) ? '' : `, ${changes.count(countOf(before), countOf(after))}`;
  return [`${sign} ${size}${count === '' && was === is ? `, ${changes.altered}` : count}`];
}

function settingLines(before: object | undefined, after: object | undefined, family: Family): string[] {
  return differingSettings(before, after, settingIn(family)).map((s) => changes.setting(s.name, s.from, s.to));
}

const beside = ({ shims: _, ...rest }: Valving): object => rest;

function placeLines(before: Valving | undefined, after: Valving | undefined, family: Family): string[] {
  if (before && after) {
    const rows = alignRows(before.shims, after.shims).flatMap((pair) => pairLine(pair, family));
    return [...rows, ...settingLines(beside(before), beside(after), family)];
  }
  if (before === after) return [];
  return [after ? changes.stackAdded : changes.stackRemoved];
}

export interface ChangeGroup {
  readonly title: string;
  readonly lines: readonly string[];
}

const PLACES: readonly ValvePlace[] = ['pistonCompression', 'pistonRebound', 'baseCompression'];
const GROUPS = ['bleed', 'baseBleed', 'basePoppet'] as const;

type Shown = Pick<SheetInput, 'project' | 'family'>;

/** Everything that differs between two builds, by the part that it belongs to; parts without a change are left out. */
export function changeGroups(from: Build, to: Build, { project, family }: Shown): ChangeGroup[] {
  const places = PLACES.map((place) => ({
    title: sheetWords.placeOf(project.damper.layout, place),
    lines: placeLines(from.valves[place], to.valves[place], family),
  }));
  const groups = GROUPS.map((group) => ({
    title: changes.groups[group],
    lines: settingLines(from[group], to[group], family),
  }));
  return [...places, ...groups].filter(({ lines }) => lines.length > 0);
}

function groupPart({ title, lines }: ChangeGroup): SheetNode {
  return el('div', {}, el('h3', {}, title), el('ul', { class: 'plain' }, ...lines.map((line) => el('li', {}, line))));
}

export function changesSection(input: SheetInput): SheetNode {
  const { build, baseline } = input;
  const groups = build.id === baseline.id ? [] : changeGroups(baseline, build, input);
  const nothing = build.id === baseline.id ? changes.isBaseline : changes.none;
  const told = groups.length === 0 ? [el('p', {}, nothing)] : groups.map(groupPart);
  return section('changes', name(changes.title(baseline.name)), '', ...told);
}
