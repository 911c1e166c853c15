import { describe, expect, it } from 'vitest';
import { addShims, drawerCsv, readDrawerCsv } from '../../../src/model/drawer-csv.ts';

const DRAWER = [
  { outerDiameter_mm: 30, thickness_mm: 0.15, count: 12 },
  { outerDiameter_mm: 30, thickness_mm: 0.15, count: 4, innerDiameter_mm: 12 },
  { outerDiameter_mm: 16, thickness_mm: 0.1, count: 0 },
];

describe('the drawer as a table', () => {
  it('goes out with units in its header, and comes back the same', () => {
    const written = drawerCsv(DRAWER);
    expect(written).toBe(
      'outerDiameter [mm],thickness [mm],count,bore [mm]\r\n30,0.15,12,\r\n30,0.15,4,12\r\n16,0.1,0,\r\n',
    );
    expect(readDrawerCsv(written)).toEqual({ drawer: DRAWER, faults: [] });
  });

  it('is read in other units, in any order, with a decimal comma where a semicolon separates', () => {
    const written = '\uFEFFcount;Thickness (thou);outerDiameter [in];note\n3;8;1,5;spare\n\n2;4;0,5;\n';
    expect(readDrawerCsv(written)).toEqual({
      // 1 in is 25.4 mm exactly, 1 thou a thousandth of it.
      drawer: [
        { outerDiameter_mm: 38.1, thickness_mm: 0.2032, count: 3 },
        { outerDiameter_mm: 12.7, thickness_mm: 0.1016, count: 2 },
      ],
      faults: [],
    });
  });

  it('counts a size that comes twice together', () => {
    const written = 'outerDiameter [mm],thickness [mm],count\n30,0.15,2\n30,0.15,5\n';
    expect(readDrawerCsv(written).drawer).toEqual([{ outerDiameter_mm: 30, thickness_mm: 0.15, count: 7 }]);
  });

  it.each([
    ['no header', '30,0.15,2\n', 'drawer.csv.header', 'line 1'],
    ['nothing', '', 'drawer.csv.header', 'line 1'],
    ['a header without units', 'outerDiameter,thickness,count\n30,0.15,2\n', 'drawer.csv.header', 'line 1'],
    ['a unit nobody knows', 'outerDiameter [ell],thickness [mm],count\n1,0.1,2\n', 'drawer.csv.header', 'line 1'],
    ['half a shim', 'outerDiameter [mm],thickness [mm],count\n30,0.1,1\n30,0.15,1.5\n', 'drawer.csv.number', 'line 3'],
    ['no thickness', 'outerDiameter [mm],thickness [mm],count\n\n30,,1\n', 'drawer.csv.number', 'line 3'],
    [
      'a bore that is none',
      'outerDiameter [mm],thickness [mm],count,bore [mm]\n30,0.1,1,x\n',
      'drawer.csv.number',
      'line 2',
    ],
  ])('says what is wrong and where: %s', (_, written, code, path) => {
    const { faults } = readDrawerCsv(written);
    expect(faults).toEqual([expect.objectContaining({ code, path })]);
  });
});

describe('adding to the drawer', () => {
  it('makes more of a size that is there, and keeps bores apart', () => {
    const more = addShims(DRAWER, [
      { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 },
      { outerDiameter_mm: 28, thickness_mm: 0.15, count: 1 },
    ]);
    expect(more.map(({ count }) => count)).toEqual([15, 4, 0, 1]);
    expect(more[3].outerDiameter_mm).toBe(28);
  });
});
