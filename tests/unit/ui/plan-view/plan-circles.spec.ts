import { describe, expect, it } from 'vitest';
import { toldCircles } from '../../../../src/ui/plan-view/plan-circles.ts';
import { rimLifts } from '../../../../src/ui/plan-view/rim-lifts.ts';
import { liftGrid } from '../../../../src/ui/plan-view/ring-grid.ts';
import type { ShownPlan } from '../../../../src/ui/plan-view/shown-plan.ts';

const shims = [
  { outerDiameter_mm: 30, thickness_mm: 0.2 },
  { outerDiameter_mm: 20, thickness_mm: 0.2 },
];
const shape = {
  waves: 3,
  radius_m: Float64Array.of(0.006, 0.009, 0.01, 0.014, 0.015),
  firstNode: [0, 0],
  lift_m: [Float64Array.of(0, 0.0002, 0.0003, 0.0006, 0.0007), Float64Array.of(0, 0.0002, 0.0003)],
  harmonics_m: [[Float64Array.of(0, 0, 0.0001, 0.0002, 0.0003)], [Float64Array.of(0, 0, 0.0001)]],
};
const state = {
  ...{ pressure_Pa: 1e6, seatOpening_m: 0.0005, shimEdgeLift_m: [0.0007, 0.0003], shimStress_Pa: [1, 1] },
  ...{ seatForce_N: 0, plateForce_N: 0, clampForce_N: 0, shape },
};
const planOf = (shim: number): ShownPlan => ({
  stack: { build: { id: 'a', name: 'A' } as never, valving: { clampDiameter_mm: 12, seatHeight_mm: 0, shims } },
  body: {
    ports: { count: 3, diameter_mm: 4, length_mm: 8 },
    pressureZone: { innerDiameter_mm: 18, outerDiameter_mm: 28 },
    seat: { innerDiameter_mm: 28, outerDiameter_mm: 29 },
  },
  boreRadius_mm: 20,
  ...{ shims, shim },
  field: {
    ...{ state, grid: liftGrid(shape, shim), levels_m: [], digits: 0, least_m: 0, top_m: 0.001, waves: 3 },
    extremes: { crest: 0, trough: Math.PI },
  },
});

describe('the circles of a shim', () => {
  it('are the edges that lie on nodes of it, from the clamp to the rim, each with mean, crest and trough', () => {
    const told = toldCircles(planOf(0));
    expect(told.map(({ diameter_mm }) => Math.round(diameter_mm))).toEqual([12, 18, 20, 28, 30]);
    expect(told.map(({ names }) => names)).toEqual([['clamp'], ['zoneInner'], [{ rimOf: 1 }], ['seatInner'], ['rim']]);
    const rim = told[4];
    expect(rim.mean_m).toBeCloseTo(0.0007, 12);
    expect(rim.crest_m).toBeCloseTo(0.001, 12);
    expect(rim.trough_m).toBeCloseTo(0.0004, 12);
  });

  it('of a smaller shim end at its rim', () => {
    const told = toldCircles(planOf(1));
    expect(told.map(({ names }) => names.at(-1))).toEqual(['clamp', 'zoneInner', 'rim']);
    const { field } = planOf(1);
    expect(field && rimLifts(field, 1).crest).toBeCloseTo(0.0004, 12);
  });
});
