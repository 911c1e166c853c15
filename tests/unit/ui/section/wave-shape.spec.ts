/** Expected values: w = w0 + w1 cos φ (+ w2 cos 2φ), worked out by hand beside each. */
import { describe, expect, it } from 'vitest';
import type { ConvergedLift } from '../../../../src/ui/app/solved.ts';
import { extremesOf, liftAt, shapeBetween, type WaveShape } from '../../../../src/ui/section/wave-shape.ts';

interface Field {
  readonly waves: number;
  readonly mean: number;
  readonly harmonics: readonly number[];
}

/** One shim of two nodes: the clamp, which stays, and the rim with this field. */
const point = ({ waves, mean, harmonics }: Field): ConvergedLift => {
  const reach = harmonics.reduce((sum, h) => sum + Math.abs(h), 0);
  return {
    status: 'converged',
    pressure_Pa: 1,
    iterations: 1,
    residual: 0,
    faceEdgeLift_m: mean,
    zoneEdgeLift_m: mean,
    seatOpening_m: mean,
    shimEdgeLift_m: [mean],
    shimStress_Pa: [0],
    shimClampStress_Pa: [0],
    hubRise_m: 0,
    springForce_N: 0,
    appliedForce_N: 0,
    clampForce_N: 0,
    seatForce_N: 0,
    plateForce_N: 0,
    wave: { waves, minEdgeLift_m: mean - reach, maxEdgeLift_m: mean + reach },
    shape: {
      radius_m: Float64Array.of(0.006, 0.015),
      firstNode: [0],
      lift_m: [Float64Array.of(0, mean)],
      ...(harmonics.length > 0 && { harmonics_m: [harmonics.map((h) => Float64Array.of(0, h))] }),
    },
  };
};
const round = (mean: number): ConvergedLift => point({ waves: 0, mean, harmonics: [] });
const rimAt = (shape: WaveShape, phi: number): number => liftAt(shape, 0, phi)[1];
const still = (field: Field): WaveShape => shapeBetween(point(field), point(field), 0);

describe('the lift of a waved shim at an angle', () => {
  it('is mean plus amplitude at the crest, mean minus it at the trough, the mean between, and still at the clamp', () => {
    const shape = still({ waves: 4, mean: 0.6, harmonics: [0.2] });
    expect(rimAt(shape, 0)).toBeCloseTo(0.8, 12);
    expect(rimAt(shape, Math.PI)).toBeCloseTo(0.4, 12);
    expect(rimAt(shape, Math.PI / 2)).toBeCloseTo(0.6, 12);
    // cos 60° is one half.
    expect(rimAt(shape, Math.PI / 3)).toBeCloseTo(0.7, 12);
    expect(liftAt(shape, 0, 1)[0]).toBe(0);
  });

  it('adds its harmonics: cos 2φ is 1 at both ends and −1 in the middle', () => {
    const shape = still({ waves: 3, mean: 0.6, harmonics: [0.1, 0.2] });
    expect(rimAt(shape, 0)).toBeCloseTo(0.9, 12);
    expect(rimAt(shape, Math.PI)).toBeCloseTo(0.7, 12);
    expect(rimAt(shape, Math.PI / 2)).toBeCloseTo(0.4, 12);
  });
});

describe('crest and trough', () => {
  it('lie at the port and half a wave on with one harmonic, the other way round with a negative one', () => {
    expect(extremesOf(still({ waves: 4, mean: 0.6, harmonics: [0.2] }))).toEqual({ crest: 0, trough: Math.PI });
    expect(extremesOf(still({ waves: 4, mean: 0.6, harmonics: [-0.2] }))).toEqual({ crest: Math.PI, trough: 0 });
  });

  it('lie between with two: h1 cos φ + h2 cos 2φ is least where cos φ = −h1 / 4 h2', () => {
    // −0.2 / (4 · 0.1) is −1/2, the cosine of 120°.
    const extremes = extremesOf(still({ waves: 3, mean: 0.6, harmonics: [0.2, 0.1] }));
    expect(extremes?.crest).toBe(0);
    expect(extremes?.trough).toBeCloseTo((2 * Math.PI) / 3, 12);
  });

  it('there are none on a round stack', () =>
    expect(extremesOf(shapeBetween(round(0.5), round(0.6), 0.5))).toBeUndefined());
});

describe('between two solved points', () => {
  it('mean and amplitude both lie straight between', () => {
    const from = point({ waves: 4, mean: 0.4, harmonics: [0.1] });
    const to = point({ waves: 4, mean: 0.8, harmonics: [0.3] });
    const shape = shapeBetween(from, to, 0.25);
    expect(shape.waves).toBe(4);
    expect(rimAt(shape, 0)).toBeCloseTo(0.5 + 0.15, 12);
    expect(rimAt(shape, Math.PI)).toBeCloseTo(0.5 - 0.15, 12);
  });

  it('a wave grows out of a round state', () => {
    const shape = shapeBetween(round(0.4), point({ waves: 3, mean: 0.6, harmonics: [0.2] }), 0.5);
    expect(shape.waves).toBe(3);
    expect(rimAt(shape, 0)).toBeCloseTo(0.5 + 0.1, 12);
    expect(extremesOf(shape)).toEqual({ crest: 0, trough: Math.PI });
  });

  it('six waves fall to three: the wave of six is the second harmonic of three', () => {
    const six = point({ waves: 6, mean: 0.6, harmonics: [0.2] });
    const three = point({ waves: 3, mean: 0.6, harmonics: [0.1, 0.2] });
    const same = shapeBetween(six, three, 0);
    expect(same.waves).toBe(3);
    // At θ = 30° six waves stand at their trough, which is φ = 90° of three.
    expect(rimAt(same, Math.PI / 2)).toBeCloseTo(0.4, 12);
    expect(rimAt(same, Math.PI)).toBeCloseTo(0.8, 12);
    expect(rimAt(shapeBetween(six, three, 0.5), 0)).toBeCloseTo(0.6 + 0.05 + 0.2, 12);
  });

  it('waves without a common number are held in one: four and three', () => {
    const four = point({ waves: 4, mean: 0.6, harmonics: [0.2] });
    const three = point({ waves: 3, mean: 0.6, harmonics: [0.1] });
    const shape = shapeBetween(four, three, 0.5);
    expect(shape.waves).toBe(1);
    // 0.1 cos 4θ + 0.05 cos 3θ at θ = 60°: 0.1 · (−1/2) + 0.05 · (−1).
    expect(rimAt(shape, Math.PI / 3)).toBeCloseTo(0.6 - 0.05 - 0.05, 12);
  });
});
