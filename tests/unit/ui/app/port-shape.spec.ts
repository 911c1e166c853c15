import { describe, expect, it } from 'vitest';
import { portsAs, shapeOf } from '../../../../src/ui/app/port-shape.ts';

describe('the shape of ports', () => {
  it('changes from a diameter to the area of the same hole and back', () => {
    const round = { count: 4, diameter_mm: 4, length_mm: 12, coveredFraction: 0.5 };
    const shaped = portsAs('shaped', round);
    // A circle of 4 mm: 4 pi.
    expect(shaped).toEqual({ count: 4, area_mm2: 12.566, length_mm: 12, coveredFraction: 0.5 });
    expect([shapeOf(round), shapeOf(shaped)]).toEqual(['round', 'shaped']);
    expect(portsAs('round', shaped)).toEqual(round);
  });

  it('stays as it is when it is that shape already', () => {
    const ports = { count: 4, area_mm2: 12.3456, length_mm: 12 };
    expect(portsAs('shaped', ports)).toBe(ports);
  });
});
