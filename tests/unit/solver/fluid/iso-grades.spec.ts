import { describe, expect, it } from 'vitest';
import { ISO_GRADES } from '../../../../src/model/project.ts';
import { isoGradeEntry, isoGradeMidpoint } from '../../../../src/solver/fluid/iso-grades.ts';

describe('isoGradeEntry', () => {
  // Source: ISO 3448, limits at 40 °C; grade 7 (6.12 to 7.48) from memory.
  it.each([
    [7, 6.12, 7.48],
    [10, 9, 11],
    [15, 13.5, 16.5],
    [22, 19.8, 24.2],
    [32, 28.8, 35.2],
    [46, 41.4, 50.6],
    [68, 61.2, 74.8],
    [100, 90, 110],
  ])('of grade %d reaches from %f to %f mm2/s', (grade, low, high) => {
    const { low_mm2_s, high_mm2_s, midpoint_mm2_s } = isoGradeEntry(grade);
    expect(low_mm2_s).toBeCloseTo(low, 9);
    expect(high_mm2_s).toBeCloseTo(high, 9);
    expect(midpoint_mm2_s).toBeCloseTo((low + high) / 2, 9);
  });

  it('knows every grade that a document may name, and no other', () => {
    for (const grade of ISO_GRADES) expect(isoGradeMidpoint(grade)).toBeGreaterThan(0);
    const refused = expect.objectContaining({ fault: expect.objectContaining({ code: 'fluid.iso-grade.unknown' }) });
    expect(() => isoGradeMidpoint(5)).toThrow(refused);
    expect(() => isoGradeMidpoint(Number.NaN)).toThrow(refused);
  });
});
