/** The help, written out of the table. */
import type { Command, Option } from './command.ts';
import { COMMANDS, EXIT_MEANINGS } from './options.ts';
import { fold } from './render/fold.ts';

/** Longer lines are hard to read, and a pipe has no width of its own. */
const MOST_COLUMNS = 100;

const written = ({ name, value }: Option): string => `--${name}${value ? ` ${value}` : ''}`;

/** Each line break stays, and longer lines are broken between words. */
const lines = (text: string, width: number): string[] => text.split('\n').flatMap((line) => fold(line, width));

function columns(rows: readonly (readonly [string, string])[], width: number): string {
  const left = Math.max(...rows.map(([text]) => text.length));
  const indent = `\n${' '.repeat(left + 4)}`;
  return rows
    .map(([text, right]) => `  ${text.padEnd(left)}  ${lines(right, width - left - 4).join(indent)}`)
    .join('\n');
}

const STREAMS = `The result goes to stdout, remarks go to stderr. A table that is wider than the terminal is broken into blocks of columns; \
COLUMNS=100 in the environment sets the width, of a pipe or a file too. JSON and CSV have every digit.`;

const endOf = (width: number): string => `${fold(STREAMS, width).join('\n')}

Exit codes:
${columns(
  EXIT_MEANINGS.map(([code, meaning]) => [String(code), meaning]),
  width,
)}
`;

/** What must be given stands in it; the rest is listed below. */
function synopsis({ name, input, options }: Command): string {
  const needed = options.filter(({ required }) => required).map(written);
  return ['shimwright', name, input, ...needed, '[OPTIONS]'].join(' ');
}

function optionHelp({ help, choices }: Option): string {
  return choices ? `${help} (${choices.join(', ')})` : help;
}

/** @param screen columns of the screen; infinity where it has none */
export function commandHelp(command: Command, screen: number): string {
  const width = Math.min(screen, MOST_COLUMNS);
  const { input, summary, options, oneOf = [], example } = command;
  const rows = options.map((option) => [written(option), optionHelp(option)] as const);
  const choice = oneOf.length > 0 ? `\nOf ${oneOf.map((name) => `--${name}`).join(' and ')} only one.\n` : '';
  return `${synopsis(command)}

${fold(summary, width).join('\n')}

${columns([[input, 'the input file; - reads stdin'], ...rows], width)}
${choice}
Example:
  shimwright ${command.name} ${example}

${endOf(width)}`;
}

/** @param screen columns of the screen; infinity where it has none */
export function generalHelp(screen: number): string {
  const width = Math.min(screen, MOST_COLUMNS);
  const options = [
    ['--help', 'this text; behind a command, its options and an example'],
    ['--version', 'the version of the program'],
  ] as const;
  return `shimwright: damper valving and shim stacks on the command line

shimwright COMMAND FILE [OPTIONS]

Commands:
${columns(
  COMMANDS.map(({ name, summary }) => [name, summary]),
  width,
)}

Options:
${columns(options, width)}

${endOf(width)}
${fold('What the files hold is written in docs/file-format.md of the sources, and in schema/ of the package.', width).join('\n')}

${fold("Results are estimates. They do not replace the maker's manual, local rules or a qualified person.", width).join('\n')}
`;
}
