import { describe, expect, it } from 'vitest';
import { forceCurveForBuild } from '../../../../src/solver/index.ts';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import { airMargin, airReleaseLevel, besideGas } from '../../../../src/ui/charts/air-margin.ts';
import { demos } from '../helpers/demos.ts';

/** Air comes out of oil below atmospheric pressure, 101 325 Pa by definition: the default of the solver. */
const ATMOSPHERE_PA = 101_325;

const pointsOf = (curve: ReturnType<typeof forceCurveForBuild>): ForcePoint[] =>
  curve.points.flatMap((point) => (point.status === 'converged' ? [point] : []));

describe.each(demos())('air in the oil of %s', (_, project) => {
  const stroke_m = project.damper.travel_mm / 4000;
  const options = { speeds_m_s: [-3, -1, -0.2, -0.02, 0.02, 0.2, 1, 3], theory: 'small-deflection' } as const;
  const points = pointsOf(forceCurveForBuild(project, project.builds[0].id, { ...options, stroke_m }));

  it('comes out at the same pressure, whichever point tells it', () => {
    const levels = points.flatMap((point) => airReleaseLevel(point) ?? []);
    expect(levels.length).toBeGreaterThan(3);
    for (const level of levels) expect(level / ATMOSPHERE_PA).toBeCloseTo(1, 9);
  });

  it('has a margin above 0 exactly where no chamber is held', () => {
    expect(points).toHaveLength(options.speeds_m_s.length);
    for (const point of points) expect(airMargin(point) < 0).toBe(point.airRelease);
  });
});

describe('the oil next to the gas', () => {
  const point = { compressionPressure_Pa: 9e5, shaftSpeed_m_s: 1, base: { drop_Pa: 5e5 } } as ForcePoint;
  it('lies beyond the base valve, in the direction of the flow', () => {
    expect(besideGas(point)).toBe(4e5);
    expect(besideGas({ ...point, shaftSpeed_m_s: -1 })).toBe(14e5);
  });
  it('is the compression chamber of a damper without one', () => {
    expect(besideGas({ ...point, base: undefined })).toBe(9e5);
  });
});
