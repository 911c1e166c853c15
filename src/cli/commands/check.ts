/** `shimwright check`: does a project or stack file hold? The report is the result. */
import { decodeAny } from '../../model/codec.ts';
import { countOf } from '../../model/expand-shims.ts';
import type { Project, StackFile } from '../../model/project.ts';
import { EXIT, type Outcome, type Request } from '../command.ts';
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

export async function check({ file, values }: Request): Promise<Outcome> {
  const decoded = decodeAny(await readInput(file));
  const faults = decoded.ok ? [] : decoded.faults;
  const lines = decoded.ok
    ? [`${nameOf(file)}: no faults; ${describe(decoded.document)}`]
    : [...faultLines(file, faults), `${nameOf(file)}: ${plural(faults.length, 'fault')}`];
  return {
    exit: decoded.ok ? EXIT.done : EXIT.misuse,
    result: values.has('json')
      ? json({ format: 'shimwright/check', version: 1, ok: decoded.ok, faults })
      : `${lines.join('\n')}\n`,
    talk: [],
  };
}
