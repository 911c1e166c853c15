import { describe, expect, it } from 'vitest';
import { factorBandedLdl } from '../../../../../src/solver/linalg/banded-ldl.ts';
import { bandedQuadraticForm } from '../../../../../src/solver/linalg/banded-product.ts';
import { buildHermiteTables } from '../../../../../src/solver/plate/hermite-tables.ts';
import { createPlate, type Plate } from '../../../../../src/solver/plate/plate.ts';
import type { WaveBase } from '../../../../../src/solver/plate/waviness/state-elements.ts';
import {
  assembleStretching,
  createWavePlate,
  takeState,
  WAVE_BANDWIDTH,
  WAVE_UNKNOWNS,
  type WaveOrder,
  type WavePlate,
} from '../../../../../src/solver/plate/waviness/wave-plate.ts';
import { type Cubic, secondVariation } from './second-variation.ts';

const NU = 0.3;
const [D, C] = [0.07, 4e6];

function plateOn(radii: readonly number[], fixed: readonly number[] = [], rigidity = D): Plate {
  const tables = buildHermiteTables(Float64Array.from(radii));
  return createPlate(tables, 'large-deflection', { nodes: radii.length, D: rigidity, C, nu: NU, fixed });
}

const evenly = (from: number, to: number, elements: number): number[] =>
  Array.from({ length: elements + 1 }, (_, i) => from + ((to - from) * i) / elements);

const value = ([a, b, c, d]: Cubic, r: number): number => a + r * (b + r * (c + r * d));
const slope = ([, b, c, d]: Cubic, r: number): number => b + r * (2 * c + r * 3 * d);

/** Node values of cubics, which the elements hold exactly, in the scaled unknowns of the n-wave matrices. */
function nodal({ plate }: WavePlate, { scale }: WaveOrder, fields: readonly [Cubic, Cubic, Cubic]): Float64Array {
  const x = new Float64Array(plate.nodes * WAVE_UNKNOWNS);
  for (let node = 0; node < plate.nodes; node++) {
    const r = plate.tables.radius_m[node];
    fields.forEach((field, f) => {
      const at = node * WAVE_UNKNOWNS + 2 * f;
      x[at] = value(field, r) / scale[at];
      x[at + 1] = slope(field, r) / scale[at + 1];
    });
  }
  return x;
}

/** Twice the second-order energy of a wave: xᵀ (Kb + Ks) x. */
function energyOf(wave: WavePlate, order: WaveOrder, x: Float64Array): number {
  const form = (band: Float64Array) => bandedQuadraticForm(band, wave.size, WAVE_BANDWIDTH, x);
  return form(order.bending) + form(order.stretching);
}

/** State of a given mid-surface and of given forces at the Gauss points. */
const stateOf =
  (plate: Plate, w0: Cubic, Nr: (r: number) => number, Nt: (r: number) => number) =>
  (_: number, q: number): WaveBase => {
    const r = 1 / plate.tables.rinv[q];
    return { s: slope(w0, r), Nr: Nr(r), Nt: Nt(r) };
  };

const NOTHING: Cubic = [0, 0, 0, 0];

