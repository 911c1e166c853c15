import { describe, expect, it } from 'vitest';
import {
  type AbsolutePressure,
  absolutePressure,
  type Diameter,
  diameter,
  type GaugePressure,
  gaugePressure,
  type Radius,
  radius,
  toAbsolute,
  toDiameter,
  toGauge,
  toRadius,
} from '../../../src/units/brands.ts';

describe('branded numbers', () => {
  // Standard atmosphere 101 325 Pa (10th CGPM 1954, from memory).
  it('count gauge pressure from the standard atmosphere', () => {
    expect(toAbsolute(gaugePressure(0))).toBe(101_325);
    expect(toGauge(absolutePressure(101_325))).toBe(0);
    expect(toAbsolute(gaugePressure(1e6))).toBe(1_101_325);
  });

  it('halve a diameter', () => {
    expect(toRadius(diameter(30))).toBe(15);
    expect(toDiameter(radius(15))).toBe(30);
  });

  it('are kept apart by the compiler, which reads this file as part of the type check', () => {
    const wants = {
      absolute: (pressure: AbsolutePressure): number => pressure,
      gauge: (pressure: GaugePressure): number => pressure,
      radius: (length: Radius): number => length,
      diameter: (length: Diameter): number => length,
    };
    // @ts-expect-error gauge for absolute
    wants.absolute(gaugePressure(1));
    // @ts-expect-error absolute for gauge
    wants.gauge(absolutePressure(1));
    // @ts-expect-error a diameter for a radius
    wants.radius(diameter(1));
    // @ts-expect-error a radius for a diameter
    wants.diameter(radius(1));
    // @ts-expect-error a bare number says nothing of itself
    wants.radius(1);
    // @ts-expect-error converting twice
    toAbsolute(toAbsolute(gaugePressure(1)));
    expect(wants.radius(radius(2)) + 1).toBe(3);
  });
});
