/** One thing that is not known of a damper, and how the document is changed to either end of what is plausible. */
import type { Build, Project } from '../../model/project.ts';
import type { RecordStep } from '../../model/record.ts';
import { baselineOf } from '../app/edits.ts';
import { showField } from '../app/quantities.ts';
import { recordWords } from '../text/record.ts';

export type Reason = 'open' | 'skipped' | 'assumed' | 'default' | 'coefficient';

export interface Unknown {
  readonly id: string;
  readonly step: RecordStep;
  readonly label: string;
  /** How far it is changed, to either side. */
  readonly range: string;
  readonly reason: Reason;
  /** One or two documents, each of which may turn out to be none. */
  readonly ends: readonly Project[];
}

/** Before it is known why it is unknown. */
export type Draft = Omit<Unknown, 'reason'> & { readonly isDefault?: boolean };

export interface Parts {
  readonly project: Project;
  readonly build: Build;
}

/** A copy of the document with something changed in it. */
export function changed(project: Project, edit: (parts: Parts) => void): Project {
  const copy = structuredClone(project);
  edit({ project: copy, build: baselineOf(copy) });
  return copy;
}

export const bothWays = (project: Project, edit: (sign: 1 | -1) => (parts: Parts) => void): Project[] =>
  ([-1, 1] as const).map((sign) => changed(project, edit(sign)));

const { spread } = recordWords.missing;

export const inPercent = (share: number): string => spread(showField('percent', share * 100));
