/** `shimwright search`: stacks from a drawer or a catalogue that come near a wanted force curve. */
import { decodeProject } from '../../model/codec.ts';
import { searchStart } from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { nameOf, readDocument, readInput } from '../input.ts';
import { numberList } from '../number-list.ts';
import { renderFound } from '../render/found.ts';
import { lineOf, readLines, type Study } from '../search-lines.ts';
import { questionOf } from '../search-question.ts';
import { theoryOf } from '../theories.ts';

export const STARTS = 'starts';
export const STEPS = 'steps';
export const ANSWERS = 'answers';
export const SEED = 'seed';
export const SHARD = 'shard';
export const JSON_LINES = 'json-lines';
export const DEFAULTS = { [STARTS]: 8, [STEPS]: 300, [ANSWERS]: 5, [SEED]: 1 } as const;

export async function search(request: Request): Promise<Outcome> {
  const { file, values, emit } = request;
  const project = await readDocument(file, decodeProject);
  const study: Study = {
    project,
    request: await questionOf(project, values),
    settings: {
      seed: whole(values, SEED, 0),
      steps: whole(values, STEPS, 1),
      answers: whole(values, ANSWERS, 1),
      theory: theoryOf(values),
    },
    starts: whole(values, STARTS, 1),
  };
  const lines: string[] = [];
  let found = 0;
  for (const start of startsOf(study.starts, values.get(SHARD))) {
    const result = searchStart(project, study.request, study.settings, start);
    found += result.answers.length;
    const line = lineOf(study, result);
    if (values.has(JSON_LINES)) emit(line);
    lines.push(line);
  }
  const exit = found > 0 ? EXIT.done : EXIT.failed;
  const talk = found > 0 ? [] : ['no stack keeps every limit: none of the starts has an answer'];
  if (values.has(JSON_LINES)) return { exit, result: '', talk };
  return { exit, result: renderFound(readLines(lines.join(''), 'this search'), study.settings.answers, request), talk };
}

/** `shimwright merge`: one ranked list out of the lines of several searches of one study. */
export async function merge({ file, values, width }: Request): Promise<Outcome> {
  const lines = readLines(await readInput(file), nameOf(file));
  const [{ starts }] = lines;
  const ran = new Set(lines.map(({ start }) => start));
  const missing = Array.from({ length: starts }, (_, i) => i).filter((start) => !ran.has(start));
  return {
    exit: missing.length === 0 ? EXIT.done : EXIT.failed,
    result: renderFound(lines, whole(values, ANSWERS, 1), { values, width }),
    talk: missing.length === 0 ? [] : [`the study has ${starts} starts; missing: ${missing.join(', ')}`],
  };
}

function whole(values: Values, option: keyof typeof DEFAULTS, from: number): number {
  const text = values.get(option);
  if (text === undefined) return DEFAULTS[option];
  const [value] = numberList(text, option, { from, upTo: 1e9, single: true });
  if (!Number.isInteger(value)) throw new UsageError(`--${option}: got ${text}, wanted a whole number`);
  return value;
}

/** Every n-th start, so that all shards have as much to do. */
function startsOf(starts: number, shard: string | undefined): number[] {
  const all = Array.from({ length: starts }, (_, start) => start);
  if (shard === undefined) return all;
  const [, i, n] = /^(\d+)\/(\d+)$/.exec(shard)?.map(Number) ?? [];
  if (!(n >= 1 && i >= 1 && i <= n))
    throw new UsageError(`--${SHARD}: got ${JSON.stringify(shard)}, wanted i/n with i from 1 to n, such as 1/4`);
  return all.filter((start) => start % n === i - 1);
}
