/** Force is the derivative of the energy, the tangent that of the force: checked by central differences at random states. */
import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { assembleInternal, assembleTangent, strainEnergy } from '../../../../src/solver/plate/assemble.ts';
import type { Plate } from '../../../../src/solver/plate/plate.ts';
import { setByRadius, setState, states, unitPlate } from './plates.ts';

const STEP = 1e-4;

/** (g(x + h) - g(x - h)) / 2h for unknown i. */
function difference(plate: Plate, i: number, g: () => number): number {
  const at = plate.x[i];
  const values = [STEP, -STEP].map((step) => {
    plate.x[i] = at + step;
    return g();
  });
  plate.x[i] = at;
  return (values[0] - values[1]) / (2 * STEP);
}

const forceAt = (plate: Plate, j: number) => () => {
  assembleInternal(plate);
  return plate.internal[j];
};

const entry = ({ band, b }: Plate, i: number, j: number) => {
  const [high, low] = [Math.max(i, j), Math.min(i, j)];
  return high - low > b ? 0 : band[high * (b + 1) + b - (high - low)];
};

const near = (got: number, wanted: number, tolerance: number) =>
  expect(Math.abs(got - wanted), `got ${got}, wanted ${wanted}`).toBeLessThan(tolerance);

const tangentMatrix = (plate: Plate, free: readonly number[]) =>
  new Matrix(free.map((i) => free.map((j) => entry(plate, i, j))));
const freeUnknowns = (plate: Plate) => [...plate.x.keys()].filter((i) => !plate.fixed.includes(i));

describe('assembled plate', () => {
  it('has no force and no energy when it lies as it was made, coned or not', () => {
    for (const initialSlope of [0, 0.15]) {
      const plate = unitPlate('large-deflection', { initialSlope });
      assembleInternal(plate);
      expect(Math.max(...plate.internal.map(Math.abs))).toBe(0);
      expect(strainEnergy(plate)).toBe(0);
    }
  });

  it('stores π D (1 + ν) (r₁² - r₀²) as a bowl of curvature 1, and a spring its preload and rate', () => {
    const bowl = (springs: { node: number; rate_N_m: number; preload_N: number }[]) => {
      const plate = unitPlate('small-deflection', { fixed: [], springs });
      setByRadius(plate, (r) => [r ** 2 / 2, r]);
      return strainEnergy(plate);
    };
    const energy = Math.PI * 2 * 1.3 * (2.5 ** 2 - 1);
    near(bowl([]), energy, 1e-9);
    // Node 4 is the rim: lift 3.125.
    near(bowl([{ node: 4, rate_N_m: 10, preload_N: 3 }]), energy + (10 * 3.125 ** 2) / 2 + 3 * 3.125, 1e-9);
  });

  it('stores in stretching what u = 0 and a steady slope s give: er = s²/2, E = C s⁴/4 π (r₁² - r₀²)/2', () => {
    const [plate, coned] = [0, 0.2].map((initialSlope) =>
      unitPlate('large-deflection', { fixed: [], initialSlope, D: 0 }),
    );
    for (const p of [plate, coned]) setByRadius(p, (r) => [0.4 * r, 0.4, 0, 0]);
    const area = Math.PI * (2.5 ** 2 - 1);
    near(strainEnergy(plate), (300 / 2) * (0.4 ** 2 / 2) ** 2 * area, 1e-9);
    near(strainEnergy(coned), (300 / 2) * ((0.6 ** 2 - 0.2 ** 2) / 2) ** 2 * area, 1e-9);
  });

  it('has a force that is the derivative of its energy', () => {
    fc.assert(
      fc.property(states, ({ lifts, theory, ...rest }) => {
        const plate = unitPlate(theory, rest);
        setState(plate, lifts);
        assembleInternal(plate);
        const force = plate.internal.slice();
        const size = Math.max(1, ...force.map(Math.abs));
        for (let i = 0; i < plate.size; i++)
          near(
            force[i],
            difference(plate, i, () => strainEnergy(plate)),
            1e-5 * size,
          );
      }),
    );
  });

  it('has a tangent that is the derivative of its force, with a tether on top at the inner edge', () => {
    fc.assert(
      fc.property(states, fc.constantFrom(0, 40), ({ lifts, theory, ...rest }, tether_N_m) => {
        const plate = unitPlate(theory, { ...rest, tether_N_m, fixed: [] });
        setState(plate, lifts);
        assembleTangent(plate, 'exact');
        const size = Math.max(...plate.band.map(Math.abs));
        for (let i = 0; i < plate.size; i++) {
          for (let j = 0; j < plate.size; j++) {
            const tether = i === 0 && j === 0 ? tether_N_m : 0;
            near(entry(plate, i, j), difference(plate, i, forceAt(plate, j)) + tether, 1e-5 * size);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('gives the same force with its tangent as without', () => {
    fc.assert(
      fc.property(
        states,
        fc.constantFrom('exact' as const, 'stiffened' as const),
        ({ lifts, theory, ...rest }, kind) => {
          const plate = unitPlate(theory, rest);
          setState(plate, lifts);
          assembleInternal(plate);
          const alone = plate.internal.slice();
          assembleTangent(plate, kind);
          const size = Math.max(1, ...alone.map(Math.abs));
          for (let i = 0; i < plate.size; i++) near(plate.internal[i], alone[i], 1e-11 * size);
        },
      ),
    );
  });

  it('frees what an edge holds from the rest, and keeps its diagonal', () => {
    const plate = unitPlate('large-deflection');
    setState(plate, new Array(40).fill(100));
    assembleTangent(plate, 'exact');
    for (const f of plate.fixed) {
      expect(entry(plate, f, f)).toBeGreaterThan(0);
      for (let i = 0; i < plate.size; i++) if (i !== f) expect(entry(plate, i, f)).toBe(0);
    }
  });

  it('has a stiffened tangent that is positive definite where compression makes the exact one indefinite', () => {
    const plate = unitPlate('large-deflection');
    // u = -r/5 on a flat plate: compression alone, far over what buckles it.
    setByRadius(plate, (r) => [0, 0, -(r - 1) / 5, -0.2]);
    const least = (kind: 'exact' | 'stiffened') => {
      assembleTangent(plate, kind);
      const matrix = tangentMatrix(plate, freeUnknowns(plate));
      return Math.min(...new EigenvalueDecomposition(matrix, { assumeSymmetric: true }).realEigenvalues);
    };
    expect(least('exact')).toBeLessThan(0);
    expect(least('stiffened')).toBeGreaterThan(0);
  });

  it('stiffens nothing where there is no compression', () => {
    const plate = unitPlate('large-deflection');
    setByRadius(plate, (r) => [0, 0, (r - 1) / 5, 0.2]);
    assembleTangent(plate, 'exact');
    const exact = plate.band.slice();
    assembleTangent(plate, 'stiffened');
    expect(plate.band).toEqual(exact);
  });
});
