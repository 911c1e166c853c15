import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluated, failed } from '../../../src/proof/evaluator.ts';
import { type CaseTexts, type JudgedCase, reportOn } from '../../../src/proof/report.ts';
import { InputError } from '../../../src/units/fault.ts';

const FOLDER = 'hydraulics/sharp-orifice';
const file = (name: string) => readFileSync(`reference-cases/${FOLDER}/${name}`, 'utf8');
const texts: CaseTexts = {
  folder: FOLDER,
  case: file('case.json'),
  expected: file('expected.json'),
  source: file('SOURCE.md'),
};
const judged = (...args: Parameters<typeof reportOn>): JudgedCase => {
  const report = reportOn(...args);
  if (report.status !== 'judged') throw new Error(report.reason);
  return report;
};

describe('a case that stands as stored', () => {
  it('carries its title, kind, source, tolerances and verdicts', () => {
    const report = judged(texts);
    expect(report).toMatchObject({ folder: FOLDER, kind: 'exact', passed: true, source: texts.source });
    expect(report.failure).toBeUndefined();
    // Jet of 2 mm and 1 MPa, 0.7 π/4 d² √(2Δp/ρ), and Sampson's creeping hole, d³Δp/(24 μ): the digits of SOURCE.md.
    expect(report.quantities.map(({ name, expected, unit, tolerance }) => [name, expected, unit, tolerance])).toEqual([
      ['jet flow', 0.0001060507, 'm³/s', 'digits'],
      ['creeping flow', 3.229974e-6, 'm³/s', 'digits'],
    ]);
    for (const { share, passed } of report.quantities) expect([share > 0 && share < 1, passed]).toEqual([true, true]);
  });

  it('carries the note of a quantity that has one', () => {
    const expected = JSON.parse(texts.expected as string);
    expected.quantities['jet flow'].note = 'a planted note';
    const notes = judged({ ...texts, expected: JSON.stringify(expected) }).quantities.map(({ note }) => note);
    expect(notes).toEqual(['a planted note', undefined]);
  });
});

describe('a planted bad case', () => {
  it('with another expected value is outside at that value alone', () => {
    const moved = texts.expected?.replace('0.0001060507', '0.0001071') as string;
    const report = judged({ ...texts, expected: moved });
    expect(report.passed).toBe(false);
    expect(report.quantities.map(({ passed }) => passed)).toEqual([false, true]);
    // (0.0001071 - 0.0001060507) / 0.0001071 over a tolerance of 1e-6, by hand.
    expect(report.quantities[0].share).toBeCloseTo(9797, -2);
  });

  it.each([
    ['fails', () => failed('no root in the bracket'), 'no root in the bracket'],
    [
      'throws a fault of input',
      () => {
        throw new InputError({ code: 'x', path: 'rows[0]', got: '-1', wanted: 'more than 0', unit: 'mm' });
      },
      'rows[0]: got -1 mm, wanted more than 0 mm [x]',
    ],
    [
      'throws anything',
      () => {
        throw 'only text';
      },
      'only text',
    ],
  ])('that %s has its reason, and every quantity outside', (_, evaluate, reason) => {
    const report = judged(texts, evaluate as () => never);
    expect(report).toMatchObject({ passed: false, failure: reason });
    expect(report.quantities.map(({ computed, share, passed }) => [computed, share, passed])).toEqual([
      [undefined, Number.POSITIVE_INFINITY, false],
      [undefined, Number.POSITIVE_INFINITY, false],
    ]);
  });

  it('whose number is none is outside without bound', () => {
    const report = judged(texts, () => evaluated({ 'jet flow': Number.NaN, 'creeping flow': 3.229974e-6 }));
    expect(report.quantities.map(({ share, passed }) => [share, passed])).toEqual([
      [Number.POSITIVE_INFINITY, false],
      [0, true],
    ]);
  });

  it.each<[string, Partial<CaseTexts>, RegExp]>([
    ['a missing case', { case: undefined }, /^case\.json is missing$/],
    ['missing values', { expected: undefined }, /^expected\.json is missing$/],
    ['a missing source', { source: undefined }, /^SOURCE\.md is missing$/],
    ['half a file', { expected: '{"tolerances"' }, /JSON/],
    ['a field that is none', { case: '{}' }, /proof\.case\.shape/],
    ['another folder', { folder: 'plate/sharp-orifice' }, /^the folder is plate\/sharp-orifice, the case says hydr/],
  ])('with %s is reported as unreadable', (_, spoilt, reason) => {
    const report = reportOn({ ...texts, ...spoilt });
    expect(report).toMatchObject({ status: 'unreadable', folder: spoilt.folder ?? FOLDER });
    expect(report.status === 'unreadable' && report.reason).toMatch(reason);
  });
});
