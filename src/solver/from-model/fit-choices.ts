/** What a fit may change in a build of a document: the lines of the table of coefficients that the damper can have an answer to. */
import type { Project } from '../../model/project.ts';
import { FIT_TABLE, type FitName, fitNamesOf, usualFitNames } from '../fit/fit-coefficients.ts';
import { damperFromProject } from '../from-model.ts';

/** All numbers in the unit that the name ends in, or none. */
export interface FitChoice {
  readonly name: FitName;
  /** Without a fit. */
  readonly physical: number;
  /** What it is known to. */
  readonly low: number;
  readonly high: number;
  readonly source: string;
  /** Whether a fit changes it unless told otherwise. */
  readonly isUsual: boolean;
}

/** In the order of the table. @throws InputError as `damperFromProject` does */
export function fitChoicesForBuild(project: Project, buildId: string): FitChoice[] {
  const damper = damperFromProject(project, buildId);
  const usual = new Set(usualFitNames(damper));
  return fitNamesOf(damper).map((name) => {
    const { physical, low, high, source } = FIT_TABLE[name];
    return { name, physical, low, high, source, isUsual: usual.has(name) };
  });
}
