/** One search: everything that its answers depend on, so that it goes on after a reload as it began. */
import type { PresentStacks, SearchStartRequest } from '../../../workers/protocol.ts';
import { projectOfBuild } from '../../model/link-form.ts';
import type { Build, Project } from '../../model/project.ts';
import type { SearchForm } from './form.ts';

export interface Study {
  /** Tells it from every other. */
  readonly id: string;
  /** The build with its damper and the drawer, as they were. */
  readonly project: Project;
  readonly request: SearchStartRequest['request'];
  readonly settings: SearchStartRequest['settings'];
  readonly starts: number;
  /** What it begins from; absent in searches kept before it was told. */
  readonly present?: PresentStacks;
  /** Name of the wanted curve, for a person. */
  readonly aimName: string;
  /** What the page showed, to show it again. */
  readonly form: SearchForm;
}

/** What a search needs of a project, and no more. */
export const searchedProject = (project: Project, buildId: string): Project => ({
  ...projectOfBuild(project, buildId),
  drawer: project.drawer,
});

export const buildOfStudy = ({ project }: Study): Build => project.builds[0];

const partsOf = ({ damper, fluid, gas, drawer, builds }: Project, buildId: string): string => {
  const { name: _n, notes: _t, measurements: _m, ...build } = builds.find(({ id }) => id === buildId) ?? ({} as Build);
  return JSON.stringify([damper, fluid, gas, drawer, build]);
};

/** Whether build, damper and drawer are still as they were. */
export const isCurrent = ({ project, request }: Study, now: Project): boolean =>
  partsOf(project, request.buildId) === partsOf(now, request.buildId);

/** Equal for searches whose starts find the same; how many starts there are does not matter to any of them. */
export const questionOf = ({ project, request, settings }: Omit<Study, 'id'>): string =>
  JSON.stringify([partsOf(project, request.buildId), request, settings]);
