/**
 * Stacks that were solved before, for the runs that come after: an edit of the oil, a bleed or one stack leaves the others as
 * they were. What a stack answers depends, in its last digits, on the pressures that it answered before; so an answer is taken
 * again only where the pressures were the same from the first on, and every curve is to the digit that of a fresh run.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure across the shims |
 */
import type { StackTable } from '../damper/types.ts';
import type { LiftPoint, StackInput, Theory } from '../types.ts';
import { type FollowedStack, type FollowStacks, followStack, followStacks } from './followed-stack.ts';

/** One stack that was followed: every pressure in its order with its answer, and the judgement at the end. */
interface Recording {
  readonly pressures: number[];
  readonly points: LiftPoint[];
  judged?: { readonly of: string; readonly table: StackTable };
}

/** Orders of pressures kept of one stack: a plain curve, one with bands, a sweep. */
const MOST_RECORDINGS = 4;

/**
 * A way to follow stacks that remembers them from run to run.
 * @param mostStacks  how many; the one longest unused is forgotten first
 */
export function keepStacks(mostStacks: number): FollowStacks {
  const kept = new Map<string, Recording[]>();
  const recordingsOf = (stack: StackInput, theory: Theory): Recording[] => {
    const key = JSON.stringify([theory, stack]);
    const known = kept.get(key) ?? [];
    kept.delete(key);
    kept.set(key, known);
    if (kept.size > mostStacks) kept.delete(kept.keys().next().value as string);
    return known;
  };
  return (theory, hooks) =>
    followStacks(theory, hooks, (stack) => replayed(stack, theory, recordingsOf(stack, theory)));
}

function replayed(stack: StackInput, theory: Theory, known: Recording[]): FollowedStack {
  const taken: Recording = { pressures: [], points: [] };
  let fitting: readonly Recording[] = [...known];
  let live: FollowedStack | undefined;
  const goLive = (): FollowedStack => {
    if (live) return live;
    live = followStack(stack, theory);
    for (const p of taken.pressures) live.at(p);
    const goesOn = (old: Recording) => fitting.includes(old) && old.pressures.length === taken.pressures.length;
    const others = known.filter((old) => !goesOn(old)).slice(1 - MOST_RECORDINGS);
    known.splice(0, known.length, ...others, taken);
    return live;
  };
  const at = (p: number): LiftPoint => {
    const place = taken.pressures.length;
    const going = live ? [] : fitting.filter(({ pressures }) => pressures[place] === p);
    const point = going.length > 0 ? going[0].points[place] : goLive().at(p);
    if (going.length > 0) fitting = going;
    taken.pressures.push(p);
    taken.points.push(point);
    return point;
  };
  const judge = (table: StackTable): StackTable => {
    const of = table.pressure_Pa.join();
    const isEnd = ({ pressures, judged }: Recording) =>
      pressures.length === taken.pressures.length && judged?.of === of;
    const known = live ? undefined : fitting.find(isEnd)?.judged?.table;
    if (known) return known;
    taken.judged = { of, table: goLive().judge(table) };
    return taken.judged.table;
  };
  return { at, judge };
}
