import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../src/units/expression.ts';
import { formatIn } from '../../../src/units/format.ts';

describe('viscous friction', () => {
  // 1 lbf = 4.4482216152605 N and 1 in = 0.0254 m by definition, so 1 lbf·s/in = 175.126835246 N·s/m.
  it.each([
    ['1 lbf·s/in', 175.126835246],
    ['2 N*s/m', 2],
    ['15', 15],
  ])('%s is %d N·s/m', (typed, expected) => {
    const read = parseQuantity(typed, 'viscousFriction', 'N·s/m');
    expect(read.ok && read.si).toBeCloseTo(expected, 8);
  });

  it('is told in both families', () => {
    expect(formatIn(175.126835246, 'viscousFriction', 'metric')).toBe('175.1 N·s/m');
    expect(formatIn(175.126835246, 'viscousFriction', 'imperial')).toBe('1.000 lbf·s/in');
  });

  it('is no spring rate', () => {
    expect(parseQuantity('1 N/mm', 'viscousFriction', 'N·s/m')).toMatchObject({
      ok: false,
      fault: { code: 'units.dimension' },
    });
  });
});
