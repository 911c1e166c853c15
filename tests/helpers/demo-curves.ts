/** Demo projects as a person opens them, and their force curves. */
import { expect } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { type ForceCurve, type ForcePoint, forceCurveForBuild, type Theory } from '../../src/solver/index.ts';

export { readDemo as loadDemo } from '../../scripts/lib/demo-project.ts';

export const DEMO_FOLDER = new URL('../../src/demo/', import.meta.url);
export const THEORIES: Theory[] = ['small-deflection', 'large-deflection'];
export const SPEEDS = [-2, -1.5, -1, -0.5, -0.2, -0.1, -0.05, 0, 0.05, 0.1, 0.2, 0.5, 1, 1.5, 2];

export const demoCurve = (project: Project, buildId: string, theory: Theory, stroke_m?: number): ForceCurve =>
  forceCurveForBuild(project, buildId, { speeds_m_s: SPEEDS, theory, stroke_m });

export function pointAt({ points }: ForceCurve, speed: number): ForcePoint {
  const point = points.find(({ shaftSpeed_m_s }) => shaftSpeed_m_s === speed);
  expect(point?.status).toBe('converged');
  return point as ForcePoint;
}

/** How the first build changes the damping of the second one, as a share of it, at a speed. */
export const changeBetween =
  (stock: ForceCurve, revalve: ForceCurve) =>
  (speed: number): number =>
    pointAt(revalve, speed).dampingForce_N / pointAt(stock, speed).dampingForce_N - 1;
