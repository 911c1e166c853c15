import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Aged, MOST_BYTES, MOST_STATES, NEWEST_KEPT, thinOut } from '../../../../src/ui/storage/thin-out.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
/** A whole number of days and weeks, so that stretches of time begin here. */
const NOW = 7 * DAY * 2900;

/** One state every `every` ms until now, oldest first. */
const savedEvery = (every: number, count: number, bytes = 1000): Aged[] =>
  Array.from({ length: count }, (_, i) => ({ revision: i + 1, savedAt: NOW - (count - 1 - i) * every, bytes }));
const left = (states: readonly Aged[], now = NOW): Aged[] => {
  const gone = new Set(thinOut(states, now));
  return states.filter(({ revision }) => !gone.has(revision));
};
const older = (states: readonly Aged[]): Aged[] => states.slice(0, -NEWEST_KEPT);

describe('thinOut', () => {
  it('keeps the newest, however close together', () => {
    expect(left(savedEvery(1000, NEWEST_KEPT))).toHaveLength(NEWEST_KEPT);
    const states = savedEvery(1000, 200);
    expect(left(states).slice(-NEWEST_KEPT)).toEqual(states.slice(-NEWEST_KEPT));
  });

  it('beyond them keeps one a minute within the hour', () => {
    const kept = older(left(savedEvery(5000, 300)));
    expect(kept.length).toBeGreaterThanOrEqual(22);
    expect(kept.length).toBeLessThanOrEqual(25);
    expect(new Set(kept.map(({ savedAt }) => Math.floor(savedAt / MINUTE))).size).toBe(kept.length);
  });

  it.each([
    ['a quarter of an hour within the day', 90 * MINUTE, 15 * MINUTE],
    ['a day within the month', 3 * DAY, DAY],
    ['a week beyond it', 70 * DAY, 7 * DAY],
  ])('one in %s', (_, age, every) => {
    const start = Math.floor((NOW - age) / every) * every;
    const states = [
      ...[0, 0.2, 0.4, 0.9, 1.1].map((part, i) => ({ revision: i + 1, savedAt: start + part * every, bytes: 10 })),
      ...savedEvery(1, NEWEST_KEPT).map((state) => ({ ...state, revision: state.revision + 5 })),
    ];
    expect(older(left(states)).map(({ revision }) => revision)).toEqual([4, 5]);
  });

  it('keeps no more than so many, the newest', () => {
    const kept = left(savedEvery(30 * MINUTE, 400));
    expect(kept.length).toBeLessThanOrEqual(MOST_STATES);
    expect(kept.at(-1)?.revision).toBe(400);
  });

  it('keeps within the size, but always the newest and one to fall back on', () => {
    const sized = left(savedEvery(HOUR, 40, MOST_BYTES / 4));
    expect(sized.map(({ revision }) => revision)).toEqual([37, 38, 39, 40]);
    expect(left(savedEvery(HOUR, 10, 2 * MOST_BYTES)).map(({ revision }) => revision)).toEqual([9, 10]);
  });

  it('never lets the newest go, is done after one pass, and stands a clock that went back', () => {
    const state = fc.record({
      savedAt: fc.integer({ min: NOW - 400 * DAY, max: NOW + DAY }),
      bytes: fc.integer({ min: 1, max: MOST_BYTES }),
    });
    fc.assert(
      fc.property(fc.array(state, { minLength: 1, maxLength: 120 }), (made) => {
        const states = made.map((each, i) => ({ ...each, revision: i + 1 }));
        const kept = left(states);
        expect(kept.at(-1)).toBe(states.at(-1));
        expect(kept.length).toBeLessThanOrEqual(MOST_STATES);
        expect(left(kept)).toEqual(kept);
      }),
    );
  });
});
