import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { columnOf, createCompliance, forgetColumns } from '../../../../src/solver/contact/compliance.ts';
import { factorBandedLdl } from '../../../../src/solver/linalg/banded-ldl.ts';
import { assembleTangent } from '../../../../src/solver/plate/assemble.ts';
import { unitPlate } from '../plate/plates.ts';

describe('compliance of a plate', () => {
  const plate = unitPlate('small-deflection');
  assembleTangent(plate, 'exact');
  const full = new Matrix(plate.size, plate.size);
  for (let i = 0; i < plate.size; i++) {
    for (let j = Math.max(0, i - plate.b); j <= i; j++) {
      full.set(i, j, plate.band[i * (plate.b + 1) + plate.b - (i - j)]);
      full.set(j, i, full.get(i, j));
    }
  }
  factorBandedLdl(plate.band, plate.size, plate.b);

  it('has the lifts that ml-matrix finds for a unit force, the same both ways, and none at the clamp', () => {
    const compliance = createCompliance(plate);
    for (let j = 1; j < plate.nodes; j++) {
      const unit = Matrix.zeros(plate.size, 1);
      unit.set(j * plate.d, 0, 1);
      const wanted = solve(full, unit);
      const at = columnOf(compliance, j);
      for (let i = 0; i < plate.nodes; i++) {
        const lift = compliance.columns[at + i];
        expect(lift / wanted.get((plate.nodes - 1) * plate.d, 0)).toBeCloseTo(
          wanted.get(i * plate.d, 0) / wanted.get((plate.nodes - 1) * plate.d, 0),
          9,
        );
        if (i > 0) expect(lift).toBeCloseTo(compliance.columns[columnOf(compliance, i) + j], 12);
      }
      expect(compliance.columns[at]).toBe(0);
    }
  });

  it('is positive definite over all nodes but the clamp', () => {
    const compliance = createCompliance(plate);
    const nodes = Array.from({ length: plate.nodes - 1 }, (_, i) => i + 1);
    const M = new Matrix(nodes.map((i) => nodes.map((j) => compliance.columns[columnOf(compliance, j) + i])));
    const { realEigenvalues } = new EigenvalueDecomposition(M, { assumeSymmetric: true });
    expect(Math.min(...realEigenvalues)).toBeGreaterThan(0);
  });

  it('is found anew after the plate was factored anew', () => {
    const compliance = createCompliance(plate);
    const before = compliance.columns[columnOf(compliance, 2) + 2];
    const saved = plate.band.slice();
    for (let i = 0; i < plate.size; i++) plate.band[i * (plate.b + 1) + plate.b] *= 2;
    expect(compliance.columns[columnOf(compliance, 2) + 2]).toBe(before);
    forgetColumns(compliance);
    expect(compliance.columns[columnOf(compliance, 2) + 2]).toBeCloseTo(before / 2, 12);
    plate.band.set(saved);
  });
});
