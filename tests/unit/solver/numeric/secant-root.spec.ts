import { describe, expect, it } from 'vitest';
import { secantRoot } from '../../../../src/solver/numeric/secant-root.ts';
import { exact } from '../../../../src/solver/numeric/solved.ts';

const otherwise = () => exact(-7);

describe('secantRoot', () => {
  it('finds the root of a smooth function near its guess in a few steps', () => {
    const asked: number[] = [];
    const f = (x: number) => {
      asked.push(x);
      return x * x - 2;
    };
    const root = secantRoot(f, { x: 1.4, slope: 0.35 }, 1e-15, otherwise) as { value: number };
    expect(Math.abs(root.value - Math.SQRT2)).toBeLessThan(1e-15);
    expect(asked.length).toBeLessThan(7);
  });

  it('takes a guess that is a root already, and a slope that leads to one', () => {
    expect(secantRoot((x) => x - 3, { x: 3, slope: 5 }, 0, otherwise)).toMatchObject({ value: 3 });
    expect(secantRoot((x) => x - 3, { x: 9, slope: 1 }, 0, otherwise)).toMatchObject({ value: 3 });
  });

  it.each([
    ['is flat', () => 1],
    ['has no root', (x: number) => 1 + x * x],
    ['is no number', () => Number.NaN],
    ['steps over zero', (x: number) => (x < 1 ? -1 : 1)],
  ])('leaves a function that %s to the other way', (_, f) => {
    expect(secantRoot(f, { x: 0.5, slope: 1 }, 0.5, otherwise)).toMatchObject({ value: -7 });
  });
});
