/**
 * Reads a list of shims as people write it on paper, in messages and in spreadsheets; docs/file-format.md has the rules.
 * One shim a line, or several on a line behind `;` or a comma with a space; what follows `#` is a comment.
 */
import type { InputFault } from '../units/fault.ts';
import { MIN_SIZE_MM } from './fields.ts';
import { describe } from './place.ts';
import type { ShimRow } from './project.ts';
import { readFeatures, splitFeatures, type WrittenFeature } from './shim-list-features.ts';
import { inMillimetres, type WrittenNumber, writtenNumbers } from './shim-list-tokens.ts';
import { MAX_DIAMETER_MM, MAX_SHIMS, shimRowSchema } from './stack-schema.ts';

export type CountedRow = ShimRow & { count: number };

export interface ParsedShimList {
  /** What could be read, in the order written; count is always given. */
  readonly rows: readonly CountedRow[];
  /** One fault for each entry that could not; path is `line 3`. */
  readonly faults: readonly InputFault[];
}

/** Longest list that is read, in characters. */
export const MAX_LIST_CHARACTERS = 20_000;

const EXAMPLE = 'count x diameter x thickness, such as 3 x 30 x 0.15';

/** Reads every entry of a written list; a fault in one does not stop the others. */
export function parseShimList(text: string): ParsedShimList {
  if (text.length > MAX_LIST_CHARACTERS) return { rows: [], faults: [tooLong(text)] };
  const rows: CountedRow[] = [];
  const faults: InputFault[] = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries())
    for (const entry of entriesOf(line)) {
      const read = readEntry(entry);
      if ('row' in read) rows.push(read.row);
      else faults.push({ path: `line ${index + 1}`, got: describe(entry), ...read });
    }
  return { rows, faults };
}

const tooLong = (text: string): InputFault => ({
  code: 'shims.list.too-long',
  path: 'list',
  got: `${text.length} characters`,
  wanted: `at most ${MAX_LIST_CHARACTERS}`,
});

/** A comma with a space ends an entry. One without is a decimal comma, unless the entry has decimal points. */
function entriesOf(line: string): string[] {
  return line
    .split('#', 1)[0]
    .split(/;|,(?=\s|$)/)
    .flatMap((part) => {
      if (!part.includes('.')) return [part];
      return /[x×*]/i.test(part) ? part.split(',') : [part.replaceAll(',', '\t')];
    })
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '');
}

type Refusal = Pick<InputFault, 'code' | 'wanted'>;
type Read = { readonly row: CountedRow } | Refusal;

function readEntry(entry: string): Read {
  const { shim: written, features } = splitFeatures(entry);
  const numbers = writtenNumbers(written);
  if (!numbers) return { code: 'shims.list.not-a-shim', wanted: EXAMPLE };
  const shim = assign(numbers);
  if ('code' in shim) return shim;
  const read = sizesOf(shim);
  return 'code' in read ? read : withFeatures(read.row, features, shim);
}

/** Behind a shim in inches a bare number could be either: there every size names its unit. */
function withFeatures(
  row: CountedRow,
  features: readonly WrittenFeature[],
  { diameter, thickness }: WrittenShim,
): Read {
  const isInInches = [diameter, thickness].some(({ unit }) => unit !== undefined && unit !== 'mm');
  const read = readFeatures(features, isInInches);
  if ('code' in read) return read;
  const whole = { ...row, ...read };
  if (shimRowSchema.safeParse(whole).success) return { row: whole };
  return { code: 'shims.list.feature', wanted: 'a bore, dish, notches and material that a shim can have' };
}

/** Which number is which. */
interface WrittenShim {
  readonly diameter: WrittenNumber;
  readonly thickness: WrittenNumber;
  readonly count?: WrittenNumber;
}

