import { describe, expect, it } from 'vitest';
import { levelsBetween, roundStep } from '../../../../src/ui/plan-view/lift-levels.ts';
import { anglesOf, layPlan, placeOn, ringPointAt, troughAcross } from '../../../../src/ui/plan-view/plan-frame.ts';
import { liftGrid, rangeOnGrid } from '../../../../src/ui/plan-view/ring-grid.ts';
import { PIXELS_PER_MM } from '../../../../src/ui/section/scale.ts';

const turned = (degrees: number): number => (degrees * Math.PI) / 180;

describe('the plan on its sheet', () => {
  const frame = layPlan({ width: 530, height: 320 }, 20, turned(30));

  it('has the largest scale in quarters at which the bore fits: 1.75 : 1 for 40 mm in 276 px, at 3.78 px a mm', () => {
    expect(frame.scale).toBe(1.75);
    expect(40 * frame.pixelsPerMm).toBeCloseTo(40 * 1.75 * PIXELS_PER_MM, 9);
  });

  it('turns the crest to the left', () => {
    const [x, y] = placeOn(frame, { r: 10, theta: turned(30) });
    expect(x).toBeCloseTo(frame.cx - 10 * frame.pixelsPerMm, 9);
    expect(y).toBeCloseTo(frame.cy, 9);
  });

  it('finds the place under a point of the sheet again', () => {
    const [x, y] = placeOn(frame, { r: 12, theta: turned(75) });
    const { r, theta } = ringPointAt(frame, x, y);
    expect(r).toBeCloseTo(12, 9);
    expect(Math.cos(theta - turned(75))).toBeCloseTo(1, 12);
  });
});

describe('angles round the circle', () => {
  it('crests of four waves stand at 0, 90, 180, 270 degrees, their troughs at 45 and on', () => {
    expect(anglesOf(0, 4).map((each) => Math.round((each * 180) / Math.PI))).toEqual([0, 90, 180, 270]);
    expect(anglesOf(Math.PI, 4).map((each) => Math.round((each * 180) / Math.PI))).toEqual([45, 135, 225, 315]);
  });

  it('a phase between them stands on both sides of each crest: 120° of three waves at ± 40° of 120°', () => {
    const angles = anglesOf(turned(120), 3).map((each) => Math.round((each * 180) / Math.PI));
    expect(angles).toEqual([40, 80, 160, 200, 280, 320]);
  });

  it('three waves have a trough straight across from a crest, four have it 45 degrees aside', () => {
    expect(troughAcross({ crest: 0, trough: Math.PI }, 3)).toBeCloseTo(Math.PI, 12);
    const four = troughAcross({ crest: 0, trough: Math.PI }, 4);
    expect(Math.abs(Math.abs(four - Math.PI) - turned(45))).toBeLessThan(1e-9);
  });
});

describe('levels', () => {
  it('are round: steps of 1, 2, 5', () => {
    expect(roundStep(1, 10)).toBeCloseTo(0.1, 12);
    expect(roundStep(1.1, 10)).toBeCloseTo(0.2, 12);
    expect(roundStep(3, 10)).toBeCloseTo(0.5, 12);
    expect(roundStep(6, 10)).toBeCloseTo(1, 12);
  });

  it('lie strictly between the ends; flat has none', () => {
    const { step, levels } = levelsBetween(0, 0.5);
    expect(step).toBeCloseTo(0.05, 12);
    expect(levels[0]).toBeCloseTo(0.05, 12);
    expect(levels.at(-1)).toBeCloseTo(0.45, 12);
    expect(levelsBetween(0.3, 0.3).levels).toEqual([]);
    expect(levelsBetween(-0.05, 0.15).levels[0]).toBeCloseTo(-0.04, 12);
  });
});

describe('the lift as a field', () => {
  const shape = {
    waves: 4,
    radius_m: Float64Array.of(0.006, 0.01, 0.015),
    firstNode: [0],
    lift_m: [Float64Array.of(0, 0.0003, 0.0006)],
    harmonics_m: [[Float64Array.of(0, 0.0001, 0.0002)]],
  };

  it('is w0 + w1 cos 4θ at every node and angle', () => {
    const grid = liftGrid(shape, 0);
    expect(grid.radii.map((r) => Math.round(r))).toEqual([6, 10, 15]);
    for (let j = 0; j < grid.angles; j++) {
      const theta = (2 * Math.PI * j) / grid.angles;
      expect(grid.values[2 * grid.angles + j]).toBeCloseTo(0.0006 + 0.0002 * Math.cos(4 * theta), 12);
    }
    expect(rangeOnGrid(grid).least).toBe(0);
    expect(rangeOnGrid(grid).most).toBeCloseTo(0.0008, 12);
  });

  it('is the same all round where the stack is round', () => {
    const grid = liftGrid({ ...shape, waves: 0, harmonics_m: undefined }, 0);
    expect(new Set(grid.values.slice(2 * grid.angles)).size).toBe(1);
  });
});
