import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromSI, tidy, toSI } from '../../../src/units/convert.ts';
import { parseInto, parseQuantity } from '../../../src/units/expression.ts';
import { isUnitOf, type Kind, UNITS, type UnitOf } from '../../../src/units/unit-table.ts';

const codeOf = <K extends Kind>(text: string, kind: K, unit: UnitOf<K>): string => {
  const parsed = parseQuantity(text, kind, unit, 'field');
  return parsed.ok ? `read as ${parsed.si}` : parsed.fault.code;
};

describe('parseInto', () => {
  it.each<[string, number]>([
    ['0.15', 0.15],
    ['0,15', 0.15],
    [',15', 0.15],
    ['.15', 0.15],
    ['0.15+0.1', 0.25],
    ['0,15 + 0,1', 0.25],
    ['(3*0.15) mm', 0.45],
    ['3 × 0.15', 0.45],
    ['3(0.1+0.2)', 0.9],
    ['6 thou', 0.1524],
    ['0.006 in', 0.1524],
    ['0.006"', 0.1524],
    ['0.006 inch', 0.1524],
    ['1/2 in', 12.7],
    ['0.1 in + 2 mm', 4.54],
    ['2 mm + 0.1 in', 4.54],
    ['150 µm', 0.15],
    ['1.2 cm', 12],
    ['0.03 m', 30],
    ['1 ft', 304.8],
    ['-0.1', -0.1],
    ['−0.1', -0.1],
    ['+0.1', 0.1],
    ['3+-2', 1],
    ['2 - 0.5', 1.5],
    ['5 m/s * 2 s', 10_000],
    ['1.5e-1', 0.15],
    ['0,150', 0.15],
  ])('reads the length %s', (text, expected) => {
    expect(parseInto(text, 'length', 'mm')).toEqual({ ok: true, value: expected });
  });

  // Expected: definitions of the units (inch 25.4 mm, pound 0.45359237 kg, 9.80665 m/s2, 231 in3 a gallon; from memory).
  it.each<[string, Kind, string, number]>([
    ['1 psi', 'pressure', 'Pa', 6894.75729317],
    ['10 bar', 'pressure', 'MPa', 1],
    ['1 kPa', 'pressure', 'Pa', 1000],
    ['1 N/mm2', 'pressure', 'MPa', 1],
    ['1 lbf', 'force', 'N', 4.44822161526],
    ['1 kgf', 'force', 'N', 9.80665],
    ['10 in/s', 'speed', 'm/s', 0.254],
    ['250 mm/s', 'speed', 'm/s', 0.25],
    ['1 ft·lbf', 'torque', 'N·m', 1.35581794833],
    ['1 ft-lb', 'torque', 'N·m', 1.35581794833],
    ['12 in·lbf', 'torque', 'ft·lbf', 1],
    ['10 Nm', 'torque', 'N·m', 10],
    ['1 fl oz', 'volume', 'mL', 29.5735295625],
    ['90 cc', 'volume', 'mL', 90],
    ['0.5 L', 'volume', 'mL', 500],
    ['15 cSt', 'kinematicViscosity', 'mm²/s', 15],
    ['15 mm²/s', 'kinematicViscosity', 'cSt', 15],
    ['1e-5 m²/s', 'kinematicViscosity', 'cSt', 10],
    ['13 cP', 'dynamicViscosity', 'Pa·s', 0.013],
    ['13 mPa·s', 'dynamicViscosity', 'cP', 13],
    ['0.013 Pa·s', 'dynamicViscosity', 'mPa·s', 13],
    ['0.87 g/cm3', 'density', 'kg/m³', 870],
    ['870 kg/m^3', 'density', 'g/cm³', 0.87],
    ['1 lbf/in', 'springRate', 'N/mm', 0.175126835246],
    ['100 lb/in', 'springRate', 'lbf/in', 100],
    ['0.5 kg/mm', 'springRate', 'N/mm', 4.903325],
    ['206 GPa', 'modulus', 'GPa', 206],
    ['60 L/min', 'flow', 'm³/s', 0.001],
    ['12 mm^2', 'area', 'mm²', 12],
    ['150 lb', 'mass', 'kg', 68.0388555],
    ['2 Hz', 'frequency', 'Hz', 2],
    ['3/2 s', 'time', 's', 1.5],
    ['4 N * 3 m', 'energy', 'J', 12],
    ['20 J / 4 s', 'power', 'W', 5],
    ['25 °C', 'temperature', 'K', 298.15],
    ['-40 °F', 'temperature', '°C', -40],
    ['212 degF', 'temperature', '°C', 100],
    ['20+5', 'temperature', '°C', 25],
    ['300 K', 'temperature', '°C', 26.85],
  ])('reads %s as a %s', (text, kind, unit, expected) => {
    if (!isUnitOf(kind, unit)) throw new Error(`${unit} is no unit of ${kind}`);
    const read = parseInto(text, kind, unit as never, (unit === 'K' ? '°C' : unit) as never);
    expect(read.ok && read.value).toBeCloseTo(expected, 8);
  });

  it('takes a number without unit in the fallback unit, and keeps the document unit apart from it', () => {
    expect(parseInto('6', 'length', 'mm', 'thou')).toEqual({ ok: true, value: 0.1524 });
  });
});

