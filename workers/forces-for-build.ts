/** The forces of one build at many speeds, packed for the wire: calls the solver and takes from its points what a sweep shows. */
import { type FollowStacks, forcePointsForBuild } from '../src/solver/index.ts';
import type { ForcesRequest, Project, SolveHooks, SpeedForces } from './protocol.ts';

/** @throws InputError as `forcePointsForBuild` does; SolveStopped when the caller stops the run */
export function forcesForBuild(
  project: Project,
  buildId: string,
  options: Omit<ForcesRequest, 'project' | 'buildIds'> & { readonly follow?: FollowStacks },
  hooks: SolveHooks,
): SpeedForces {
  const { points, theories } = forcePointsForBuild(project, buildId, options, hooks);
  return {
    shaftSpeed_m_s: points.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s),
    force_N: points.map((point) => (point.status === 'converged' ? point.force_N : null)),
    gasForce_N: points.map((point) => (point.status === 'converged' ? point.gasForce_N : null)),
    reasons: [...new Set(points.flatMap((point) => (point.status === 'converged' ? [] : [point.reason])))],
    theories,
  };
}
