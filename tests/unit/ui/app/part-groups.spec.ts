import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { insertRow, sameAgain } from '../../../../src/ui/app/edits.ts';
import {
  BACKING_PLATE,
  COIL_SPRING,
  FLOAT,
  notchesOf,
  partsOf,
  partsWanted,
  withoutRowPart,
  withPart,
} from '../../../../src/ui/app/part-groups.ts';
import {
  commit,
  project,
  replaceProject,
  selectedValving,
  startWith,
  undoEdit,
  withValving,
} from '../../../../src/ui/app/store.ts';
import { InputError } from '../../../../src/units/fault.ts';

const demo = JSON.parse(readFileSync('src/demo/larkspur-trail-rear.shimwright.json', 'utf8')) as Project;
const put = (next: Project): void => commit(next, { label: 'part' });
const codeOf = (edit: () => unknown): string | undefined => {
  try {
    edit();
  } catch (error) {
    if (error instanceof InputError) return error.fault.code;
    throw error;
  }
  return undefined;
};

beforeEach(() => {
  startWith(demo, 'first');
  replaceProject({ ...demo, name: 'A copy to edit' }, 'copy', 'second');
});

describe('a group of numbers that are an answer only together', () => {
  it('is held until it is complete, then is in the document, in any order', () => {
    put(withPart(FLOAT, 'preload_N', 5));
    put(withPart(FLOAT, 'travel_mm', 0.5));
    expect(selectedValving.value.float).toBeUndefined();
    expect(validateProject(project.value).ok).toBe(true);
    expect(partsOf(FLOAT)).toEqual({ preload_N: 5, travel_mm: 0.5 });
    expect(partsWanted(FLOAT)).toEqual(['rate_N_mm']);
    put(withPart(FLOAT, 'rate_N_mm', 20));
    expect(selectedValving.value.float).toEqual({ travel_mm: 0.5, rate_N_mm: 20, preload_N: 5 });
    expect(partsWanted(FLOAT)).toEqual([]);
  });

  it('leaves the document when a part is emptied, without losing the others; undo brings it back', () => {
    for (const [part, value] of [
      ['travel_mm', 0.5],
      ['rate_N_mm', 20],
      ['preload_N', 5],
    ] as const)
      put(withPart(FLOAT, part, value));
    put(withPart(FLOAT, 'travel_mm', undefined));
    expect('float' in selectedValving.value).toBe(false);
    expect(partsOf(FLOAT)).toEqual({ rate_N_mm: 20, preload_N: 5 });
    undoEdit();
    expect(selectedValving.value.float).toEqual({ travel_mm: 0.5, rate_N_mm: 20, preload_N: 5 });
    for (const part of FLOAT.needs) put(withPart(FLOAT, part, undefined));
    expect(partsOf(FLOAT)).toEqual({});
    expect(partsWanted(FLOAT)).toEqual([]);
  });

  it('refuses a wrong part where it is typed, before the group is complete', () => {
    expect(codeOf(() => withPart(FLOAT, 'travel_mm', -1))).toBeDefined();
    expect(partsOf(FLOAT)).toEqual({});
    expect(codeOf(() => withPart(COIL_SPRING, 'diameter_mm', 1))).toBe('stack.coil-spring.beyond-shim');
    expect(codeOf(() => withPart(notchesOf(1), 'count', 4))).toBe('stack.notches.not-face');
  });

  it('keeps the diameter of a backing plate whose gap is emptied for a while', () => {
    put(withPart(BACKING_PLATE, 'outerDiameter_mm', 20));
    expect(partsWanted(BACKING_PLATE)).toEqual(['gap_mm']);
    put(withPart(BACKING_PLATE, 'gap_mm', 0.4));
    put(withPart(BACKING_PLATE, 'gap_mm', undefined));
    expect(selectedValving.value.backingPlate).toBeUndefined();
    put(withPart(BACKING_PLATE, 'gap_mm', 0.5));
    expect(selectedValving.value.backingPlate).toEqual({ gap_mm: 0.5, outerDiameter_mm: 20 });
    put(withPart(BACKING_PLATE, 'outerDiameter_mm', undefined));
    expect(selectedValving.value.backingPlate).toEqual({ gap_mm: 0.5 });
  });

  it('puts notches in the face shim alone, and takes them out without an empty key', () => {
    put(withValving((valving) => insertRow(valving, 1, sameAgain(valving.shims[0]))));
    put(withPart(notchesOf(0), 'count', 4));
    expect(partsWanted(notchesOf(0))).toEqual(['width_mm']);
    put(withPart(notchesOf(0), 'width_mm', 2));
    expect(selectedValving.value.shims.map((shim) => shim.notches)).toEqual([
      { count: 4, width_mm: 2 },
      ...selectedValving.value.shims.slice(1).map(() => undefined),
    ]);
    expect(validateProject(project.value).ok).toBe(true);
    put(withPart(notchesOf(0), 'count', undefined));
    expect('notches' in selectedValving.value.shims[0]).toBe(false);
  });

  it('is not carried over into another project', () => {
    put(withPart(FLOAT, 'travel_mm', 0.5));
    replaceProject({ ...demo, name: 'Another' }, 'open', 'third');
    expect(partsOf(FLOAT)).toEqual({});
  });
});

describe('an optional part of a row', () => {
  it('goes from its own row only and leaves no empty key', () => {
    const shims = [30, 20].map((outerDiameter_mm) => ({ outerDiameter_mm, thickness_mm: 0.1, dish_mm: 0.05 }));
    const next = withoutRowPart({ clampDiameter_mm: 12, seatHeight_mm: 0, shims }, 1, 'dish_mm');
    expect(next.shims).toEqual([shims[0], { outerDiameter_mm: 20, thickness_mm: 0.1 }]);
    expect(Object.keys(next.shims[1])).not.toContain('dish_mm');
  });
});
