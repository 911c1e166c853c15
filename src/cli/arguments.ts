/** Checks a command line against the table: unknown, repeated, missing and stray words are refused by name. */
import { parseArgs } from 'node:util';
import { type Command, type Option, type Request, UsageError } from './command.ts';

type Token = NonNullable<ReturnType<typeof parseArgs>['tokens']>[number];

const sameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

function tokensOf(words: readonly string[], options: readonly Option[]): Token[] {
  // Behind a bare -- everything is a file name.
  const end = words.includes('--') ? words.indexOf('--') : words.length;
  const args = words.map((word, i) => (i < end ? word.replace(/^--[^=]*/, (name) => name.toLowerCase()) : word));
  const config = Object.fromEntries(
    options.map(({ name, value }) => [name.toLowerCase(), { type: value ? 'string' : 'boolean' } as const]),
  );
  // Not strict: a list of speeds may start with a minus, and the refusals below name the option.
  return parseArgs({ args, options: config, strict: false, allowPositionals: true, tokens: true }).tokens;
}

/** Options that begin alike, else all that there are. */
function meantIn({ options }: Command, typed: string): string {
  const written = (several: readonly Option[]) => several.map(({ name }) => `--${name}`).join(', ');
  const near = options.filter(
    ({ name }) => name.toLowerCase().startsWith(typed) || typed.startsWith(name.toLowerCase()),
  );
  return near.length > 0 ? `meant may be ${written(near)}` : `it has ${written(options)}`;
}

function readOption(token: Token & { kind: 'option' }, command: Command, values: Map<string, string>): void {
  const option = command.options.find(({ name }) => token.rawName.startsWith('--') && sameName(name, token.name));
  if (!option) throw new UsageError(`${command.name} has no option ${token.rawName}; ${meantIn(command, token.name)}`);
  const { name, value, choices } = option;
  if (values.has(name)) throw new UsageError(`--${name} is given twice`);
  if (!value && token.value !== undefined) throw new UsageError(`--${name} takes no value`);
  if (value && !token.value) throw new UsageError(`--${name} needs a value: --${name} ${value}`);
  if (choices && !choices.includes(token.value ?? ''))
    throw new UsageError(`--${name}: got ${JSON.stringify(token.value)}, wanted ${choices.join(' or ')}`);
  values.set(name, token.value ?? '');
}

function checkTogether({ name, options, oneOf = [] }: Command, values: Map<string, string>): void {
  const missing = options.find((option) => option.required && !values.has(option.name));
  if (missing) throw new UsageError(`${name} needs --${missing.name} ${missing.value ?? ''}`.trim());
  const given = oneOf.filter((option) => values.has(option));
  if (given.length > 1) throw new UsageError(`choose one of ${given.map((option) => `--${option}`).join(', ')}`);
}

/** @throws UsageError saying which word is wrong */
export function readArguments(words: readonly string[], command: Command): Pick<Request, 'file' | 'values'> {
  const values = new Map<string, string>();
  const files: string[] = [];
  for (const token of tokensOf(words, command.options)) {
    if (token.kind === 'option') readOption(token, command, values);
    else if (token.kind === 'positional') files.push(token.value);
  }
  if (files.length === 0 || files[0] === '') throw new UsageError(`${command.name} needs a ${command.input}`);
  if (files.length > 1) throw new UsageError(`one ${command.input} at a time: ${JSON.stringify(files[1])} is too much`);
  checkTogether(command, values);
  return { file: files[0], values };
}
