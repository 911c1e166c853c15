import { describe, expect, it } from 'vitest';
import { preloadAt } from '../../../src/model/preload.ts';

const SPRING = { rate_N_mm: 20, preload_N: 50 };
const at = (clicks: number) => preloadAt({ ...SPRING, adjuster: { travelPerClick_mm: 0.1, clicks, clickCount: 40 } });

describe('preloadAt', () => {
  it('is the preload of a spring without an adjuster, and of one with its adjuster closed', () => {
    expect(preloadAt(SPRING)).toBe(50);
    expect(at(0)).toBe(50);
  });

  it('falls by travel times rate with every click', () => {
    // Worked by hand: 10 clicks of 0.1 mm let 20 N/mm out by 1 mm, which takes 20 of the 50 N.
    expect(at(10)).toBeCloseTo(30, 12);
  });

  it('never becomes a pull: the spring is loose after 2.5 mm', () => {
    expect(at(25)).toBeCloseTo(0, 12);
    expect(at(26)).toBe(0);
    expect(at(40)).toBe(0);
  });
});
