import { describe, expect, it } from 'vitest';
import { pickingList } from '../../../src/model/picking-list.ts';

const row = (outerDiameter_mm: number, thickness_mm: number, count: number) => ({
  outerDiameter_mm,
  thickness_mm,
  count,
});

describe('the picking list', () => {
  it('takes what lies in the stacks first, then the drawer, and tells what is missing', () => {
    const wanted = [row(30, 0.15, 3), row(16, 0.1, 1), row(30, 0.15, 1), row(28, 0.2, 2)];
    const present = [row(30, 0.15, 2), row(28, 0.2, 5)];
    const drawer = [row(30, 0.15, 1), { ...row(30, 0.15, 0), innerDiameter_mm: 12 }, row(16, 0.1, 6)];
    expect(pickingList(wanted, present, drawer)).toEqual([
      { outerDiameter_mm: 30, thickness_mm: 0.15, needed: 4, fromStacks: 2, fromDrawer: 1, missing: 1 },
      { outerDiameter_mm: 28, thickness_mm: 0.2, needed: 2, fromStacks: 2, fromDrawer: 0, missing: 0 },
      { outerDiameter_mm: 16, thickness_mm: 0.1, needed: 1, fromStacks: 0, fromDrawer: 1, missing: 0 },
    ]);
  });

  it('counts shims of one size together, whatever their bores', () => {
    const drawer = [row(30, 0.15, 1), { ...row(30, 0.15, 2), innerDiameter_mm: 12 }];
    expect(pickingList([row(30, 0.15, 3)], [], drawer)[0]).toMatchObject({ fromDrawer: 3, missing: 0 });
  });
});
