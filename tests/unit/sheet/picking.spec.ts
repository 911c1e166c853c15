import { describe, expect, it } from 'vitest';
import type { Build, DrawerShim, ShimRow } from '../../../src/model/project.ts';
import { pickingList } from '../../../src/sheet/picking.ts';
import { soundProject } from '../../helpers/documents.ts';

function buildOf(compression: ShimRow[], rebound: ShimRow[] = []): Build {
  const valving = (shims: ShimRow[]) => ({ clampDiameter_mm: 12, seatHeight_mm: 0, shims });
  const valves = { pistonCompression: valving(compression), pistonRebound: valving(rebound) };
  return { ...soundProject().builds[0], valves };
}

const shim = (outerDiameter_mm: number, thickness_mm: number, more: Partial<ShimRow> = {}): ShimRow => ({
  ...{ outerDiameter_mm, thickness_mm },
  ...more,
});

const inDrawer = (
  outerDiameter_mm: number,
  thickness_mm: number,
  count: number,
  innerDiameter_mm?: number,
): DrawerShim => ({
  ...{ outerDiameter_mm, thickness_mm, count },
  ...(innerDiameter_mm !== undefined && { innerDiameter_mm }),
});

const NOTHING = buildOf([]);

describe('the picking list', () => {
  it('adds up a size over all stacks and says what the drawer has and lacks', () => {
    const build = buildOf([shim(30, 0.15, { count: 3 }), shim(18, 0.1)], [shim(30, 0.15, { count: 2 }), shim(30, 0.2)]);
    const list = pickingList(build, NOTHING, [inDrawer(30, 0.15, 4), inDrawer(18, 0.1, 9)]);
    expect(
      list.map((pick) => [pick.outerDiameter_mm, pick.thickness_mm, pick.needed, pick.inDrawer, pick.missing]),
    ).toEqual([
      [30, 0.2, 1, 0, 1],
      [30, 0.15, 5, 4, 1],
      [18, 0.1, 1, 9, 0],
    ]);
  });

  it('says which of them lie in the baseline', () => {
    const baseline = buildOf([shim(30, 0.15, { count: 2 })], [shim(30, 0.15)]);
    expect(pickingList(buildOf([shim(30, 0.15, { count: 4 })]), baseline, [])).toMatchObject([
      { inBaseline: 3, missing: 4 },
    ]);
    expect(pickingList(buildOf([shim(30, 0.2)]), baseline, [])).toMatchObject([{ inBaseline: 0 }]);
  });

  it('takes a ring for a shim of the shaft in neither direction', () => {
    const drawer = [inDrawer(24, 0.3, 5, 20), inDrawer(24, 0.3, 2, 10), inDrawer(24, 0.3, 1)];
    const ring = buildOf([shim(24, 0.3, { innerDiameter_mm: 20 })]);
    expect(pickingList(ring, NOTHING, drawer)).toMatchObject([{ inDrawer: 5, innerDiameter_mm: 20 }]);
    // Bore 10 is below the clamp of 12: it may fit the shaft; without a bore it is taken to.
    expect(pickingList(buildOf([shim(24, 0.3)]), NOTHING, drawer)).toMatchObject([{ inDrawer: 3 }]);
  });

  it('says of which bores those in the drawer are, where any is written down', () => {
    const boresIn = (...drawer: DrawerShim[]) => pickingList(buildOf([shim(24, 0.3)]), NOTHING, drawer)[0].bores;
    expect(
      boresIn(inDrawer(24, 0.3, 4, 20), inDrawer(24, 0.3, 1), inDrawer(24, 0.3, 2, 10), inDrawer(24, 0.3, 3, 8)),
    ).toEqual([{ innerDiameter_mm: 8, count: 3 }, { innerDiameter_mm: 10, count: 2 }, { count: 1 }]);
    expect(boresIn(inDrawer(24, 0.3, 5))).toEqual([]);
  });

  it('finds no dished, notched or other metal among plain sizes', () => {
    const material = { youngsModulus_GPa: 110, poissonsRatio: 0.34 };
    for (const extra of [{ dish_mm: 0.1 }, { notches: { count: 2, width_mm: 2 } }, { material }]) {
      const list = pickingList(buildOf([shim(30, 0.15, extra), shim(30, 0.15)]), NOTHING, [inDrawer(30, 0.15, 8)]);
      expect(list.map((pick) => [pick.isSpecial, pick.inDrawer, pick.missing])).toEqual([
        [true, 0, 1],
        [false, 8, 0],
      ]);
    }
  });
});
