/** Makes what a person typed plain: one sign for each operation, one spelling for each unit, a decimal point. */
import { withDecimalPoints } from './decimal-sign.ts';
import { InputError } from './fault.ts';

/** Longest expression that is read. */
export const MAX_EXPRESSION = 120;

const REPLACEMENTS: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2007\u2009\u202f\t]/g, ' '],
  [/[×·⋅∙]/g, '*'],
  [/÷/g, '/'],
  [/[−–]/g, '-'],
  [/℃|°\s*C\b/g, ' degC '],
  [/℉|°\s*F\b/g, ' degF '],
  [/[µμ](?=m\b)/g, 'u'],
  [/(?<=[A-Za-z])\s*(?:²|\^\s*2(?!\d))/g, '2'],
  [/(?<=[A-Za-z])\s*(?:³|\^\s*3(?!\d))/g, '3'],
  [/\bfl\.?\s*oz\b\.?/gi, ' floz '],
  [/(?<=[\d.)]\s*)["″]/g, ' inch '],
  // The trade writes pound and kilogram for their weights, and a dash between foot and pound.
  [/\b(ft|in)\s*[-* ]\s*lb(?:s|f)?\b/g, '$1*lbf'],
  [/\blbs?\s*\/\s*in\b/g, 'lbf/in'],
  [/\bkg\s*\/\s*mm\b/g, 'kgf/mm'],
  [/\bNm\b/g, 'N*m'],
  // One word, since a bare millipascal in a pressure box would be a slip for MPa.
  [/\bmPa\s*\*?\s*s\b/g, 'mPas'],
  // The bare word is an operator of the parser.
  [/\bin(?=[23]?\b)/g, 'inch'],
];

/**
 * @throws InputError `units.expression.empty`, `units.expression.too-long`, and those of decimal-sign.ts
 */
export function plainExpression(text: string, path: string): string {
  const refuse = (code: string, wanted: string): never => {
    throw new InputError({ code, path, got: JSON.stringify(text.slice(0, MAX_EXPRESSION)), wanted });
  };
  if (text.length > MAX_EXPRESSION) refuse('units.expression.too-long', `at most ${MAX_EXPRESSION} characters`);
  if (text.trim() === '') refuse('units.expression.empty', 'a number');
  const pointed = withDecimalPoints(text, '.', path);
  return REPLACEMENTS.reduce((plain, [from, to]) => plain.replace(from, to), pointed).trim();
}
