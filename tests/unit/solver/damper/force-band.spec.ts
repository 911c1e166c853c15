import { describe, expect, it } from 'vitest';
import { type ForceCurveOptions, forceCurve, forceCurveWith } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForceBand, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { COEFFICIENT_TABLE, type CoefficientName } from '../../../../src/solver/restriction/coefficients.ts';
import { type LinearStack, linearStacks } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const STACK: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 100e3 };
const OPTIONS: ForceCurveOptions = { theory: 'small-deflection', bands: true };
const SPEEDS = [-2, -0.5, -0.05, 0, 0.05, 0.5, 2];
const NAMES = Object.keys(COEFFICIENT_TABLE) as CoefficientName[];

const points = (
  options: Partial<ForceCurveOptions> = {},
  damper: Partial<DamperInput> = {},
  stack: Partial<LinearStack> = {},
  log: number[] = [],
) =>
  forceCurveWith(linearStacks({ ...STACK, ...stack }, log), { ...MONOTUBE, ...damper }, SPEEDS, {
    ...OPTIONS,
    ...options,
  }).points as ForcePoint[];

const bandOf = ({ band }: ForcePoint): ForceBand => {
  expect(band?.status).toBe('converged');
  return band as ForceBand;
};

/** All ranges of no width but one. */
const only = (name: CoefficientName) =>
  Object.fromEntries(
    NAMES.filter((other) => other !== name).map((other) => {
      const { value } = COEFFICIENT_TABLE[other];
      return [other, { low: value, high: value }];
    }),
  );

/** A jet decides alone: no viscosity, no bleed, wide ports, and a shim that opens 0.1 mm at once and no further. */
const JET: Partial<DamperInput> = {
  fluid: { density_kg_m3: 844, dynamicViscosity_Pa_s: 1e-9 },
  bleed: { count: 0, diameter_m: 0, length_m: 0 },
  gas: { ...MONOTUBE.gas, absolutePressure_Pa: 1e9 },
  compression: { ...MONOTUBE.compression, ports: { ...MONOTUBE.compression.ports, count: 100, area_m2: 22e-4 } },
  rebound: { ...MONOTUBE.rebound, ports: { ...MONOTUBE.rebound.ports, count: 100, area_m2: 22e-4 } },
};
const PLATE: Partial<LinearStack> = { compliance_m_Pa: 1, crackingPressure_Pa: 0, largestOpening_m: 1e-4 };

