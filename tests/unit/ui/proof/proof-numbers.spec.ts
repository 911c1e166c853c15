import { describe, expect, it } from 'vitest';
import {
  showComputed,
  showDeviation,
  showShare,
  showSignificant,
  showStored,
  showTolerance,
} from '../../../../src/ui/proof/proof-numbers.ts';
import { quantity } from './planted-reports.ts';

const relative = { relative: 0.015, reason: 'aim of the stack solver' };
const absolute = { absolute: 4.4, reason: 'difference of two moments' };

describe('numbers of the proof', () => {
  it.each([
    [0, '0'],
    [0.00231, '0.00231'],
    [-12.5, '−12.5'],
    [0.0001060507, '1.060507 × 10⁻⁴'],
    [2.06e11, '2.06 × 10¹¹'],
    [-3.2e-6, '−3.2 × 10⁻⁶'],
    [999999, '999999'],
  ])('%d is stored as %s', (value, shown) => expect(showStored(value)).toBe(shown));

  it.each([
    [2.15483, 4, '2.155'],
    [0.0632412, 4, '0.06324'],
    [1729.6, 4, '1730'],
    [0.00010604, 3, '1.06 × 10⁻⁴'],
    [0, 3, '0'],
    [Number.NaN, 3, '–'],
    [Number.POSITIVE_INFINITY, 3, '–'],
  ])('%d to %i digits is %s', (value, digits, shown) => expect(showSignificant(value, digits)).toBe(shown));

  it('what was computed has the digits that its tolerance tells apart', () => {
    expect(showComputed(quantity({ computed: 11.4523456, allowed: 4.4 }))).toBe('11.45');
    expect(showComputed(quantity({ computed: 4.830917874396, allowed: 4.8e-9 }))).toBe('4.83091787440');
    expect(showComputed(quantity({ computed: 0, allowed: 1e-12 }))).toBe('0');
    expect(showComputed(quantity({ computed: undefined }))).toBe('–');
    expect(showComputed(quantity({ computed: Number.NaN }))).toBe('–');
  });

  it('deviation and tolerance stand in the same terms', () => {
    // 4 of 200 MPa is 2 %.
    expect([showDeviation(quantity(), relative), showTolerance(relative, 'MPa')]).toEqual(['2.0 %', '1.5 %']);
    expect([showDeviation(quantity(), absolute), showTolerance(absolute, 'MPa')]).toEqual(['4.0 MPa', '±4.4 MPa']);
    expect(showTolerance({ absolute: 0.5, reason: 'two printed digits' }, '-')).toBe('±0.5');
    expect(showTolerance({ relative: 1e-9, reason: 'seven digits given' }, 'N')).toBe('1 × 10⁻⁷ %');
    expect(showDeviation(quantity({ deviation: Number.POSITIVE_INFINITY }), relative)).toBe('–');
  });

  it.each([
    [0, '0 %'],
    [0.001, '1 %'],
    [0.371, '38 %'],
    [1, '100 %'],
    [1.0000001, '101 %'],
    [9797.2, '9800 ×'],
    [12.34, '12 ×'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('%d of a tolerance is %s, rounded up while it is in per cent', (share, shown) =>
    expect(showShare(share)).toBe(shown),
  );
});
