/** Parts of the damper that started as an assumption and wait for being measured. */
import type { AssumedPart, Project } from '../../model/project.ts';
import { keyPut } from './optional-parts.ts';

export const isAssumed = ({ damper }: Project, part: AssumedPart): boolean =>
  damper.assumedParts?.includes(part) ?? false;

/** The part as it stands is what was measured. */
export function withMeasured(project: Project, part: AssumedPart): Project {
  const { damper } = project;
  const left = damper.assumedParts?.filter((each) => each !== part) ?? [];
  return { ...project, damper: keyPut(damper, 'assumedParts', left.length > 0 ? left : undefined) };
}
