import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { bandedQuadraticForm, multiplyBanded } from '../../../../src/solver/linalg/banded-product.ts';

const [N, B] = [7, 2];
const band = Float64Array.from({ length: N * (B + 1) }, (_, i) => Math.sin(1 + i));
const dense = Matrix.zeros(N, N);
for (let i = 0; i < N; i++) {
  for (let j = Math.max(0, i - B); j <= i; j++) {
    dense.set(i, j, band[i * (B + 1) + B - (i - j)]);
    dense.set(j, i, band[i * (B + 1) + B - (i - j)]);
  }
}
const x = Float64Array.from({ length: N }, (_, i) => Math.cos(i));
const product = dense.mmul(Matrix.columnVector([...x])).to1DArray();

describe('banded products', () => {
  it('multiplies as the full matrix does, whatever was in the result before', () => {
    const out = new Float64Array(N).fill(9);
    multiplyBanded(band, N, B, x, out);
    product.forEach((value, i) => {
      expect(out[i]).toBeCloseTo(value, 12);
    });
  });

  it('gives the quadratic form of the full matrix', () => {
    expect(bandedQuadraticForm(band, N, B, x)).toBeCloseTo(
      product.reduce((sum, value, i) => sum + value * x[i], 0),
      12,
    );
  });
});
