/**
 * The plate elements converge at the rate that theory gives: for cubic shapes k = 3 and a bending energy of order m = 2,
 * values that the energy controls (deflection at nodes, strain energy, clamp reaction) are of order 2 (k + 1 - m) = 4.
 * Source: Strang & Fix, An Analysis of the Finite Element Method, 1973, section 3.1 and 1.6 (from memory).
 */
import { describe, expect, it } from 'vitest';
import { shootDeflection } from '../../reference-cases/plate/shooting.ts';
import { derive as deriveTwoShims } from '../../reference-cases/stack/two-shim-contact/derive.ts';
import { nodalMoments } from '../../src/proof/plate-moments.ts';
import { evaluateCase } from '../../src/proof/registry.ts';
import { largestDeflection, type SinglePlate, solveSinglePlate } from '../../src/proof/single-plate.ts';
import { annulusUnderPressureRing } from '../../src/solver/plate/annulus-under-pressure.ts';
import { strainEnergy } from '../../src/solver/plate/assemble.ts';
import { observedOrder } from '../helpers/convergence.ts';

const ORDER = 4;
/** Where the observed order may lie: coarse meshes are not yet in the range where one power rules. */
const NEAR_ORDER = 0.3;
const MESHES = [4, 8, 16, 32];

const expectOrder = (elements: readonly number[], errors: readonly number[]) => {
  const order = observedOrder(elements, errors);
  expect(Math.abs(order - ORDER), `order ${order}, errors ${errors.map((e) => e.toExponential(2))}`).toBeLessThan(
    NEAR_ORDER,
  );
};

const shimPlate = {
  innerRadius: 0.4,
  poissonsRatio: 0.3,
  inner: 'clamped-held',
  outer: 'free',
  load: 'pressure',
} as const;

function solved(plate: SinglePlate, load: number) {
  const solve = solveSinglePlate(plate, load);
  if (solve.status !== 'converged') throw new Error(solve.reason);
  return solve.plate;
}

describe('observedOrder', () => {
  it('reads the power of a power law', () => {
    expect(
      observedOrder(
        MESHES,
        MESHES.map((n) => 7 / n ** 3),
      ),
    ).toBeCloseTo(3, 12);
  });
});

describe('one plate, small deflection, against the closed form', () => {
  const annulus = { clampRadius_m: 0.4, outerRadius_m: 1, bendingRigidity_Nm: 1 / (12 * 0.91), poissonsRatio: 0.3 };
  const exact = annulusUnderPressureRing(annulus, { innerRadius_m: 0.4, outerRadius_m: 1, pressure_Pa: 1 });
  const plates = MESHES.map((elements) => solved({ ...shimPlate, theory: 'small-deflection', elements }, 1));

  it('deflection of the rim', () => {
    expectOrder(
      MESHES,
      plates.map(({ x, d }) => largestDeflection(x, d) - exact.edge.lift_m),
    );
  });

  it('clamp moment', () => {
    expectOrder(
      MESHES,
      plates.map((plate) => nodalMoments(plate, 1).radial[0] - exact.clampMoment_N),
    );
  });

  it('strain energy, which is half the work of the pressure', () => {
    const work = simpson(0.4, 1, (r) => 2 * Math.PI * r * exact.at(r).lift_m);
    expectOrder(
      MESHES,
      plates.map((plate) => strainEnergy(plate) - work / 2),
    );
  });

  it('never too soft: each mesh gives less energy than the exact plate', () => {
    const energies = plates.map(strainEnergy);
    for (let i = 1; i < energies.length; i++) expect(energies[i]).toBeGreaterThan(energies[i - 1]);
  });
});

describe('one plate, large deflection, against shooting', () => {
  it.each([1, 8])('deflection of the rim at q a⁴/(E h⁴) = %s', (load) => {
    const exact = shootDeflection(shimPlate, load);
    const meshes = [6, 12, 24];
    expectOrder(
      meshes,
      meshes.map((elements) => {
        const { x, d } = solved({ ...shimPlate, theory: 'large-deflection', elements }, load);
        return largestDeflection(x, d) - exact;
      }),
    );
  });
});

describe('two shims in contact at the rim of the smaller, against the constants of integration', () => {
  const shims = [
    { radius: 1, thickness: 1, count: 1 },
    { radius: 0.7, thickness: 1, count: 1 },
  ];
  const rows = [{ label: 'pair', clampRadius: 0.3, zone: [0.3, 1], pressure: 1, shims }];
  const exact = deriveTwoShims({ poissonsRatio: 0.3, rows });

  it.each(['rimLift', 'backingLift', 'ringForce'])('%s', (name) => {
    const meshes = [7, 14, 28, 56];
    const errors = meshes.map((elements) => {
      const evaluation = evaluateCase({
        evaluator: 'stack-coefficients',
        input: { poissonsRatio: 0.3, elements, rows },
      });
      if (evaluation.status === 'failed') throw new Error(evaluation.reason);
      return evaluation.quantities[`pair ${name}`] - exact[`pair ${name}`];
    });
    expectOrder(meshes, errors);
  });
});

/** Simpson's rule, far finer than any of the meshes. */
function simpson(from: number, to: number, f: (x: number) => number): number {
  const n = 2000;
  const h = (to - from) / n;
  let sum = f(from) + f(to);
  for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}
