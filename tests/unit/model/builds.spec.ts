import { describe, expect, it } from 'vitest';
import { expandShims } from '../../../src/model/expand-shims.ts';
import { idFor, newBuildFrom } from '../../../src/model/new-build.ts';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject } from '../../helpers/documents.ts';

describe('expandShims', () => {
  it('lists the single shims, piston side first', () => {
    const rows = [
      { outerDiameter_mm: 30, thickness_mm: 0.15, count: 2 },
      { outerDiameter_mm: 16, thickness_mm: 0.1 },
    ];
    const face = { outerDiameter_mm: 30, thickness_mm: 0.15 };
    expect(expandShims(rows)).toEqual([face, face, { outerDiameter_mm: 16, thickness_mm: 0.1 }]);
  });

  it.each([
    [0, 0],
    [-3, 0],
    [Number.NaN, 0],
    [1e9, 200],
  ])('stays small for the refused count %s', (count, length) => {
    expect(expandShims([{ outerDiameter_mm: 30, thickness_mm: 0.15, count }])).toHaveLength(length);
  });
});

describe('newBuildFrom', () => {
  it('copies deeply under a new name and id, unknown fields too', () => {
    const [first] = soundProject().builds;
    const old = { ...first, notes: 'as it came', ofLater: { kept: true } };
    const copy = newBuildFrom(old, 'Softer rebound', [old.id]);
    expect(copy).toEqual({ ...old, id: 'softer-rebound', name: 'Softer rebound', notes: '' });
    copy.valves.pistonRebound.shims[0].thickness_mm = 9;
    expect(old.valves.pistonRebound.shims[0].thickness_mm).toBe(0.2);
  });
});

describe('idFor', () => {
  it.each([
    ['Softer rebound, 2nd try', [], 'softer-rebound-2nd-try'],
    ['Für Ötzi', [], 'fur-otzi'],
    ['  --  ', [], 'build'],
    ['', ['build'], 'build-2'],
    ['Stock', ['stock', 'stock-2'], 'stock-3'],
  ])('turns %j with %j taken into %s', (name, taken, id) => {
    expect(idFor(name, taken)).toBe(id);
  });
});

it('of a file may have no notes, which are empty then', () => {
  const { notes: _, ...bare } = soundProject().builds[0];
  const read = validateProject({ ...soundProject(), builds: [bare] });
  expect(read).toMatchObject({ ok: true, document: { builds: [{ ...bare, notes: '' }] } });
});
