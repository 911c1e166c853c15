import { describe, expect, it } from 'vitest';
import type { Project, Valving } from '../../../../src/model/project.ts';
import {
  changeRow,
  changeValving,
  duplicateBuild,
  insertRow,
  moveRow,
  removeBuild,
  removeRow,
  sameAgain,
} from '../../../../src/ui/app/edits.ts';

const valving: Valving = {
  clampDiameter_mm: 12,
  seatHeight_mm: 0,
  shims: [30, 24, 18].map((outerDiameter_mm) => ({ outerDiameter_mm, thickness_mm: 0.15, count: 1 })),
};
const diameters = (v: Valving): number[] => v.shims.map((shim) => shim.outerDiameter_mm);

const build = (id: string, name: string) => ({
  id,
  name,
  notes: 'why',
  bleed: { count: 0, diameter_mm: 1, length_mm: 1 },
  valves: { pistonCompression: valving, pistonRebound: valving },
});
const project = {
  builds: [build('a', 'Stock'), build('b', 'Revalve')],
  baselineBuild: 'a',
} as unknown as Project;

describe('sameAgain', () => {
  it('is the same shim once, ring and dish too, without the notches that only a face shim can have', () => {
    const features = { outerDiameter_mm: 30, thickness_mm: 0.1, innerDiameter_mm: 20, dish_mm: 0.05 };
    expect(sameAgain({ ...features, count: 3, notches: { count: 4, width_mm: 2 } })).toEqual({ ...features, count: 1 });
  });
});

describe('edits of a stack', () => {
  it('leave the stack they came from as it was', () => {
    const before = JSON.stringify(valving);
    moveRow(valving, 0, 2);
    changeRow(valving, 0, { thickness_mm: 1 });
    insertRow(valving, 1, valving.shims[0]);
    removeRow(valving, 0);
    expect(JSON.stringify(valving)).toBe(before);
  });

  it('move, insert, remove', () => {
    expect(diameters(moveRow(valving, 0, 2))).toEqual([24, 18, 30]);
    expect(diameters(moveRow(valving, 2, 0))).toEqual([18, 30, 24]);
    expect(moveRow(valving, 0, 3)).toBe(valving);
    expect(moveRow(valving, 0, -1)).toBe(valving);
    expect(diameters(insertRow(valving, 1, valving.shims[2]))).toEqual([30, 18, 24, 18]);
    expect(diameters(removeRow(valving, 1))).toEqual([30, 18]);
  });

  it('reach one valve of one build only', () => {
    const next = changeValving(project, 'b', 'pistonRebound', (v) => removeRow(v, 0));
    expect(next.builds[0]).toBe(project.builds[0]);
    expect(next.builds[1].valves.pistonCompression).toBe(valving);
    expect(diameters(next.builds[1].valves.pistonRebound)).toEqual([24, 18]);
  });
});

describe('edits of builds', () => {
  it('a copy stands behind its original, with a name and an id of its own', () => {
    const [once, firstId] = duplicateBuild(project, 'a', (name) => `${name} copy`);
    const [twice, secondId] = duplicateBuild(once, 'a', (name) => `${name} copy`);
    expect(once.builds.map((b) => b.name)).toEqual(['Stock', 'Stock copy', 'Revalve']);
    expect(twice.builds.map((b) => b.name)).toEqual(['Stock', 'Stock copy 2', 'Stock copy', 'Revalve']);
    expect(new Set(twice.builds.map((b) => b.id)).size).toBe(4);
    expect(secondId).not.toBe(firstId);
  });

  it('deleting the baseline makes another build the baseline; the last build stays', () => {
    const left = removeBuild(project, 'a');
    expect(left.builds.map((b) => b.id)).toEqual(['b']);
    expect(left.baselineBuild).toBe('b');
    expect(removeBuild(left, 'b')).toBe(left);
  });
});
