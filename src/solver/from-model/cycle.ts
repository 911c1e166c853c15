/** A build of a project driven over time, with the oil of its document. */
import type { Project } from '../../model/project.ts';
import type { SineDrive, TraceDrive } from '../cycle/drive.ts';
import { type DampingCycleOptions, type DrivenDamper, dampingCycles } from '../cycle/from-damper.ts';
import type { FailedCycle } from '../cycle/types.ts';
import { damperFromProject } from '../from-model.ts';
import type { SolveHooks } from '../types.ts';
import { aeratedOilFromDocument } from './compressibility.ts';

/** @throws InputError as `damperFromProject`, `aeratedOilFromDocument` and `dampingCycles` do; SolveStopped when the caller stops */
export function dampingCyclesForBuild(
  project: Project,
  buildId: string,
  drives: readonly (SineDrive | TraceDrive)[],
  options: Omit<DampingCycleOptions, 'oil'>,
  hooks: SolveHooks = {},
): (DrivenDamper | FailedCycle)[] {
  const oil = aeratedOilFromDocument(project.fluid);
  return dampingCycles(damperFromProject(project, buildId), drives, { ...options, oil }, hooks);
}
