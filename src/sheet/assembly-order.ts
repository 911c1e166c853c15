/** The shims of a build in the order in which they go on, numbered, with their totals. */
import { joinEqualRows } from '../model/align-rows.ts';
import { countOf } from '../model/expand-shims.ts';
import { stackHeight } from '../model/lay-shims.ts';
import type { Build, Damper, FirstStack, ShimRow, ValvePlace, Valving } from '../model/project.ts';

/** Equal shims lying on one another, and which of the single shims of their stack they are. */
export interface NumberedRow {
  readonly row: ShimRow;
  /** Counted from 1 in the order of the list. */
  readonly from: number;
  readonly to: number;
}

/**
 * - `before-piston`: goes on ahead of the piston, so that the face shim comes last;
 * - `after-piston`: goes on after it, face shim first;
 * - `from-face`: nobody has said which, and it is told from the face shim outwards.
 */
export type Order = 'before-piston' | 'after-piston' | 'from-face';

export interface OrderedStack {
  readonly place: ValvePlace;
  readonly valving: Valving;
  readonly order: Order;
  /** In the order of the list. */
  readonly rows: readonly NumberedRow[];
  /** Single shims. */
  readonly count: number;
  /** Of what lies on the clamp. */
  readonly height_mm: number;
}

function numbered(rows: readonly ShimRow[]): NumberedRow[] {
  let last = 0;
  return rows.map((row) => {
    const from = last + 1;
    last += countOf(row);
    return { row, from, to: last };
  });
}

function orderOf(place: ValvePlace, first: FirstStack | undefined): Order {
  if (place === 'baseCompression' || first === undefined) return 'from-face';
  return place === first ? 'before-piston' : 'after-piston';
}

function orderedStack(place: ValvePlace, valving: Valving, order: Order): OrderedStack {
  const fromFace = joinEqualRows(valving.shims);
  const rows = numbered(order === 'before-piston' ? [...fromFace].reverse() : fromFace);
  return { place, valving, order, rows, count: rows.at(-1)?.to ?? 0, height_mm: stackHeight(valving) };
}

/** Every stack that build and damper have: what goes on first comes first, the base last. */
export function orderedStacks(build: Build, damper: Damper): OrderedStack[] {
  const first = build.assembly?.firstStack;
  const piston: ValvePlace[] = ['pistonCompression', 'pistonRebound'];
  if (first === 'pistonRebound') piston.reverse();
  return [...piston, 'baseCompression' as const].flatMap((place) => {
    const valving = build.valves[place];
    return valving && damper.valves[place] ? [orderedStack(place, valving, orderOf(place, first))] : [];
  });
}
