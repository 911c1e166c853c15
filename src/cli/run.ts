/** One run of the command line: words in, an outcome out. */
import { version } from '../../package.json';
import { formatFault, InputError } from '../units/fault.ts';
import { readArguments } from './arguments.ts';
import { EXIT, type Outcome, type Output, UsageError } from './command.ts';
import { commandHelp, generalHelp } from './help.ts';
import { COMMANDS } from './options.ts';

const HELP = ['--help', '-h', 'help'];

const done = (result: string): Outcome => ({ exit: EXIT.done, result, talk: [] });

/** Input faults end as misuse; a fault of the program itself passes through. */
function refusal(error: unknown): Outcome {
  const misuse = (message: string): Outcome => ({ exit: EXIT.misuse, result: '', talk: [`shimwright: ${message}`] });
  if (error instanceof UsageError) return misuse(error.message);
  if (error instanceof InputError) return misuse(formatFault(error.fault));
  throw error;
}

async function runCommand([name, ...words]: readonly string[], output: Output): Promise<Outcome> {
  const command = COMMANDS.find((candidate) => candidate.name === name);
  const known = COMMANDS.map((candidate) => candidate.name).join(', ');
  if (!command) throw new UsageError(`no command ${JSON.stringify(name)}; the commands are ${known}`);
  if (words.some((word) => HELP.slice(0, 2).includes(word))) return done(commandHelp(command, output.width));
  return command.run({ ...readArguments(words, command), ...output });
}

export async function run(words: readonly string[], output: Output): Promise<Outcome> {
  const [first, second] = words;
  if (first === undefined) return { exit: EXIT.misuse, result: '', talk: [generalHelp(output.width).trimEnd()] };
  if (first === '--version') return done(`${version}\n`);
  const command = first === 'help' ? COMMANDS.find(({ name }) => name === second) : undefined;
  if (HELP.includes(first)) return done(command ? commandHelp(command, output.width) : generalHelp(output.width));
  return runCommand(words, output).catch(refusal);
}
