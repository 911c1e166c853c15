/**
 * What a search writes, one line of JSON a start, and how the lines of several searches are read again. A line names its study, so
 * that starts of different questions are never put into one list.
 */
import { createHash } from 'node:crypto';
import type { Project } from '../model/project.ts';
import type { SearchRequest } from '../model/search-request.ts';
import type { FoundByStart, SearchSettings, TheoryChoice } from '../solver/index.ts';
import { UsageError } from './command.ts';

const FORMAT = 'shimwright/search-start';
const VERSION = 1;

export interface Study {
  readonly project: Project;
  readonly request: SearchRequest;
  readonly settings: SearchSettings & { readonly theory: TheoryChoice };
  /** How many starts it has in all, whichever machines run them. */
  readonly starts: number;
}

export interface SearchLine extends FoundByStart {
  readonly format: typeof FORMAT;
  readonly version: typeof VERSION;
  /** Equal for lines of one question. */
  readonly study: string;
  readonly starts: number;
}

/** Names a study by all that its answers depend on. */
export function studyName({ project, request, settings, starts }: Study): string {
  const { damper, fluid, gas, drawer, builds } = project;
  const build = builds.find(({ id }) => id === request.buildId);
  const question = JSON.stringify({ damper, fluid, gas, drawer, build, request, settings, starts });
  return createHash('sha256').update(question).digest('hex').slice(0, 16);
}

export const lineOf = (study: Study, found: FoundByStart): string =>
  `${JSON.stringify({ format: FORMAT, version: VERSION, study: studyName(study), starts: study.starts, ...found } satisfies SearchLine)}\n`;

/** @throws UsageError naming the line that is none, or that belongs to another study */
export function readLines(text: string, name: string): SearchLine[] {
  const lines = text.split(/\r?\n/).map((line, i) => [line, i + 1] as const);
  const read = lines
    .filter(([line]) => line.trim() !== '')
    .map(([line, number]) => [parsed(line, name, number), number] as const);
  if (read.length === 0) throw new UsageError(`${name}: no line, wanted what search prints with --json-lines`);
  const [[{ study }]] = read;
  for (const [line, number] of read) {
    if (line.study !== study)
      throw new UsageError(`${name}: line ${number} is of another search: study ${line.study}, wanted ${study}`);
  }
  return read.map(([line]) => line);
}

function parsed(line: string, name: string, number: number): SearchLine {
  try {
    const value: unknown = JSON.parse(line);
    if (isLine(value)) return value;
  } catch {
    // Told below, as any other line that is none.
  }
  throw new UsageError(`${name}: line ${number} is none of a search: got ${JSON.stringify(line.slice(0, 60))}`);
}

function isLine(value: unknown): value is SearchLine {
  const { format, version, study, start, starts, answers } = (value ?? {}) as Partial<SearchLine>;
  return (
    format === FORMAT &&
    version === VERSION &&
    typeof study === 'string' &&
    Number.isInteger(start) &&
    Number.isInteger(starts) &&
    Array.isArray(answers) &&
    answers.every((answer) => typeof answer?.judgement?.rms_N === 'number' && typeof answer?.shims === 'object')
  );
}