function assign(numbers: readonly WrittenNumber[]): WrittenShim | Refusal {
  const counts = numbers.filter((number) => number.isCount);
  const sizes = numbers.filter((number) => !number.isCount);
  const [a, b, c] = sizes;
  if (counts.length > 1 || sizes.length === 0) return { code: 'shims.list.not-a-shim', wanted: EXAMPLE };
  const candidates = candidatesOf(sizes.length + counts.length, a, b, c).map((shim) => ({ count: counts[0], ...shim }));
  const sensible = candidates.filter(isSensible);
  if (sensible.length === 1) return sensible[0];
  if (sensible.length > 1) return { code: 'shims.list.ambiguous', wanted: 'the count in brackets, such as 20 x 2 (1)' };
  return candidates.length > 0
    ? { code: 'shims.list.sizes', wanted: `a shim thinner than a quarter of its diameter: ${EXAMPLE}` }
    : { code: 'shims.list.not-a-shim', wanted: EXAMPLE };
}

/** Every way to read one to three unmarked sizes; `given` counts the marked number too. */
function candidatesOf(given: number, a: WrittenNumber, b?: WrittenNumber, c?: WrittenNumber): WrittenShim[] {
  if (b === undefined) return given <= 2 ? shorthand(a) : [];
  if (c !== undefined) {
    if (given > 3) return [];
    return [...counted(a, { diameter: b, thickness: c }), ...counted(c, { diameter: a, thickness: b })];
  }
  const plain: WrittenShim = { diameter: a, thickness: b };
  if (given === 3) return [plain];
  // `30.15 x3` and `3 x 30.15`: the trade shorthand with a count; only what was written with a point can be shorthand.
  const short = [
    ...shorthand(a).flatMap((shim) => counted(b, shim)),
    ...shorthand(b).flatMap((shim) => counted(a, shim)),
  ];
  return short.filter(isSensible).length > 0 && !isThin(plain) ? short : preferShorthand(short, plain);
}

/** `30.5 x 1`: a whole number behind a diameter with decimals is a count; a thickness is then written 1.0. */
function preferShorthand(short: readonly WrittenShim[], plain: WrittenShim): WrittenShim[] {
  const trailing = short.filter(({ count }) => count === plain.thickness);
  return trailing.length > 0 ? trailing : [plain];
}

const isWhole = ({ raw, unit }: WrittenNumber): boolean => unit === undefined && /^\d+$/.test(raw);

const counted = (count: WrittenNumber, shim: WrittenShim): WrittenShim[] =>
  isWhole(count) ? [{ ...shim, count }] : [];

/** `30.15` is 30 mm x 0.15 mm; `8.2` is 8 mm x 0.2 mm. */
function shorthand({ raw, unit }: WrittenNumber): WrittenShim[] {
  const parts = /^(\d+)\.(\d+)$/.exec(raw);
  if (!parts || unit !== undefined) return [];
  const [diameter, thickness] = [parts[1], `0.${parts[2]}`].map((text) => ({ raw: text, isCount: false }));
  return [{ diameter, thickness }];
}

/** No shim is thicker than a quarter of its diameter: this tells the count from the sizes. */
const isThin = ({ diameter, thickness }: WrittenShim): boolean => {
  if (diameter.unit !== undefined && thickness.unit !== undefined) return true;
  return thickness.unit === 'thou' || Number(thickness.raw) <= Number(diameter.raw) / 4;
};

const isSensible = (shim: WrittenShim): boolean => isThin(shim) && Number(shim.count?.raw ?? 1) <= MAX_SHIMS;

/** Two sizes share a unit that only one of them names; a thickness in thou says nothing about its diameter. */
function sizesOf({ diameter, thickness, count }: WrittenShim): Read {
  if (thickness.unit === 'thou' && diameter.unit === undefined)
    return { code: 'shims.list.unit', wanted: 'a unit behind the diameter too, such as 30 mm x 6 thou' };
  if (diameter.unit === 'thou' && thickness.unit === undefined)
    return { code: 'shims.list.unit', wanted: 'a unit behind the thickness too, such as 1200 thou x 6 thou' };
  const row = {
    outerDiameter_mm: inMillimetres(Number(diameter.raw), diameter.unit ?? thickness.unit),
    thickness_mm: inMillimetres(Number(thickness.raw), thickness.unit ?? diameter.unit),
    count: Number(count?.raw ?? 1),
  };
  if (shimRowSchema.safeParse(row).success) return { row };
  return {
    code: 'shims.list.sizes',
    wanted: `a diameter up to ${MAX_DIAMETER_MM} mm, a thickness from ${MIN_SIZE_MM} mm and a whole count from 1 to ${MAX_SHIMS}`,
  };
}