describe('what is refused', () => {
  it.each([
    'sqrt(4)',
    'f(1)',
    'f(x) = x',
    'mm(3)',
    'import("x")',
    'import({a: 1})',
    'evaluate("1")',
    'createUnit("foo 3")',
    'x = 1',
    'mm = 1',
    'a.b 1',
    'mm.constructor 1',
    '5 __proto__',
    'mm["constructor"] + 1',
    '(1)[1]',
    '[1, 2]',
    '{a: 1}',
    '"1"',
    "'1'",
    '1:3',
    '1; 2',
    '1\n2',
    '2^3',
    '2^3^9999',
    '5!',
    '5%',
    '5 % 2',
    '5 mod 2',
    '5 to mm',
    '5 mm to m',
    'not 5',
    '5 and 3',
    '1 == 1',
    '1 > 0',
    '1 ? 2 : 3',
    '~5',
    '5 | 3',
    '1 << 3',
    "5'",
    '3 mm 2',
    '0x15',
    '0b11',
    '1 # comment',
    '1 .* 2',
    'process.exit(1)',
    '$5',
    '5 & 1',
    '1`',
    'constructor.constructor("return 1")()',
  ])('%s is not arithmetic', (text) => {
    expect(codeOf(text, 'length', 'mm')).toBe('units.expression.not-arithmetic');
  });

  it.each(['5 constructor', '5 toString', '5 furlong', '5 pi', '2 e', '2 i', '5 import', '5 mPa'])(
    '%s has no known unit',
    (text) => {
      expect(codeOf(text, 'length', 'mm')).toBe('units.unknown');
    },
  );

  it.each<[string, Kind, string, string]>([
    ['5 psi', 'length', 'mm', 'units.dimension'],
    ['5 mm', 'pressure', 'bar', 'units.dimension'],
    ['5 kg', 'force', 'N', 'units.dimension'],
    ['5 mm + 1 s', 'length', 'mm', 'units.dimension'],
    ['5 mm + 1', 'length', 'mm', 'units.dimension'],
    ['5 mm * 2 mm', 'length', 'mm', 'units.dimension'],
    ['25 mm', 'temperature', '°C', 'units.dimension'],
    ['20 °C + 5 °C', 'temperature', '°C', 'units.temperature.arithmetic'],
    ['20 °C', 'length', 'mm', 'units.temperature.arithmetic'],
    ['-300 °C', 'temperature', '°C', 'units.temperature.below-absolute-zero'],
    ['-1', 'temperature', 'K', 'units.temperature.below-absolute-zero'],
    ['', 'length', 'mm', 'units.expression.empty'],
    ['   ', 'length', 'mm', 'units.expression.empty'],
    ['mm', 'length', 'mm', 'units.expression.no-number'],
    ['in', 'length', 'mm', 'units.expression.no-number'],
    ['mm2', 'area', 'mm²', 'units.expression.no-number'],
    ['NaN', 'length', 'mm', 'units.expression.no-number'],
    ['Infinity', 'length', 'mm', 'units.expression.no-number'],
    ['NaN + 1', 'length', 'mm', 'units.expression.not-finite'],
    ['1/0', 'length', 'mm', 'units.expression.not-finite'],
    ['0/0 mm', 'length', 'mm', 'units.expression.not-finite'],
    ['1e400', 'length', 'mm', 'units.expression.not-finite'],
    ['3 +', 'length', 'mm', 'units.expression.unfinished'],
    ['1 .constructor', 'length', 'mm', 'units.expression.unfinished'],
    ['(3', 'length', 'mm', 'units.expression.unfinished'],
    ['0.15.2', 'length', 'mm', 'units.expression.unfinished'],
    ['1,500', 'force', 'N', 'units.number.ambiguous-comma'],
    ['1,234,567', 'force', 'N', 'units.number.ambiguous-comma'],
    ['('.repeat(200), 'length', 'mm', 'units.expression.too-long'],
    [`1${' '.repeat(5_000_000)}`, 'length', 'mm', 'units.expression.too-long'],
  ])('%.40s as %s is refused', (text, kind, unit, code) => {
    expect(codeOf(text, kind, unit as never)).toBe(code);
  });

  it('says what, where, got and wanted', () => {
    expect(parseQuantity('5 psi', 'length', 'mm', 'shims[1].thickness_mm')).toEqual({
      ok: false,
      fault: {
        code: 'units.dimension',
        path: 'shims[1].thickness_mm',
        got: '"5 psi"',
        wanted: 'one of mm, in, thou, m, cm, µm, ft',
      },
    });
  });

  it('never throws and never gives a number that is none (property)', () => {
    const word = fc.constantFrom(
      'mm',
      'in',
      '(',
      ')',
      '+',
      '-',
      '*',
      '/',
      '.',
      ',',
      '1',
      '0.15',
      'x',
      '"',
      '^',
      ':',
      '=',
    );
    const soup = fc.array(word, { maxLength: 20 }).map((words) => words.join(' '));
    fc.assert(
      fc.property(fc.oneof(soup, fc.string({ unit: 'binary', maxLength: 130 })), (text) => {
        const parsed = parseQuantity(text, 'length', 'mm');
        expect(parsed.ok ? Number.isFinite(parsed.si) : parsed.fault.code.startsWith('units.')).toBe(true);
      }),
    );
  });
});

describe('every unit of the table', () => {
  const all = Object.entries(UNITS).flatMap(([kind, units]) => Object.keys(units).map((unit) => [kind, unit] as const));

  it.each(all)('%s in %s reads what it writes (property)', (kind, unit) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (digits) => {
        const value = digits / 100;
        const read = parseInto(`${value} ${unit}`, kind as Kind, unit as never);
        expect(read).toEqual({ ok: true, value });
        expect(fromSI(toSI(value, kind as Kind, unit as never), kind as Kind, unit as never)).toBe(tidy(value));
      }),
    );
  });
});
