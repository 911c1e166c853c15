/** `shimwright check`: does a project or stack file hold, and which adjusters do its builds have? The report is the result. */
import { type Adjuster, adjustersOf } from '../../model/adjusters.ts';
import { decodeAny } from '../../model/codec.ts';
import { countOf } from '../../model/expand-shims.ts';
import type { Project, StackFile } from '../../model/project.ts';
import { type Command, EXIT, type Outcome, type Request } from '../command.ts';
import { faultLines, nameOf, readInput } from '../input.ts';
import { json } from '../render/json.ts';

const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

function describe(document: Project | StackFile): string {
  const { format, version, name } = document;
  const holds =
    format === 'shimwright/project'
      ? plural(document.builds.length, 'build')
      : plural(
          document.shims.reduce((sum, row) => sum + countOf(row), 0),
          'shim',
        );
  return `${format}, version ${version}: ${JSON.stringify(name)} with ${holds}`;
}

interface BuildAdjusters {
  readonly id: string;
  readonly name: string;
  readonly adjusters: readonly Adjuster[];
}

/** What a person can turn in each build; nothing of a stack file. */
function adjusters(document: Project | StackFile): { builds?: readonly BuildAdjusters[] } {
  if (document.format !== 'shimwright/project') return {};
  return {
    builds: document.builds.map((build) => ({ id: build.id, name: build.name, adjusters: adjustersOf(build) })),
  };
}

function adjusterLine({ id, name, adjusters: turned }: BuildAdjusters): string {
  const each = turned.map((one) => `${one.id} ${one.clicks} of ${one.clickCount}`);
  return `  ${id} (${name}): ${each.length > 0 ? `clicks from closed: ${each.join(', ')}` : 'no adjuster'}`;
}

async function check({ file, values }: Request): Promise<Outcome> {
  const decoded = decodeAny(await readInput(file));
  const faults = decoded.ok ? [] : decoded.faults;
  const { builds } = decoded.ok ? adjusters(decoded.document) : {};
  const lines = decoded.ok
    ? [`${nameOf(file)}: no faults; ${describe(decoded.document)}`, ...(builds ?? []).map(adjusterLine)]
    : [...faultLines(file, faults), `${nameOf(file)}: ${plural(faults.length, 'fault')}`];
  return {
    exit: decoded.ok ? EXIT.done : EXIT.misuse,
    result: values.has('json')
      ? json({ format: 'shimwright/check', version: 1, ok: decoded.ok, faults, builds })
      : `${lines.join('\n')}\n`,
    talk: [],
  };
}

export const checkCommand: Command = {
  name: 'check',
  input: 'FILE',
  summary: 'whether a project or a stack file holds, every fault if not, and the adjusters of each build',
  example: 'project.json',
  options: [{ name: 'json', help: 'print the report as JSON' }],
  run: check,
};
