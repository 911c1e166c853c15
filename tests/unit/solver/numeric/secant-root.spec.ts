import { describe, expect, it } from 'vitest';
import { secantRoot } from '../../../../src/solver/numeric/secant-root.ts';
import { exact } from '../../../../src/solver/numeric/solved.ts';

const otherwise = () => exact(-7);
const ANYWHERE = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };

describe('secantRoot', () => {
  it('finds the root of a smooth function near its guess in a few steps', () => {
    const asked: number[] = [];
    const f = (x: number) => {
      asked.push(x);
      return x * x - 2;
    };
    const root = secantRoot(f, { x: 1.4, slope: 0.35 }, ANYWHERE, 1e-15, otherwise) as { value: number };
    expect(Math.abs(root.value - Math.SQRT2)).toBeLessThan(1e-15);
    expect(asked.length).toBeLessThan(7);
  });

  it('takes a guess that is a root already, and a slope that leads to one', () => {
    expect(secantRoot((x) => x - 3, { x: 3, slope: 5 }, ANYWHERE, 0, otherwise)).toMatchObject({ value: 3 });
    expect(secantRoot((x) => x - 3, { x: 9, slope: 1 }, ANYWHERE, 0, otherwise)).toMatchObject({ value: 3 });
  });

  it.each([
    ['is flat', () => 1],
    ['has no root', (x: number) => 1 + x * x],
    ['is no number', () => Number.NaN],
    ['steps over zero', (x: number) => (x < 1 ? -1 : 1)],
  ])('leaves a function that %s to the other way', (_, f) => {
    expect(secantRoot(f, { x: 0.5, slope: 1 }, ANYWHERE, 0.5, otherwise)).toMatchObject({ value: -7 });
  });

  it('leaves a root outside its range, and steps that lead out of it, to the other way', () => {
    // x^2 - 4 from 0.1: the slope that is given leads to the root at -2.
    const square = (x: number) => x * x - 4;
    const guess = { x: 0.1, slope: -2.1 / 3.99 };
    expect(secantRoot(square, guess, ANYWHERE, 1e-12, otherwise)).toMatchObject({ value: -2 });
    expect(secantRoot(square, guess, { low: 0, high: 9 }, 1e-12, otherwise)).toMatchObject({ value: -7 });
    expect(secantRoot(square, { x: 1.9, slope: 0.25 }, { low: 0, high: 1.95 }, 1e-12, otherwise)).toMatchObject({
      value: -7,
    });
  });
});