describe('stiffness of a plate against waves', () => {
  // A rigid turn or shift stores no energy; identities, exact.
  it.each<[string, readonly [Cubic, Cubic, Cubic]]>([
    ['a tilt, W = r', [[0, 1, 0, 0], NOTHING, NOTHING]],
    ['a shift in the plane, U = 1, V = -1', [NOTHING, [1, 0, 0, 0], [-1, 0, 0, 0]]],
  ])('leaves %s free of energy at rest', (_, fields) => {
    const wave = createWavePlate(plateOn(evenly(0.005, 0.012, 4)));
    const order = assembleStretching(wave, 1);
    const x = nodal(wave, order, fields);
    const size = Math.hypot(...x) ** 2;
    expect(Math.abs(energyOf(wave, order, x)) / size).toBeLessThan(1e-13);
  });

  it('leaves a tilt of the bent plate with nothing but the work of the membrane forces, which vanishes in balance', () => {
    const plate = plateOn(evenly(0.005, 0.012, 4));
    const wave = createWavePlate(plate);
    const w0: Cubic = [1e-4, -0.03, 4, 90];
    const [a, b] = [0.005, 0.012];
    // rNr = k (r - a)(b - r) vanishes at both free edges, and balance gives Nt = (r Nr)'.
    const k = 3e8;
    const Nr = (r: number) => (k * (r - a) * (b - r)) / r;
    const Nt = (r: number) => k * (a + b - 2 * r);
    takeState(wave, stateOf(plate, w0, Nr, Nt));
    const order = assembleStretching(wave, 1);
    const tilt: Cubic = [0, 1, 0, 0];
    const back = w0.map((c) => -c) as unknown as Cubic;
    const x = nodal(wave, order, [tilt, back, w0]);
    expect(Math.abs(energyOf(wave, order, x)) / Math.hypot(...x) ** 2).toBeLessThan(1e-13);
    // The same tilt without moving back in the plane stretches the plate: the test can fail.
    const stretching = nodal(wave, order, [tilt, NOTHING, w0]);
    expect(energyOf(wave, order, stretching) / Math.hypot(...stretching) ** 2).toBeGreaterThan(1e-6);
  });

  it.each([2, 3, 7])('is the second variation of the plate energy in Cartesian coordinates, n = %i', (n) => {
    // Soft enough in bending for all parts of the energy to be of one size.
    const soft = 4e-4;
    const plate = plateOn(evenly(0.005, 0.012, 3), [], soft);
    const wave = createWavePlate(plate);
    const w0: Cubic = [2e-4, -0.05, 6, 300];
    const u0: Cubic = [1e-5, -3e-3, 0.2, 10];
    const fields: [Cubic, Cubic, Cubic] = [
      [1e-4, 0.02, -3, 200],
      [-2e-6, 4e-4, 0.05, 3],
      [3e-6, -2e-4, 0.03, -4],
    ];
    const strain = (r: number) => ({ er: slope(u0, r) + slope(w0, r) ** 2 / 2, et: value(u0, r) / r });
    const Nr = (r: number) => C * (strain(r).er + NU * strain(r).et);
    const Nt = (r: number) => C * (strain(r).et + NU * strain(r).er);
    takeState(wave, stateOf(plate, w0, Nr, Nt));
    const order = assembleStretching(wave, n);
    const points = { radius: plate.tables.rinv.map((ri) => 1 / ri), area: plate.tables.rw };
    const independent = secondVariation({ D: soft, C, nu: NU, n, w0, u0, fields, points });
    expect(energyOf(wave, order, nodal(wave, order, fields)) / independent).toBeCloseTo(1, 5);
  });

  it('takes the state from the unknowns of the axisymmetric plate', () => {
    const plate = plateOn(evenly(0.005, 0.012, 3));
    const [w0, u0]: [Cubic, Cubic] = [
      [0, 0, 5, 200],
      [0, 1e-3, 0.2, 0],
    ];
    plate.tables.radius_m.forEach((r, node) => {
      plate.x.set([value(w0, r), slope(w0, r), value(u0, r), slope(u0, r)], node * 4);
    });
    const [taken, given] = [createWavePlate(plate), createWavePlate(plate)];
    takeState(taken);
    const strain = (r: number) => ({ er: slope(u0, r) + slope(w0, r) ** 2 / 2, et: value(u0, r) / r });
    const Nr = (r: number) => C * (strain(r).er + NU * strain(r).et);
    const Nt = (r: number) => C * (strain(r).et + NU * strain(r).er);
    takeState(given, stateOf(plate, w0, Nr, Nt));
    const scale = Math.max(...given.state.map(Math.abs));
    taken.state.forEach((entry, i) => {
      expect(Math.abs(entry - given.state[i]) / scale).toBeLessThan(1e-12);
    });
  });

  // Solid clamped plate in uniform compression: w = J_n(kr) - c r^n, and w' = 0 at the rim gives J_(n+1)(ka) = 0, so
  // N a²/D = j². Zeros of the Bessel functions: Abramowitz & Stegun 1964, table 9.5 (from memory). A hole of a
  // thousandth of the rim, where a wave of n >= 2 has no size, stands in for the centre.
  it.each([
    [2, 6.38016],
    [3, 7.58834],
    [4, 8.77148],
  ])('a clamped solid plate in compression buckles in %i waves at the square of the zero %f', (n, zero) => {
    const a = 0.01;
    const radii = [1e-3, ...evenly(0.02, 1, 24)].map((share) => share * a);
    const rim = (radii.length - 1) * 4;
    const plate = plateOn(radii, [rim, rim + 1, rim + 2]);
    const wave = createWavePlate(plate);
    const negativeModes = (share: number): number => {
      const N = (-share * D * zero ** 2) / a ** 2;
      takeState(wave, () => ({ s: 0, Nr: N, Nt: N }));
      const { bending, stretching } = assembleStretching(wave, n);
      const band = bending.map((k, i) => k + stretching[i]);
      const factor = factorBandedLdl(band, wave.size, WAVE_BANDWIDTH);
      expect(factor.status).toBe('factored');
      return factor.negativePivots;
    };
    expect(negativeModes(0.9995)).toBe(0);
    expect(negativeModes(1.0005)).toBe(1);
  });

  it('sits on the part of the mesh that a ring covers', () => {
    const radii = evenly(0.005, 0.012, 7);
    const whole = buildHermiteTables(Float64Array.from(radii));
    const description = { nodes: 4, D, C, nu: NU, fixed: [] };
    const ring = createPlate(whole, 'large-deflection', { ...description, first: 3 });
    const own = createPlate(buildHermiteTables(Float64Array.from(radii.slice(3, 7))), 'large-deflection', description);
    const waves = [ring, own].map((plate) => {
      plate.x.set(Float64Array.from({ length: 16 }, (_, i) => Math.sin(i) * 1e-4));
      const wave = createWavePlate(plate);
      takeState(wave);
      return assembleStretching(wave, 3);
    });
    for (const matrix of ['bending', 'stretching'] as const) {
      const scale = Math.max(...waves[1][matrix].map(Math.abs));
      waves[0][matrix].forEach((k, i) => {
        expect(Math.abs(k - waves[1][matrix][i]) / scale).toBeLessThan(1e-9);
      });
    }
  });
});
