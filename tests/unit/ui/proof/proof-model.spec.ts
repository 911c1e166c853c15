import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  ALL,
  filterReports,
  groupByField,
  isOutside,
  kindsOf,
  NO_FILTER,
  notesOf,
  quantitiesOutside,
  readName,
  reflow,
  tolerancesOf,
  totalsOf,
  worstOf,
} from '../../../../src/ui/proof/proof-model.ts';
import { judged, outside, quantity, run, unreadable } from './planted-reports.ts';

const folders = (reports: readonly { folder: string }[]) => reports.map(({ folder }) => folder);

describe('totals', () => {
  it('count cases, quantities and what is outside, a spoilt case among them', () => {
    const { cases, casesOutside, unreadable: spoilt, quantities, quantitiesOutside: out } = totalsOf(run);
    expect({ cases, casesOutside, spoilt, quantities, out }).toEqual({
      cases: 5,
      casesOutside: 3,
      spoilt: 1,
      quantities: 7,
      out: 3,
    });
  });

  it('name the quantity that uses most of its tolerance; nothing computed is worse than any deviation', () => {
    expect(totalsOf(run.slice(0, 3)).worst).toMatchObject({ report: { folder: 'plate/b' }, quantity: outside });
    expect(totalsOf(run).worst?.report.folder).toBe('gas/d');
    expect(worstOf(judged({ quantities: [quantity({ share: 0.2 }), quantity({ share: 0.7, name: 'x' })] })).name).toBe(
      'x',
    );
  });

  it('of nothing, or of a spoilt case alone, have no worst', () => {
    expect(totalsOf([])).toEqual({ cases: 0, casesOutside: 0, unreadable: 0, quantities: 0, quantitiesOutside: 0 });
    expect(totalsOf([unreadable]).worst).toBeUndefined();
  });
});

describe('a report', () => {
  it('is outside when one quantity is, when it failed, and when it could not be read', () => {
    expect(run.map(isOutside)).toEqual([false, true, false, true, true]);
    expect(run.map(quantitiesOutside)).toEqual([0, 1, 0, 0, 2]);
  });

  it('has its tolerances with how many quantities each is granted', () => {
    const report = judged({ quantities: [quantity(), quantity({ tolerance: 'tight' }), quantity()] });
    expect(tolerancesOf(report).map(({ name, quantities }) => [name, quantities])).toEqual([
      ['wide', 2],
      ['tight', 1],
    ]);
  });

  it('has each note once, in order', () => {
    const quantities = ['beyond', undefined, 'slip', 'beyond'].map((note) => quantity({ note }));
    expect(notesOf(judged({ quantities }))).toEqual(['beyond', 'slip']);
  });
});

describe('choosing', () => {
  it.each([
    ['all', {}, ['plate/a', 'plate/b', 'stack/c', 'gas/spoilt', 'gas/d']],
    ['a field', { field: 'plate' }, ['plate/a', 'plate/b']],
    ['a kind, and spoilt cases, whose kind nobody knows', { kind: 'exact' }, ['plate/a', 'gas/spoilt', 'gas/d']],
    ['those outside', { onlyOutside: true }, ['plate/b', 'gas/spoilt', 'gas/d']],
    ['all three at once', { field: 'plate', kind: 'printed', onlyOutside: true }, ['plate/b']],
    ['what does not occur', { field: 'plate', kind: 'own' }, []],
  ] as const)('%s', (_, part, expected) => {
    expect(folders(filterReports(run, { ...NO_FILTER, ...part }))).toEqual(expected);
  });

  it('offers the kinds that occur, in the order given', () => {
    expect(kindsOf(run, ['own', 'curve', 'exact', 'printed'])).toEqual(['own', 'exact', 'printed']);
    expect(NO_FILTER.kind).toBe(ALL);
  });

  it('groups by field in the order of the run', () => {
    expect(groupByField(run).map(({ field, reports }) => [field, reports.length])).toEqual([
      ['plate', 2],
      ['stack', 1],
      ['gas', 2],
    ]);
  });
});

describe('words of the cases', () => {
  it.each([
    ['0.04 MPa shim 1 clampStress', '0.04 MPa shim 1 clamp stress'],
    ['1.2 MPa largestClampStress', '1.2 MPa largest clamp stress'],
    ['n 1.4 stroke 20 mm force', 'n 1.4 stroke 20 mm force'],
    ['3 kPa faceEdgeLift', '3 kPa face edge lift'],
  ])('%s', (name, words) => expect(readName(name)).toBe(words));

  it('let a paragraph wrap by itself and keep lists, tables and headings on their lines', () => {
    expect(reflow('# Title\n\nOne line\nand the next.\n- first\n- second\n\n| a | b |\n| 1 | 2 |\n')).toBe(
      '# Title\n\nOne line and the next.\n- first\n- second\n\n| a | b |\n| 1 | 2 |',
    );
    const source = readFileSync('reference-cases/stack/fem-two-stage-large/SOURCE.md', 'utf8');
    expect(reflow(source).replace(/\s+/g, ' ')).toBe(source.trim().replace(/\s+/g, ' '));
  });
});
