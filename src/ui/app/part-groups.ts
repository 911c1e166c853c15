/**
 * Numbers that are an answer only together, such as the travel and the spring of a float. Until all that are needed are
 * given the document has none of them, and what was typed is held here, so that nothing typed is lost.
 */
import type { BackingPlate, CoilSpring, Float, Notches, Project, Valving } from '../../model/project.ts';
import { validateProject } from '../../model/validate.ts';
import { InputError } from '../../units/fault.ts';
import { changeRow, replaceRows } from './edits.ts';
import { heldParts, place, project, selectedBuild, selectedValving, withValving } from './store.ts';

export type PartOf<T> = keyof T & string;

export interface PartGroup<T extends object> {
  /** Within the valving, as faults name it. */
  readonly path: string;
  /** The parts without which the group says nothing. */
  readonly needs: readonly PartOf<T>[];
  readonly of: (valving: Valving) => T | undefined;
  readonly put: (valving: Valving, whole: T | undefined) => Valving;
}

export const BACKING_PLATE: PartGroup<BackingPlate> = {
  path: 'backingPlate',
  needs: ['gap_mm'],
  of: (valving) => valving.backingPlate,
  put: ({ backingPlate: _old, ...rest }, plate) => (plate ? { ...rest, backingPlate: plate } : rest),
};

export const COIL_SPRING: PartGroup<CoilSpring> = {
  path: 'coilSpring',
  needs: ['diameter_mm', 'rate_N_mm', 'preload_N'],
  of: (valving) => valving.coilSpring,
  put: ({ coilSpring: _old, ...rest }, spring) => (spring ? { ...rest, coilSpring: spring } : rest),
};

export const FLOAT: PartGroup<Float> = {
  path: 'float',
  needs: ['travel_mm', 'rate_N_mm', 'preload_N'],
  of: (valving) => valving.float,
  put: ({ float: _old, ...rest }, float) => (float ? { ...rest, float } : rest),
};

export const notchesOf = (row: number): PartGroup<Notches> => ({
  path: `shims[${row}].notches`,
  needs: ['count', 'width_mm'],
  of: (valving) => valving.shims[row]?.notches,
  put: (valving, notches) => (notches ? changeRow(valving, row, { notches }) : withoutRowPart(valving, row, 'notches')),
});

/** The stack with an optional part of one row gone. */
export function withoutRowPart(
  valving: Valving,
  row: number,
  part: 'innerDiameter_mm' | 'dish_mm' | 'notches',
): Valving {
  const shims = valving.shims.map((shim, i) => {
    if (i !== row) return shim;
    const { [part]: _gone, ...rest } = shim;
    return rest;
  });
  return replaceRows(valving, shims);
}

const keyOf = (path: string): string => `${selectedBuild.value.id}:${place.value}:${path}`;

/** What is given of a group: in the document, or held until it is complete. */
export const partsOf = <T extends object>(group: PartGroup<T>): Partial<T> =>
  group.of(selectedValving.value) ?? (heldParts.value[keyOf(group.path)] as Partial<T> | undefined) ?? {};

/** The parts still needed of a group that was begun; none when it is complete or empty. */
export function partsWanted<T extends object>(group: PartGroup<T>): PartOf<T>[] {
  const parts = partsOf(group);
  if (Object.keys(parts).length === 0) return [];
  return group.needs.filter((part) => parts[part] === undefined);
}

/** A number that would not do in the complete group is refused before it is held. */
function refuseWrong<T extends object>(group: PartGroup<T>, part: PartOf<T>, parts: Partial<T>): void {
  const checked = validateProject(withValving((valving) => group.put(valving, parts as T)));
  if (checked.ok) return;
  const own = [`.${group.path}`, `.${group.path}.${part}`];
  const fault = checked.faults.find(({ path }) => own.some((end) => path.endsWith(end)));
  if (fault) throw new InputError(fault);
}

/**
 * The project with one part changed, or emptied by `undefined`. A group that is not complete leaves the document, and
 * what is given of it is held.
 * @throws InputError of a part that is wrong whatever the others are
 */
export function withPart<T extends object>(group: PartGroup<T>, part: PartOf<T>, value: number | undefined): Project {
  const { [part]: _old, ...others } = partsOf(group);
  const parts = (value === undefined ? others : { ...others, [part]: value }) as Partial<T>;
  if (group.needs.every((need) => parts[need] !== undefined))
    return withValving((valving) => group.put(valving, parts as T));
  if (value !== undefined) refuseWrong(group, part, parts);
  const next = group.of(selectedValving.value) ? withValving((v) => group.put(v, undefined)) : project.value;
  heldParts.value = { ...heldParts.value, [keyOf(group.path)]: parts };
  return next;
}
