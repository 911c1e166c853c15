/** Drawing, shims and totals of every stack, in the order in which they go on. */
import type { Damper, ValveBody } from '../model/project.ts';
import type { Family } from '../units/format.ts';
import { type NumberedRow, type OrderedStack, orderedStacks } from './assembly-order.ts';
import type { SheetInput } from './input.ts';
import { el, type SheetNode } from './node.ts';
import { boxes, type Cell, hint, section, table } from './parts.ts';
import { both, otherFamily } from './quantities.ts';
import { shimNotes, shimSize, stackNotes } from './shim-words.ts';
import { stackDrawing } from './stack-drawing.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.shims;

function rowOf({ row, from, to }: NumberedRow, { valving }: OrderedStack, family: Family): Cell[] {
  const notes = shimNotes(row, valving, family);
  const size = [shimSize(row, family), ...notes.map((note) => el('div', { class: 'hint' }, note))];
  const count = to - from + 1;
  const ticks = el('span', { class: 'boxes' }, ...boxes(count));
  return [words.numbers(from, to), size, shimSize(row, otherFamily(family)), String(count), ticks];
}

function shimTable(stack: OrderedStack, family: Family): SheetNode {
  const columns = [
    { head: words.number },
    { head: words.size(family) },
    { head: words.size(otherFamily(family)) },
    { head: words.count, isNumber: true },
    { head: words.done },
  ];
  const total = words.total(
    stack.count,
    both('length', stack.height_mm, family),
    both('length', stack.valving.clampDiameter_mm, family),
  );
  return table(
    columns,
    stack.rows.map((row) => rowOf(row, stack, family)),
    total,
  );
}

function stackSection(stack: OrderedStack, body: ValveBody, damper: Damper, family: Family): SheetNode {
  const place = sheetWords.placeOf(damper.layout, stack.place);
  return section(
    stack.place,
    place,
    '',
    stackDrawing(stack, body, place, family),
    shimTable(stack, family),
    hint(words.order[stack.order]),
    ...stackNotes(stack.valving, family).map(hint),
  );
}

export function stackSections({ project: { damper }, build, family }: SheetInput): SheetNode[] {
  const stacks = orderedStacks(build, damper).flatMap((stack) => {
    const body = damper.valves[stack.place];
    return body ? [stackSection(stack, body, damper, family)] : [];
  });
  return [el('div', { class: 'pair stacks' }, ...stacks), hint(sheetWords.facing)];
}
