import { describe, expect, it } from 'vitest';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import { lifeBetween } from '../../../../src/ui/section/life-at.ts';

const life = (fatigue: number, yields: number, shim: number): NonNullable<ForcePoint['life']> => ({
  fatigue: { use: fatigue, shim },
  yield: { use: yields, shim },
  takesSet: yields > 1,
  unknownShims: 1,
});

describe('reserves between two speeds', () => {
  it('go straight, and name the shim of the worse end', () => {
    const half = lifeBetween(life(0.2, 0.8, 0), life(0.6, 1, 3), 0.5);
    expect(half?.fatigue.use).toBeCloseTo(0.4, 12);
    expect(half?.yield.use).toBeCloseTo(0.9, 12);
    expect(half).toMatchObject({ fatigue: { shim: 3 }, yield: { shim: 3 }, takesSet: false, unknownShims: 1 });
    expect(lifeBetween(life(0.6, 1, 3), life(0.2, 0.8, 0), 0.5)?.fatigue.shim).toBe(3);
  });

  it('warn of a set from the speed on at which the yield is reached', () => {
    expect(lifeBetween(life(0.2, 0.8, 0), life(0.6, 1.2, 0), 0.4)?.takesSet).toBe(false);
    expect(lifeBetween(life(0.2, 0.8, 0), life(0.6, 1.2, 0), 0.6)?.takesSet).toBe(true);
  });

  it('are none where an end has none', () => {
    expect(lifeBetween(undefined, life(0.2, 0.8, 0), 0.5)).toBeUndefined();
    expect(lifeBetween(life(0.2, 0.8, 0), undefined, 0.5)).toBeUndefined();
  });
});