describe('the band of a force curve', () => {
  it('is absent unless asked for, and leaves every other number as it is', () => {
    const plain = points({ bands: false });
    expect(plain.every((point) => !('band' in point))).toBe(true);
    expect(points().map(({ band, ...point }) => point)).toEqual(plain);
  });

  it('holds the force, and has no width at rest', () => {
    for (const point of points()) {
      const { low_N, high_N, mostFrom } = bandOf(point);
      if (point.shaftSpeed_m_s === 0)
        expect([low_N, high_N, mostFrom]).toEqual([point.force_N, point.force_N, undefined]);
      else {
        // Where every end of the ranges holds the chamber at the same pressure, nothing can lower the force.
        if (point.airRelease) expect(low_N).toBeLessThanOrEqual(point.force_N);
        else expect(low_N).toBeLessThan(point.force_N);
        expect(high_N).toBeGreaterThan(point.force_N);
      }
    }
  });

  it('goes with 1/Cd^2 where the jet between shim and seat decides', () => {
    // Source: orifice equation, dp = rho/2 (Q / (Cd A))^2: 0.6 to 0.8 about 0.7 is +36.11 % and -23.44 %.
    const slow = points({ ranges: only('jetDischarge') }, JET, PLATE).filter(
      ({ shaftSpeed_m_s: v }) => Math.abs(v) < 1,
    );
    for (const point of slow.filter(({ shaftSpeed_m_s: v }) => v !== 0)) {
      const { low_N, high_N, mostFrom } = bandOf(point);
      const offsets = [low_N, high_N].map((end) => (end - point.force_N) / Math.abs(point.dampingForce_N));
      const [less, more] = point.shaftSpeed_m_s > 0 ? [-0.234375, 0.361111] : [-0.361111, 0.234375];
      expect(Math.abs(Math.min(...offsets) - less)).toBeLessThan(1e-4);
      expect(Math.abs(Math.max(...offsets) - more)).toBeLessThan(1e-4);
      expect(mostFrom).toBe('jetDischarge');
    }
  });

  it('reaches as far as single changes do, one at a time, in a root of the sum of squares', () => {
    const speed = 4;
    const force = (coefficients: ForceCurveOptions['coefficients']) =>
      points({ bands: false, coefficients })[speed].force_N;
    const own = force({});
    const changes = NAMES.map((name) => {
      const ends = [COEFFICIENT_TABLE[name].low, COEFFICIENT_TABLE[name].high].map(
        (end) => force({ [name]: end }) - own,
      );
      return { up: Math.max(0, ...ends), down: Math.min(0, ...ends) };
    });
    const { low_N, high_N } = bandOf(points()[speed]);
    // Tables of the single runs are not the shared one: they agree as well as the cubic through either does.
    expect((high_N - own) / Math.sqrt(changes.reduce((sum, { up }) => sum + up ** 2, 0))).toBeCloseTo(1, 3);
    expect((own - low_N) / Math.sqrt(changes.reduce((sum, { down }) => sum + down ** 2, 0))).toBeCloseTo(1, 3);
  });

  it('has no width where no range has any', () => {
    const ranges = { ...only('jetDischarge'), ...only('sharpEdgeDischarge') };
    for (const point of points({ ranges })) {
      expect(bandOf(point)).toMatchObject({ low_N: point.force_N, high_N: point.force_N });
      expect(bandOf(point)).not.toHaveProperty('mostFrom');
    }
  });

  it('names the coefficient with the widest part', () => {
    for (const point of points().filter(({ shaftSpeed_m_s: v }) => v !== 0)) {
      const { parts, mostFrom } = bandOf(point);
      const widths = parts.map(({ down_N, up_N }) => down_N + up_N);
      expect(parts.map(({ coefficient }) => coefficient)).toEqual(NAMES);
      expect(parts[widths.indexOf(Math.max(...widths))].coefficient).toBe(mostFrom);
    }
  });

  it('widens upwards alone where air release limits the force: the limit may lie lower', () => {
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 5e5 };
    const limited = points({}, { gas })[6];
    expect(limited.airRelease).toBe(true);
    const part = bandOf(limited).parts.find(({ coefficient }) => coefficient === 'airReleasePressure_Pa');
    // Source: balance of forces; the drop may rise from 500 000 - 101 325 Pa to 500 000 Pa on 1366.6 mm2: 138.47 N more.
    expect(part?.up_N).toBeCloseTo(138.47, 1);
    expect(part?.down_N).toBe(0);
  });

  it('solves no pressure of a stack twice, and none at all for ends that the table already reaches', () => {
    const [banded, plain, still]: [number[], number[], number[]] = [[], [], []];
    points({}, {}, {}, banded);
    points({ bands: false }, {}, {}, plain);
    points({ ranges: { ...only('longOrificeFactor'), longOrificeFactor: { low: 0.999, high: 1.001 } } }, {}, {}, still);
    expect(new Set(banded).size).toBe(banded.length);
    expect([...new Set(still)].sort()).toEqual([...new Set(plain)].sort());
  });

  it('says why a point has no band, and keeps its force', () => {
    const ranges = { jetDischarge: { low: 0.01, high: 0.8 } };
    const point = points({ ranges }, {}, { failsAbove_Pa: 1.1e7 })[0];
    expect(point.status).toBe('converged');
    expect(point.band).toMatchObject({
      status: 'not-converged',
      reason: expect.stringMatching(/^jetDischarge: .*asked to fail/),
    });
  });

  it('counts one more stage', () => {
    const seen: [number, number][] = [];
    const onProgress = (...at: [number, number]) => seen.push(at);
    forceCurveWith(linearStacks(STACK), MONOTUBE, [0.1], OPTIONS, { onProgress });
    expect(seen).toEqual([
      [1, 4],
      [2, 4],
      [3, 4],
      [4, 4],
    ]);
  });

  it('comes with the real stacks too', () => {
    const [point] = forceCurve(MONOTUBE, [0.3], { ...OPTIONS, theory: 'large-deflection' }).points as ForcePoint[];
    const { low_N, high_N } = bandOf(point);
    expect(low_N).toBeLessThan(point.force_N);
    expect(high_N).toBeGreaterThan(point.force_N);
  });
});
