/**
 * Stacks that were solved before, for the runs that come after: an edit of the oil, a bleed or one stack leaves the others as
 * they were. What a stack answers depends, in its last digits, on what it answered before; so an answer is taken again only
 * where the questions were the same from the first on, and every curve is to the digit that of a fresh run.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | mean pressure on the zone |
 */
import type { StackTable, WavesOnset } from '../damper/types.ts';
import type { LiftPoint, StackInput } from '../types.ts';
import { type FollowedStack, type FollowStacks, followStack, followStacks } from './followed-stack.ts';

/** A question that was asked of a stack: how a live one answers it, and what came out. */
interface Asked {
  readonly question: string;
  readonly ask: (live: FollowedStack) => LiftPoint | WavesOnset;
  readonly answer: LiftPoint | WavesOnset;
}

/** One stack that was followed: every question in its order with its answer, and the judgement at the end. */
interface Recording {
  readonly asked: Asked[];
  judged?: { readonly of: string; readonly table: StackTable };
}

/** Orders of questions kept of one stack: a round curve, one that follows the waves, one with bands, a sweep. */
const MOST_RECORDINGS = 4;

/**
 * A way to follow stacks that remembers them from run to run.
 * @param mostStacks  how many; the one longest unused is forgotten first
 */
export function keepStacks(mostStacks: number): FollowStacks {
  const kept = new Map<string, Recording[]>();
  const recordingsOf = (stack: StackInput): Recording[] => {
    const key = JSON.stringify(stack);
    const known = kept.get(key) ?? [];
    kept.delete(key);
    kept.set(key, known);
    if (kept.size > mostStacks) kept.delete(kept.keys().next().value as string);
    return known;
  };
  return (hooks) => followStacks(hooks, (stack) => replayed(stack, recordingsOf(stack)));
}

function replayed(stack: StackInput, known: Recording[]): FollowedStack {
  const taken: Recording = { asked: [] };
  let fitting: readonly Recording[] = [...known];
  let live: FollowedStack | undefined;
  const goLive = (): FollowedStack => {
    if (live) return live;
    live = followStack(stack);
    for (const { ask } of taken.asked) ask(live);
    const goesOn = (old: Recording) => fitting.includes(old) && old.asked.length === taken.asked.length;
    const others = known.filter((old) => !goesOn(old)).slice(1 - MOST_RECORDINGS);
    known.splice(0, known.length, ...others, taken);
    return live;
  };
  const answerOf = (question: string, ask: Asked['ask']): Asked['answer'] => {
    const place = taken.asked.length;
    const going = live ? [] : fitting.filter(({ asked }) => asked[place]?.question === question);
    const answer = going.length > 0 ? going[0].asked[place].answer : ask(goLive());
    if (going.length > 0) fitting = going;
    taken.asked.push({ question, ask, answer });
    return answer;
  };
  const judge = ({ leavesRound, fallback, ...table }: StackTable): StackTable => {
    const of = `${table.theory} ${table.pressure_Pa.join()}`;
    const isEnd = ({ asked, judged }: Recording) => asked.length === taken.asked.length && judged?.of === of;
    const known = live ? undefined : fitting.find(isEnd)?.judged;
    taken.judged = known ?? { of, table: goLive().judge(table) };
    // How far the stack is used is a matter of its run.
    return { ...taken.judged.table, ...(leavesRound && { leavesRound }), ...(fallback && { fallback }) };
  };
  return {
    at: (p, theory) => answerOf(`${theory} ${p}`, (followed) => followed.at(p, theory)) as LiftPoint,
    onset: (pressures_Pa) =>
      answerOf(`onset ${pressures_Pa.join()}`, (followed) => followed.onset(pressures_Pa)) as WavesOnset,
    judge,
  };
}
