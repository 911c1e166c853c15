/** Text of a file to a JSON value, with limits that keep a hostile file harmless and with the place of a slip. */
import { type ParseError, parse, printParseErrorCode } from 'jsonc-parser';
import type { InputFault } from '../units/fault.ts';
import { type Checked, refused } from './validate.ts';

/** Longest file that is read, in characters: 2 MiB of plain text. */
export const MAX_CHARACTERS = 2 * 1024 * 1024;
/** Deepest nesting that is read; a project needs 8. */
export const MAX_DEPTH = 64;

/** Deepest nesting of brackets outside strings, found without recursion. */
function depthOf(text: string): number {
  let [depth, deepest, inString] = [0, 0, false];
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (inString) {
      if (c === '\\') i++;
      else if (c === '"') inString = false;
    } else if (c === '"') inString = true;
    else if (c === '{' || c === '[') deepest = Math.max(deepest, ++depth);
    else if (c === '}' || c === ']') depth--;
  }
  return deepest;
}

const megabytes = (characters: number): string => `${(characters / 1024 / 1024).toFixed(1)} MiB`;

function limitFault(text: string): InputFault | undefined {
  const at = { path: 'document' };
  if (text.length > MAX_CHARACTERS)
    return {
      ...at,
      code: 'document.too-large',
      got: `more than ${megabytes(MAX_CHARACTERS)}`,
      wanted: `at most ${megabytes(MAX_CHARACTERS)}`,
    };
  if (text.trim() === '') return { ...at, code: 'document.empty', got: 'an empty file', wanted: 'a JSON document' };
  const depth = depthOf(text);
  if (depth <= MAX_DEPTH) return undefined;
  return { ...at, code: 'document.too-deep', got: `${depth} levels of nesting`, wanted: `at most ${MAX_DEPTH}` };
}

/** `CloseBraceExpected` to `close brace expected`. */
const inWords = (slip: ParseError): string =>
  printParseErrorCode(slip.error)
    .replace(/(?<=[a-z])(?=[A-Z])/g, ' ')
    .toLowerCase();

function syntaxFault(text: string): InputFault {
  const slips: ParseError[] = [];
  parse(text, slips, { disallowComments: true, allowTrailingComma: false });
  const offset = slips[0]?.offset ?? 0;
  const lines = text.slice(0, offset).split('\n');
  const found = text.slice(offset, offset + 20).split('\n')[0];
  return {
    code: 'document.json',
    path: `line ${lines.length}, column ${(lines.at(-1) ?? '').length + 1}`,
    got: offset >= text.trimEnd().length ? 'the end of the text' : JSON.stringify(found),
    wanted: `valid JSON${slips.length > 0 ? ` (${inWords(slips[0])})` : ''}`,
  };
}

/** @returns the JSON value, or one fault: too large, empty, too deep, or the line and column of a slip. */
export function parseJson(text: string): Checked<unknown> {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const limit = limitFault(body);
  if (limit) return refused([limit]);
  try {
    return { ok: true, document: JSON.parse(body) };
  } catch {
    return refused([syntaxFault(body)]);
  }
}
