/**
 * Arithmetic with units as a person types it: `0.15+0.1`, `6 thou`, `(3*0.15) mm`, `1/2 in`, `0,15`.
 * mathjs only splits the text into a tree; nothing of it is ever evaluated by mathjs. The walk below knows constants,
 * + - * /, a leading sign, brackets and the unit symbols of the table, and refuses every other node.
 * This file is apart from the formatters so that a page can load the parser when a box is first edited.
 */
import { create, type MathNode, type ParenthesisNode, parseDependencies } from 'mathjs/number';
import { fromSI, toSI } from './convert.ts';
import { DIMENSIONS, type Dimension, NUMBER, product, quotient, sameDimension } from './dimension.ts';
import { InputError, type InputFault } from './fault.ts';
import { symbolOf, type TypedUnit, temperatureSymbolOf } from './typed-units.ts';
import { type Kind, UNITS, type UnitOf } from './unit-table.ts';
import { plainExpression } from './written-text.ts';

const { parse } = create({ parseDependencies });

export type ParsedQuantity =
  | { readonly ok: true; readonly si: number }
  | { readonly ok: false; readonly fault: InputFault };

interface Value {
  readonly si: number;
  readonly dimension: Dimension;
}

interface Reader {
  readonly text: string;
  readonly path: string;
}

function refuse({ text, path }: Reader, code: string, wanted: string): never {
  throw new InputError({ code, path, got: JSON.stringify(text), wanted });
}

const notArithmetic = (reader: Reader): never =>
  refuse(reader, 'units.expression.not-arithmetic', 'numbers and units with + - * / and brackets');

/** Characters of arithmetic with units; the rest cannot be part of any. */
const ARITHMETIC = /^[0-9A-Za-z.+\-*/() ]*$/;
/** A digit that is no part of a word such as mm2. */
const NUMBER_IN = /(?<![A-Za-z\d])\d/;
/** 0x10 and its like are numbers to the parser, but a person who typed them meant something else. */
const OTHER_BASE = /\b0[xob]/i;

function treeOf(plain: string, reader: Reader): MathNode {
  if (!ARITHMETIC.test(plain) || OTHER_BASE.test(plain)) return notArithmetic(reader);
  if (!NUMBER_IN.test(plain)) return refuse(reader, 'units.expression.no-number', 'a number');
  try {
    return parse(plain);
  } catch {
    return refuse(reader, 'units.expression.unfinished', 'a complete number or sum');
  }
}

// The node classes of mathjs, told apart by the name they carry.
const isNode = <Name extends string>(node: MathNode, type: Name): boolean => node.type === type;
type Operator = MathNode & { readonly fn: string; readonly implicit: boolean; readonly args: readonly MathNode[] };
const asOperator = (node: MathNode): Operator | undefined =>
  isNode(node, 'OperatorNode') ? (node as unknown as Operator) : undefined;

function evaluate(node: MathNode, reader: Reader): Value {
  if (isNode(node, 'ParenthesisNode')) return evaluate((node as ParenthesisNode).content, reader);
  if (isNode(node, 'ConstantNode')) return constant((node as MathNode & { value: unknown }).value, reader);
  if (isNode(node, 'SymbolNode')) return unitValue((node as MathNode & { name: string }).name, reader);
  const operator = asOperator(node);
  if (!operator || (operator.implicit && !mayFollowNumber(operator.args[1]))) return notArithmetic(reader);
  return operate(
    operator.fn,
    operator.args.map((argument) => evaluate(argument, reader)),
    reader,
  );
}

/** `3 mm` and `3 (0.1+0.2)` are products; `3 mm 2` is a slip. */
const mayFollowNumber = (node: MathNode): boolean => isNode(node, 'SymbolNode') || isNode(node, 'ParenthesisNode');

const constant = (value: unknown, reader: Reader): Value =>
  typeof value === 'number' ? { si: value, dimension: NUMBER } : notArithmetic(reader);

/** One of a unit; the kind and the symbol come as a pair from the table, which the compiler cannot follow. */
const inSI = (kind: Kind, symbol: string): number => toSI(1, kind, symbol as never);

