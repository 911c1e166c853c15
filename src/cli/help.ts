/** The help, written out of the table. */
import type { Command, Option } from './command.ts';
import { COMMANDS, EXIT_MEANINGS } from './options.ts';

const written = ({ name, value }: Option): string => `--${name}${value ? ` ${value}` : ''}`;

function columns(rows: readonly (readonly [string, string])[]): string {
  const width = Math.max(...rows.map(([left]) => left.length));
  const indent = `\n${' '.repeat(width + 4)}`;
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right.replaceAll('\n', indent)}`).join('\n');
}

const STREAMS = `The result goes to stdout, remarks go to stderr. A table that is wider than the terminal is broken into blocks of columns;
COLUMNS=100 in the environment sets the width, of a pipe or a file too. JSON and CSV have every digit.`;

const exits = (): string => columns(EXIT_MEANINGS.map(([code, meaning]) => [String(code), meaning]));

function synopsis({ name, input, options, oneOf = [] }: Command): string {
  const single = options.filter((option) => !oneOf.includes(option.name));
  const words = single.map((option) => (option.required ? written(option) : `[${written(option)}]`));
  const choice = oneOf.length > 0 ? [`[${oneOf.map((name) => `--${name}`).join(' | ')}]`] : [];
  return ['shimwright', name, input, ...words, ...choice].join(' ');
}

function optionHelp({ help, choices }: Option): string {
  return choices ? `${help} (${choices.join(' or ')})` : help;
}

export function commandHelp(command: Command): string {
  const rows = command.options.map((option) => [written(option), optionHelp(option)] as const);
  return `${synopsis(command)}

${command.summary}

${columns([[command.input, 'the input file; - reads stdin'], ...rows])}

${STREAMS}

Exit codes:
${exits()}
`;
}

export function generalHelp(): string {
  return `shimwright: damper valving and shim stacks on the command line

${COMMANDS.map(synopsis).join('\n')}

Commands:
${columns(COMMANDS.map(({ name, summary }) => [name, summary]))}

Options:
${columns([
  ['--help', 'this text; behind a command, more about it'],
  ['--version', 'the version of the program'],
])}

${STREAMS}

Exit codes:
${exits()}

Results are estimates. They do not replace the maker's manual, local rules or a qualified person.
`;
}
