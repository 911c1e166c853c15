import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../src/model/project.ts';
import type { ReadoutGroup } from '../../../../src/ui/charts/readout-group.ts';
import { exportName } from '../../../../src/ui/export/file-name.ts';
import { forClipboard, forFile, readingRows } from '../../../../src/ui/export/readings-table.ts';
import { point } from './points.ts';

const build = (id: string, name: string): Build => ({ id, name, notes: '', valves: {} }) as unknown as Build;

const groups: ReadoutGroup[] = [
  {
    id: 'force',
    rows: [
      { id: 'force', name: 'Force, N', cell: ({ point: p }) => `${p.force_N}`.replace('-', '−') },
      { id: 'none', name: 'Stress, MPa', cell: () => '–' },
      {
        id: 'yield',
        name: 'Yield reserve',
        cell: () => '0.80',
        note: ({ isBaseline }) => (isBaseline ? undefined : 'will take a set'),
      },
      { id: 'never', name: 'Stop, N', cell: () => '1', when: () => false },
    ],
  },
  { id: 'base', title: 'Base valve', rows: [{ id: 'drop', name: 'Drop, bar', cell: () => '2.5' }] },
  { id: 'empty', title: 'Nothing here', rows: [{ id: 'x', name: 'x', cell: () => 'x', when: () => false }] },
];

describe('the readout as a table', () => {
  const readings = [
    { build: build('a', 'Stock'), point: point(-1), isBaseline: true, stale: false },
    { build: build('b', 'Custom'), point: point(-2), isBaseline: false, stale: true },
    { build: build('c', 'Lost'), isBaseline: false, stale: false },
  ];
  const rows = readingRows(
    'Trail rear · At 1.00 m/s',
    [{ name: 'Rebound', readings, groups }],
    ['Estimates.'],
    forClipboard,
  );

  it('has the rows of the page, numbers that a spreadsheet can read, builds side by side', () => {
    expect(rows).toEqual([
      ['Trail rear · At 1.00 m/s'],
      ['Rebound', 'Stock', 'Custom (as last solved)', 'Lost'],
      ['Force, N', '-1000', '-2000', 'not solved'],
      ['Stress, MPa', '', '', 'not solved'],
      ['Yield reserve', '0.80', '0.80: will take a set', 'not solved'],
      ['Base valve'],
      ['Drop, bar', '2.5', '2.5', 'not solved'],
      ['Estimates.'],
    ]);
  });
});

describe('names of exported files', () => {
  it.each([
    ['Trail rear', 'oil paths', 'svg', 'trail-rear-oil-paths.svg'],
    ['', 'force', 'png', 'project-force.png'],
    ['../../x', 'curve <b>', 'csv', 'x-curve-b.csv'],
  ])('%j, %j, %j', (project, what, ending, name) => expect(exportName(project, what, ending)).toBe(name));
});

describe('a cell of the page', () => {
  it('is pasted in the sign of the reader, and filed with a point', () => {
    expect(['−12,5', '–', '1,5 to −2,25'].map(forClipboard)).toEqual(['-12,5', '', '1,5 to -2,25']);
    expect(['−12,5', '–', '1,5 to −2,25', '0.5'].map(forFile)).toEqual(['-12.5', '', '1.5 to -2.25', '0.5']);
  });
});
