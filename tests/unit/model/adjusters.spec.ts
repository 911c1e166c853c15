import { describe, expect, it } from 'vitest';
import { ADJUSTER_IDS, adjusterPlace, adjustersOf, withClicks } from '../../../src/model/adjusters.ts';
import { soundCartridge, soundProject } from '../../helpers/documents.ts';

const SPRING = { diameter_mm: 14, rate_N_mm: 20, preload_N: 40 };
const ADJUSTER = { travelPerClick_mm: 0.05, clicks: 7, clickCount: 12 };

/** A build that has every adjuster there is. */
function everyAdjuster() {
  const [build] = soundCartridge().builds;
  const coilSpring = { ...SPRING, adjuster: ADJUSTER };
  const { pistonCompression, pistonRebound, baseCompression } = build.valves;
  if (!baseCompression) throw new Error('the fixture must have a base valve');
  const valves = {
    pistonCompression: { ...pistonCompression, coilSpring },
    pistonRebound,
    baseCompression: { ...baseCompression, coilSpring: { ...coilSpring, adjuster: { ...ADJUSTER, clicks: 0 } } },
  };
  return { ...build, valves };
}

describe('adjustersOf', () => {
  it('lists those of a build, needles first, with where they stand', () => {
    expect(adjustersOf(soundCartridge().builds[0])).toEqual([
      { id: 'needle', clicks: 10, clickCount: 20 },
      { id: 'base-needle', clicks: 8, clickCount: 16 },
      { id: 'poppet', clicks: 3, clickCount: 24 },
      { id: 'rebound-spring', clicks: 6, clickCount: 20 },
    ]);
    expect(adjustersOf(everyAdjuster()).map(({ id }) => id)).toEqual(ADJUSTER_IDS);
    expect(adjustersOf(everyAdjuster()).map(({ clicks }) => clicks)).toEqual([10, 8, 3, 7, 6, 0]);
  });

  it('finds none where none is', () => {
    expect(adjustersOf(soundProject().builds[0])).toEqual([]);
  });
});

describe('withClicks', () => {
  it.each(ADJUSTER_IDS)('turns %s and nothing else, without touching the build', (id) => {
    const build = everyAdjuster();
    const kept = structuredClone(build);
    const after = adjustersOf(withClicks(build, id, 1));
    expect(after).toEqual(adjustersOf(kept).map((one) => (one.id === id ? { ...one, clicks: 1 } : one)));
    expect(build).toEqual(kept);
    expect(
      withClicks(withClicks(build, id, 1), id, adjustersOf(kept).find((one) => one.id === id)?.clicks ?? -1),
    ).toEqual(kept);
  });
});

describe('adjusterPlace', () => {
  it('names the field of an adjuster, there or not', () => {
    const [build] = soundCartridge().builds;
    expect(adjusterPlace(build, 'base-needle', 'builds[0]').path).toBe('builds[0].baseBleed.needle');
    expect(adjusterPlace(build, 'base-spring', 'builds[0]')).toEqual({
      path: 'builds[0].valves.baseCompression.coilSpring.adjuster',
      value: undefined,
    });
  });
});
