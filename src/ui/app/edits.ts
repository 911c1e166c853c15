/** Edits of the document as pure functions: each returns a new project and leaves the old one untouched. */
import { newBuildFrom } from '../../model/new-build.ts';
import type { Build, Project, ShimRow, ValvePlace, Valving } from '../../model/project.ts';
import { valvingAt } from './places.ts';

/** Another row of the same shim, once; notches stay behind, because only the face shim can have them. */
export const sameAgain = ({ notches: _notches, ...row }: ShimRow): ShimRow => ({ ...row, count: 1 });

export const buildOf = (project: Project, id: string): Build =>
  project.builds.find((build) => build.id === id) ?? project.builds[0];

export const baselineOf = (project: Project): Build => buildOf(project, project.baselineBuild);

export function changeBuild(project: Project, id: string, change: (build: Build) => Build): Project {
  return { ...project, builds: project.builds.map((build) => (build.id === id ? change(build) : build)) };
}

export function changeValving(
  project: Project,
  id: string,
  place: ValvePlace,
  change: (v: Valving) => Valving,
): Project {
  return changeBuild(project, id, (build) => ({
    ...build,
    valves: { ...build.valves, [place]: change(valvingAt(build, place)) },
  }));
}

export const replaceRows = (valving: Valving, shims: ShimRow[]): Valving => ({ ...valving, shims });

export const changeRow = (valving: Valving, index: number, change: Partial<ShimRow>): Valving =>
  replaceRows(
    valving,
    valving.shims.map((row, i) => (i === index ? { ...row, ...change } : row)),
  );

export const insertRow = (valving: Valving, index: number, row: ShimRow): Valving =>
  replaceRows(valving, [...valving.shims.slice(0, index), row, ...valving.shims.slice(index)]);

export const removeRow = (valving: Valving, index: number): Valving =>
  replaceRows(
    valving,
    valving.shims.filter((_, i) => i !== index),
  );

export function moveRow(valving: Valving, from: number, to: number): Valving {
  if (to < 0 || to >= valving.shims.length || from === to) return valving;
  const rows = [...valving.shims];
  const [row] = rows.splice(from, 1);
  rows.splice(to, 0, row);
  return replaceRows(valving, rows);
}

/** A name not yet taken: `Stock`, `Stock 2`, `Stock 3`. */
function freeName(project: Project, wanted: string): string {
  const taken = new Set(project.builds.map((build) => build.name));
  let name = wanted;
  for (let n = 2; taken.has(name); n++) name = `${wanted} ${n}`;
  return name;
}

export function duplicateBuild(project: Project, id: string, copyName: (name: string) => string): [Project, string] {
  const source = buildOf(project, id);
  const taken = project.builds.map((build) => build.id);
  const copy = newBuildFrom(source, freeName(project, copyName(source.name)), taken);
  const at = project.builds.indexOf(source) + 1;
  return [{ ...project, builds: [...project.builds.slice(0, at), copy, ...project.builds.slice(at)] }, copy.id];
}

/** The last build stays: a project without one has nothing to show. */
export function removeBuild(project: Project, id: string): Project {
  if (project.builds.length < 2) return project;
  const builds = project.builds.filter((build) => build.id !== id);
  const baselineBuild = project.baselineBuild === id ? builds[0].id : project.baselineBuild;
  return { ...project, builds, baselineBuild };
}
