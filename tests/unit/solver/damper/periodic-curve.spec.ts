import { describe, expect, it } from 'vitest';
import { demoProject } from '../../../../scripts/lib/demo-project.ts';
import type { Project } from '../../../../src/model/project.ts';
import type { ForcePoint } from '../../../../src/solver/damper/types.ts';
import { damperFromProject, forceCurveForBuild } from '../../../../src/solver/from-model.ts';
import { loadUnderMean } from '../../../../src/solver/stack/load-under-mean.ts';
import type { Theory } from '../../../../src/solver/types.ts';
import { converged } from '../../../helpers/stacks.ts';

const GROOVED = demoProject('larkspur-trail-rear');
/** The same damper, its compression ports open to the shims over this share of the circle. */
function ported(coveredFraction: number): Project {
  const project = structuredClone(GROOVED);
  const { ports } = project.damper.valves.pistonCompression;
  ports.count = 3;
  ports.coveredFraction = coveredFraction;
  return project;
}

function curve(project: Project, speeds_m_s: readonly number[], theory: Theory) {
  const { theory: used, points, stacks } = forceCurveForBuild(project, project.baselineBuild, { speeds_m_s, theory });
  return { used, stacks, points: points.map((point) => point as ForcePoint) };
}
const damping = ({ points }: ReturnType<typeof curve>, i: number) => points[i].pistonDrop_Pa;

describe('a force curve that follows the waves', () => {
  it('names its theory, and asks for no onset', () => {
    const { used, stacks } = curve(GROOVED, [0.2], 'port-periodic');
    expect(used).toBe('port-periodic');
    expect(stacks.compression.theory).toBe('port-periodic');
    expect(stacks.compression.waves).toBeUndefined();
  });

  it('is the round curve where a groove leaves the stacks round', () => {
    const [round, waved] = (['large-deflection', 'port-periodic'] as const).map((theory) =>
      curve(GROOVED, [0.2], theory),
    );
    // Each state to the tolerance of the solver, which comes to it by other steps.
    expect(waved.points[0].force_N / round.points[0].force_N).toBeCloseTo(1, 8);
  });

  it('is softer where the stacks wave, since their mean lift is greater', () => {
    const speeds = [-2];
    const [round, waved] = (['large-deflection', 'port-periodic'] as const).map((theory) =>
      curve(GROOVED, speeds, theory),
    );
    expect(round.stacks.rebound.waves?.status).toBe('found');
    expect(damping(waved, 0)).toBeLessThan(0.99 * damping(round, 0));
    expect(damping(waved, 0)).toBeGreaterThan(0.6 * damping(round, 0));
  });

  it('loads the stack by the mean pressure whatever share the ports open', () => {
    const project = ported(0.5);
    const { stack } = damperFromProject(project, project.baselineBuild).compression;
    expect(stack.ports).toEqual({ count: 3, coveredFraction: 0.5 });
    const mean_Pa = 2e5;
    const round = converged(loadUnderMean(stack, { theory: 'large-deflection' }).at(mean_Pa));
    const waved = converged(loadUnderMean(stack, { theory: 'port-periodic' }).at(mean_Pa));
    expect(waved.pressure_Pa).toBe(mean_Pa);
    // The same force on the shims, see π (r2² - r1²) p.
    const { innerRadius_m, outerRadius_m } = stack.pressureZone;
    const inner_m = Math.max(innerRadius_m, stack.clampRadius_m);
    for (const { appliedForce_N } of [round, waved])
      expect(appliedForce_N / (Math.PI * (outerRadius_m ** 2 - inner_m ** 2) * mean_Pa)).toBeCloseTo(1, 9);
  });

  it('without a share in the document takes the ports for a groove', () => {
    const { stack } = damperFromProject(GROOVED, GROOVED.baselineBuild).compression;
    expect(stack).not.toHaveProperty('ports');
  });
});
