/**
 * Parts that a damper or a build may have or not, such as a needle or a hydraulic stop: put in with starting values, taken
 * out, and put back as they were.
 */
import type { Project } from '../../model/project.ts';
import { validateProject } from '../../model/validate.ts';
import { openId, project } from './store.ts';

export interface OptionalPart<T extends object> {
  /** Tells it from every other part of the project. */
  readonly id: string;
  readonly of: (project: Project) => T | undefined;
  readonly put: (project: Project, part: T | undefined) => Project;
  /** What it starts with where it never was; plausible sizes, to be replaced by measured ones. */
  readonly start: (project: Project) => T;
}

/** What was taken out, by project and part; kept while the page is open. */
const takenOut = new Map<string, object>();
const keyOf = ({ id }: { readonly id: string }): string => `${openId.value}:${id}`;

export function withoutPart<T extends object>(part: OptionalPart<T>): Project {
  const present = part.of(project.value);
  if (present) takenOut.set(keyOf(part), present);
  return part.put(project.value, undefined);
}

/** As it was taken out, unless the rest has changed so that it no longer fits. */
export function withStartedPart<T extends object>(part: OptionalPart<T>): Project {
  const before = takenOut.get(keyOf(part)) as T | undefined;
  const again = before && part.put(project.value, before);
  if (again && validateProject(again).ok) return again;
  return part.put(project.value, part.start(project.value));
}

/** The project with one number, or anything else, of a part changed that it has. */
export function withPartChanged<T extends object>(part: OptionalPart<T>, change: Partial<T>): Project {
  const present = part.of(project.value);
  return present ? part.put(project.value, { ...present, ...change }) : project.value;
}

/** A record without one of its keys, or with it. */
export function keyPut<Owner extends object, Key extends keyof Owner>(
  owner: Owner,
  key: Key,
  value: Owner[Key] | undefined,
): Owner {
  const { [key]: _old, ...rest } = owner;
  return (value === undefined ? rest : { ...rest, [key]: value }) as Owner;
}
