/** What each shim of one stack of a build does. */
import type { Project } from '../../model/project.ts';
import type { StackPlace } from '../damper/types.ts';
import { damperFromProject } from '../from-model.ts';
import { type StackSensitivity, stackSensitivity } from '../sensitivity/shim-sensitivity.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';

export interface SensitivityQuestion {
  readonly place: StackPlace;
  /** Positive in compression. */
  readonly speeds_m_s: readonly number[];
  readonly theory: TheoryChoice;
  /** As in `BuildCurveOptions`. */
  readonly stroke_m?: number;
}

/** @throws InputError as `damperFromProject` and `stackSensitivity` do; SolveStopped when the caller stops the run */
export function sensitivityForBuild(
  project: Project,
  buildId: string,
  { place, speeds_m_s, theory, stroke_m }: SensitivityQuestion,
  hooks: SolveHooks = {},
): StackSensitivity {
  return stackSensitivity(damperFromProject(project, buildId, stroke_m), place, speeds_m_s, theory, hooks);
}
