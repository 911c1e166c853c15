/** An edit by button: where it is refused, the reason becomes a message. */
import type { Project } from '../../model/project.ts';
import { editProject } from './apply.ts';
import { tell } from './notices.ts';

/** @returns whether the edit was made */
export function editOrTell(edit: () => Project, label: string, mergeKey?: string): boolean {
  const fault = editProject(edit, { label, ...(mergeKey !== undefined && { mergeKey }) });
  if (fault) tell(fault.message, { tone: 'problem' });
  return fault === undefined;
}
