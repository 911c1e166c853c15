/** Splits one written shim, such as `30x.15 (3)` or `2- 24 × 0,2`, into numbers that know how they were marked. */

import { millimetresFromInches } from '../units/si.ts';

export type LengthUnit = 'mm' | 'in' | 'thou';

export interface WrittenNumber {
  /** As written, with a decimal point. */
  readonly raw: string;
  readonly unit?: LengthUnit;
  /** Brackets, a dash behind it or a word such as `pcs` say that it is a count. */
  readonly isCount: boolean;
}

const TOKEN =
  /\s*(?:(?<![\d.])(\d+\.?\d*|\.\d+)|((?:mm|inch(?:es)?|in|thou)(?![a-z])(?:\.(?!\d))?|["″])|((?:pieces|pcs?|off|of|ea)(?![a-z])(?:\.(?!\d))?)|(x)|([()-]))/iy;

export const UNITS: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  '″': 'in',
  thou: 'thou',
};

/** Without a unit a number is in millimetres. */
export function inMillimetres(value: number, unit: LengthUnit = 'mm'): number {
  if (unit === 'mm') return value;
  return millimetresFromInches(unit === 'thou' ? value / 1000 : value);
}

interface Token {
  readonly kind: 'number' | 'unit' | 'count-word' | 'by' | 'sign';
  readonly text: string;
}

const KINDS: readonly Token['kind'][] = ['number', 'unit', 'count-word', 'by', 'sign'];

/** @returns undefined where something is written that is no part of a shim */
function tokensOf(text: string): Token[] | undefined {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.length) {
    const match = TOKEN.exec(text);
    if (!match) return undefined;
    const group = match.slice(1).findIndex((part) => part !== undefined);
    tokens.push({ kind: KINDS[group], text: match[group + 1].toLowerCase().replace(/(?<=[a-z])\.$/, '') });
  }
  return tokens;
}

/** Tabs and every sign for "by" become x; typographic dashes and diameter signs become plain or go. */
export function plainText(text: string): string {
  return text
    .trim()
    .replace(/[×✕✖*]/g, 'x')
    .replace(/[–—−]/g, '-')
    .replace(/[øØ⌀]/g, ' ')
    .replace(/(\d|^|[^\d\s]),(?=\d)/g, '$1.')
    .replace(/\s*\t\s*/g, ' x ')
    .replace(/x(\s*x)+/gi, 'x');
}

/** @returns the numbers in the order written, or undefined when the text is not a written shim */
export function writtenNumbers(text: string): WrittenNumber[] | undefined {
  const tokens = tokensOf(plainText(text));
  return tokens && numbersOf(tokens);
}

function numbersOf(tokens: readonly Token[]): WrittenNumber[] | undefined {
  const numbers: WrittenNumber[] = [];
  let [i, inBrackets] = [0, false];
  const is = (kind: Token['kind'], text?: string): boolean =>
    tokens[i]?.kind === kind && (text === undefined || tokens[i].text === text);
  const take = (kind: Token['kind'], text?: string): boolean => is(kind, text) && i++ >= 0;
  while (i < tokens.length) {
    const by = numbers.length > 0 || inBrackets ? take('by') : false;
    if (!inBrackets && !by && take('sign', '(')) inBrackets = true;
    if (inBrackets) take('by');
    if (!is('number')) return undefined;
    const raw = tokens[i++].text;
    const unit = is('unit') ? UNITS[tokens[i++].text] : undefined;
    const word = take('count-word') || (numbers.length === 0 && !inBrackets && take('sign', '-'));
    numbers.push({ raw, ...(unit && { unit }), isCount: inBrackets || word });
    if (inBrackets) {
      take('by');
      if (!take('sign', ')')) return undefined;
      inBrackets = false;
    }
  }
  return numbers;
}