function unitValue(name: string, reader: Reader): Value {
  const known: TypedUnit | undefined = symbolOf(name);
  if (known) return { si: inSI(known.kind, known.symbol), dimension: DIMENSIONS[known.kind] };
  if (temperatureSymbolOf(name))
    return refuse(reader, 'units.temperature.arithmetic', 'one number and its unit: 25 °C');
  return refuse(reader, 'units.unknown', `a unit other than ${JSON.stringify(name)}`);
}

function operate(fn: string, [a, b]: readonly Value[], reader: Reader): Value {
  switch (fn) {
    case 'unaryMinus':
      return { ...a, si: -a.si };
    case 'unaryPlus':
      return a;
    case 'add':
    case 'subtract':
      if (!sameDimension(a.dimension, b.dimension))
        return refuse(reader, 'units.dimension', 'both sides of + or - of the same kind, each with its unit');
      return { ...a, si: fn === 'add' ? a.si + b.si : a.si - b.si };
    case 'multiply':
      return { si: a.si * b.si, dimension: product(a.dimension, b.dimension) };
    case 'divide':
      return { si: a.si / b.si, dimension: quotient(a.dimension, b.dimension) };
    default:
      return notArithmetic(reader);
  }
}

/** A temperature, or how far two lie apart, is one sum of plain numbers and, at most, one unit behind it: 20 °C + 5 °C has no meaning. */
function temperatureOf(
  node: MathNode,
  kind: 'temperature' | 'temperatureDifference',
  fallback: UnitOf<'temperature'>,
  reader: Reader,
): number {
  const sign = asOperator(node);
  const [first, second] = sign?.args ?? [];
  const symbol =
    sign?.fn === 'multiply' && isNode(second, 'SymbolNode') && (second as MathNode & { name: string }).name;
  const typed = symbol ? temperatureSymbolOf(symbol) : undefined;
  const { si: value, dimension } = evaluate(typed ? first : node, reader);
  if (!sameDimension(dimension, NUMBER)) return refuse(reader, 'units.dimension', 'a temperature, such as 25 °C');
  if (kind === 'temperatureDifference') return toSI<'temperatureDifference'>(value, kind, typed ?? fallback);
  const kelvin = toSI(value, kind, typed ?? fallback);
  if (kelvin < 0) refuse(reader, 'units.temperature.below-absolute-zero', 'at least -273.15 °C');
  return kelvin;
}

function quantityOf<K extends Kind>(plain: string, kind: K, fallback: UnitOf<K>, reader: Reader): number {
  const tree = treeOf(plain, reader);
  if (kind === 'temperature' || kind === 'temperatureDifference')
    return temperatureOf(tree, kind, fallback as UnitOf<'temperature'>, reader);
  const { si, dimension } = evaluate(tree, reader);
  if (sameDimension(dimension, DIMENSIONS[kind])) return si;
  if (sameDimension(dimension, NUMBER)) return toSI(si, kind, fallback);
  return refuse(reader, 'units.dimension', `one of ${Object.keys(UNITS[kind]).join(', ')}`);
}

/**
 * Reads a typed quantity.
 * @param fallback the unit of a text that names none
 * @param path where the text stands, for the fault
 * @returns the SI value, or a fault: `units.expression.*`, `units.unknown`, `units.dimension`, `units.number.*`,
 * `units.temperature.*`
 */
export function parseQuantity<K extends Kind>(
  text: string,
  kind: K,
  fallback: UnitOf<K>,
  path: string = kind,
): ParsedQuantity {
  try {
    const reader = { text, path };
    const si = quantityOf(plainExpression(text, path), kind, fallback, reader);
    if (!Number.isFinite(si)) refuse(reader, 'units.expression.not-finite', 'a finite number');
    return { ok: true, si };
  } catch (error) {
    if (error instanceof InputError) return { ok: false, fault: error.fault };
    throw error;
  }
}

/** Reads a typed quantity into the unit of a document's field, to 12 digits. */
export function parseInto<K extends Kind>(
  text: string,
  kind: K,
  target: UnitOf<K>,
  fallback: UnitOf<K> = target,
  path: string = kind,
): { readonly ok: true; readonly value: number } | { readonly ok: false; readonly fault: InputFault } {
  const parsed = parseQuantity(text, kind, fallback, path);
  return parsed.ok ? { ok: true, value: fromSI(parsed.si, kind, target) } : parsed;
}
