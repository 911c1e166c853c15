import { describe, expect, it } from 'vitest';
import { parseInto } from '../../../src/units/expression.ts';
import { displayOf } from '../../../src/units/format.ts';

/** Source: the international mile, 1609.344 m exactly (international yard and pound agreement of 1959). */
describe('the distance that a vehicle has gone', () => {
  const read = (typed: string, saved: 'km' | 'mi', shown: 'km' | 'mi'): number => {
    const answer = parseInto(typed, 'distance', saved, shown, 'distance');
    return answer.ok ? answer.value : Number.NaN;
  };

  it('is read in kilometres and miles, bare numbers in the unit on show', () => {
    expect(read('1 mi', 'km', 'km')).toBeCloseTo(1.609344, 9);
    expect(read('100 miles', 'km', 'km')).toBeCloseTo(160.9344, 9);
    expect(read('1000 km', 'mi', 'mi')).toBeCloseTo(621.371192237, 6);
    expect(read('1000', 'km', 'mi')).toBeCloseTo(1609.344, 6);
    expect(read('12 N', 'km', 'km')).toBeNaN();
  });

  it('is shown in kilometres beside millimetres, in miles beside inches', () => {
    expect([displayOf('metric', 'distance').unit, displayOf('imperial', 'distance').unit]).toEqual(['km', 'mi']);
  });
});
