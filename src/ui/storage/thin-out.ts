/** Which saved states of a project are kept: the newest, then ever fewer with age, within a number and a size. */
export interface Aged {
  readonly revision: number;
  readonly savedAt: number;
  readonly bytes: number;
}

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** Of this age at most, one state in every so much time [ms]. */
const SPANS = [
  { age: HOUR, every: MINUTE },
  { age: DAY, every: 15 * MINUTE },
  { age: 30 * DAY, every: DAY },
  { age: Number.POSITIVE_INFINITY, every: 7 * DAY },
] as const;

/** Kept whatever their age. */
export const NEWEST_KEPT = 12;
export const MOST_STATES = 60;
export const MOST_BYTES = 12 * 1024 * 1024;
/** Kept whatever their size: the newest, and one to fall back on. */
const ALWAYS_KEPT = 2;

/** Name of the stretch of time that a state stands for. Stretches do not move with the clock, so that a state stays. */
function stretchOf(savedAt: number, now: number): string {
  const { every } = SPANS.find(({ age }) => now - savedAt < age) ?? SPANS[SPANS.length - 1];
  return `${every}:${Math.floor(savedAt / every)}`;
}

/** Revisions to let go. */
export function thinOut(states: readonly Aged[], now: number): number[] {
  const newestFirst = [...states].sort((a, b) => b.revision - a.revision);
  const stretches = new Set<string>();
  let [kept, bytes, full] = [0, 0, false];
  return newestFirst.flatMap((state, i) => {
    const stretch = stretchOf(state.savedAt, now);
    const stands = i < NEWEST_KEPT || !stretches.has(stretch);
    full ||= kept >= MOST_STATES || (kept >= ALWAYS_KEPT && bytes + state.bytes > MOST_BYTES);
    if (!stands || full) return [state.revision];
    stretches.add(stretch);
    kept++;
    bytes += state.bytes;
    return [];
  });
}
