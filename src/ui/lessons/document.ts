/** The document that a lesson starts on: a demo with two builds of the same valving, one to change and one to compare with. */
import type { Build, Project } from '../../model/project.ts';
import type { Lesson } from './lesson.ts';

/** The build that the person changes, and the one that stays as it was. */
export const OWN_BUILD = 'own';
export const START_BUILD = 'start';

export interface StartNames {
  readonly project: string;
  readonly notes: string;
  readonly own: string;
  readonly start: string;
}

/** @throws Error when the demo has no builds, which its own test rules out */
export function startDocument(lesson: Lesson, demo: Project, names: StartNames): Project {
  const base = lesson.setUp?.(demo) ?? demo;
  const [stock] = base.builds;
  const named = (id: string, name: string): Build => ({ ...structuredClone(stock), id, name, notes: '' });
  return {
    ...base,
    name: names.project,
    notes: names.notes,
    invented: true,
    builds: [named(START_BUILD, names.start), named(OWN_BUILD, names.own)],
    baselineBuild: START_BUILD,
  };
}
