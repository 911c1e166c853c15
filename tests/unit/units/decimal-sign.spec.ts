import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DecimalSign, decimalSignOf, withDecimalPoints, withSign } from '../../../src/units/decimal-sign.ts';
import { InputError } from '../../../src/units/fault.ts';

function read(text: string, own: DecimalSign): string {
  try {
    return withDecimalPoints(text, own, 'field');
  } catch (error) {
    if (error instanceof InputError) return `${error.fault.code}: ${error.fault.wanted}`;
    throw error;
  }
}

describe('a typed number', () => {
  it.each<[string, string, string]>([
    // As typed, as read where numbers have a point, and where they have a comma.
    ['0.15', '0.15', '0.15'],
    ['0,15', '0.15', '0.15'],
    [',15', '.15', '.15'],
    ['12,5', '12.5', '12.5'],
    ['0,150', '0.150', '0.150'],
    ['1234', '1234', '1234'],
    ['1.234,5', '1234.5', '1234.5'],
    ['1,234.5', '1234.5', '1234.5'],
    ['1.234.567,8', '1234567.8', '1234567.8'],
    ['0,15+0.1 mm', '0.15+0.1 mm', '0.15+0.1 mm'],
    ['2*1,5', '2*1.5', '2*1.5'],
    ['5,', '5.', '5.'],
    // One sign before exactly three digits: the reader's own sign is a decimal sign, the other could be either.
    ['1,234', 'units.number.ambiguous-comma: 1.234 or 1234, which could both be meant', '1.234'],
    ['1.234', '1.234', 'units.number.ambiguous-point: 1,234 or 1234, which could both be meant'],
    ['1,234,567', 'units.number.ambiguous-comma: 1234567', 'units.number.ambiguous-comma: 1234567'],
    ['1,5.2', 'units.number.signs: one decimal sign: 1234.5', 'units.number.signs: one decimal sign: 1234,5'],
  ])('%s', (typed, withPoint, withComma) => {
    expect(read(typed, '.')).toBe(withPoint);
    expect(read(typed, ',')).toBe(withComma);
  });

  it('is read as it was shown, in either sign', () => {
    const any = fc.double({ min: -99_999, max: 99_999, noNaN: true }).map((n) => Number(n.toPrecision(6)));
    fc.assert(
      fc.property(any, fc.constantFrom<DecimalSign>('.', ','), (value, sign) => {
        fc.pre(!String(value).includes('e'));
        expect(Number(withDecimalPoints(withSign(String(value), sign), sign, 'field'))).toBe(value);
      }),
    );
  });
});

describe('the sign of a locale', () => {
  // CLDR 44, numbers/symbols/decimal: from memory.
  it.each<[string, DecimalSign]>([
    ['en', '.'],
    ['de', ','],
    ['fr', ','],
    ['pt-BR', ','],
    ['de-CH', '.'],
    ['ja', '.'],
  ])('%s', (locale, sign) => expect(decimalSignOf(locale)).toBe(sign));
});
