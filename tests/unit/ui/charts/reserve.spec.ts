import { describe, expect, it } from 'vitest';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import { lifeReserve, setNote, yieldReserve } from '../../../../src/ui/charts/reserve.ts';

const pointWith = (fatigue: number, yields: number): ForcePoint =>
  ({
    life: {
      fatigue: { use: fatigue, shim: 2 },
      yield: { use: yields, shim: 0 },
      takesSet: yields > 1,
      unknownShims: 0,
    },
  }) as ForcePoint;

const write = (value: number, digits: number): string => value.toFixed(digits);

describe('reserves at the cursor', () => {
  it('are the reciprocal of the use, with the shim counted from 1', () => {
    const point = pointWith(0.8, 0.5);
    expect(lifeReserve(point, write)).toBe('1.25 (no. 3)');
    expect(yieldReserve(point, write)).toBe('2.00 (no. 1)');
  });

  it('warn of a set', () => {
    expect(yieldReserve(pointWith(0.8, 1.25), write)).toBe('0.80 (no. 1)');
    expect(setNote(pointWith(0.8, 1.25))).toBe('will take a set');
    expect(setNote(pointWith(0.8, 0.5))).toBeUndefined();
  });

  it('are ample where next to nothing is used, and a dash where no strength is known', () => {
    expect(lifeReserve(pointWith(0, 0), write)).toBe('over 10');
    expect(lifeReserve({} as ForcePoint, write)).toBe('–');
    expect(yieldReserve({} as ForcePoint, write)).toBe('–');
  });
});
