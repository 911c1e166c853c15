import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { strainEnergy } from '../../../../../src/solver/plate/assemble.ts';
import { buildHermiteTables } from '../../../../../src/solver/plate/hermite-tables.ts';
import { createCircleBasis } from '../../../../../src/solver/plate/periodic/circle-basis.ts';
import { assemblePeriodicForce, periodicEnergy } from '../../../../../src/solver/plate/periodic/periodic-force.ts';
import { createPeriodicPlate, type PeriodicPlate } from '../../../../../src/solver/plate/periodic/periodic-plate.ts';
import { assemblePeriodicTangent } from '../../../../../src/solver/plate/periodic/periodic-tangent.ts';
import { createPlate } from '../../../../../src/solver/plate/plate.ts';

const radius_m = Float64Array.of(1, 1.4, 2);
const tables = buildHermiteTables(radius_m);
const description = {
  first: 0,
  nodes: 3,
  D: 2,
  C: 700,
  nu: 0.3,
  clamped: false,
  initialSlope: 0.03,
  springs: [{ node: 2, rate_N_m: 5, preload_N: 0.4 }],
  tether_N_m: 0,
};
const bent = (M: 1 | 2): PeriodicPlate => {
  const plate = createPeriodicPlate(tables, createCircleBasis(3, M), description);
  plate.x.forEach((_, i) => {
    plate.x[i] = 0.1 * Math.sin(1 + 7 * i);
  });
  return plate;
};

/** Central difference of f along unknown i. */
function difference<T>(plate: PeriodicPlate, i: number, f: () => T): [T, T] {
  const at = plate.x[i];
  plate.x[i] = at + 1e-5;
  const high = f();
  plate.x[i] = at - 1e-5;
  const low = f();
  plate.x[i] = at;
  return [high, low];
}

const entry = ({ band, layout }: PeriodicPlate, i: number, j: number): number =>
  Math.abs(i - j) > layout.b ? 0 : band[Math.max(i, j) * (layout.b + 1) + layout.b - Math.abs(i - j)];

describe.each([1, 2] as const)('a periodic plate with %i harmonics of the lift', (M) => {
  it('has a force that is the derivative of its energy', () => {
    const plate = bent(M);
    assemblePeriodicForce(plate);
    const force = plate.internal.slice();
    const largest = Math.max(...force.map(Math.abs));
    for (let i = 0; i < plate.size; i++) {
      const [high, low] = difference(plate, i, () => periodicEnergy(plate));
      expect(Math.abs((high - low) / 2e-5 - force[i])).toBeLessThan(1e-7 * largest);
    }
  });

  it('has a tangent that is the derivative of its force', () => {
    const plate = bent(M);
    const forceHere = () => {
      assemblePeriodicForce(plate);
      return plate.internal.slice();
    };
    const columns = Array.from({ length: plate.size }, (_, i) => difference(plate, i, forceHere));
    forceHere();
    assemblePeriodicTangent(plate, 1);
    const largest = Math.max(...plate.band.map(Math.abs));
    for (const [i, [high, low]] of columns.entries()) {
      for (let j = 0; j < plate.size; j++) {
        expect(Math.abs((high[j] - low[j]) / 2e-5 - entry(plate, i, j))).toBeLessThan(1e-8 * largest);
      }
    }
  });

  it('has a positive semidefinite tangent once nothing of the push is kept, and not before', () => {
    const plate = bent(M);
    const least = (push: number) => {
      assemblePeriodicForce(plate);
      assemblePeriodicTangent(plate, push);
      const K = Matrix.zeros(plate.size, plate.size);
      for (let i = 0; i < plate.size; i++) for (let j = 0; j < plate.size; j++) K.set(i, j, entry(plate, i, j));
      const values = new EigenvalueDecomposition(K).realEigenvalues;
      return Math.min(...values) / Math.max(...values);
    };
    expect(least(1)).toBeLessThan(-1e-4);
    expect(least(0)).toBeGreaterThan(-1e-12);
  });

  it('holds the energy of the axisymmetric plate when it is round', () => {
    const round = createPlate(tables, 'large-deflection', { ...description, fixed: [] });
    const plate = createPeriodicPlate(tables, createCircleBasis(4, M), description);
    const { layout, basis } = plate;
    for (let n = 0; n < 3; n++) {
      for (const i of [0, 1]) {
        const [w, u] = [0.2 * Math.sin(3 * n + i), 0.01 * Math.cos(5 * n + i)];
        round.x[4 * n + i] = w;
        round.x[4 * n + 2 + i] = u;
        for (let j = 0; j <= M; j++) plate.x[n * layout.perNode + layout.slots[2 * j + i]] = w;
        plate.x[n * layout.perNode + layout.slots[2 * basis.lifts + i]] = u;
      }
    }
    expect(periodicEnergy(plate) / strainEnergy(round)).toBeCloseTo(1, 12);
  });
});

describe('a rigid motion', () => {
  it('in the plane costs nothing: one wave of u and v', () => {
    const plate = createPeriodicPlate(tables, createCircleBasis(1, 1), { ...description, springs: [] });
    const { layout, basis } = plate;
    for (let n = 0; n < 3; n++) {
      plate.x[n * layout.perNode + layout.slots[2 * (basis.lifts + 1)]] = 0.3;
      plate.x[n * layout.perNode + layout.slots[2 * (basis.lifts + basis.outs)]] = -0.3;
    }
    expect(Math.abs(periodicEnergy(plate))).toBeLessThan(1e-12);
  });
});
