/** What a command is made of. The table in options.ts holds them all. */

/** How a run ends; the help lists these words. */
export const EXIT = { done: 0, failed: 1, misuse: 2 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

export interface Option {
  /** Long name without dashes, as the help writes it; upper and lower case are alike when typed. */
  readonly name: string;
  /** Placeholder of its value; a switch has none. */
  readonly value?: string;
  readonly help: string;
  readonly required?: boolean;
  /** The only values it takes. */
  readonly choices?: readonly string[];
}

/** Values by the option's name in the table; a switch that was given is an empty text. */
export type Values = ReadonlyMap<string, string>;

/** Where the result goes. */
export interface Output {
  /** Puts part of a long result on stdout at once, ahead of the rest. */
  readonly emit: (part: string) => void;
  /** Columns of the screen; infinity where lines may be of any length. */
  readonly width: number;
}

export interface Request extends Output {
  /** Path of the input, `-` for stdin. */
  readonly file: string;
  readonly values: Values;
}

/** In which form the result is wanted. */
export type Form = Pick<Request, 'values' | 'width'>;

/** Result and talk of a run, kept apart: the first goes to stdout, the second to stderr. */
export interface Outcome {
  readonly exit: ExitCode;
  readonly result: string;
  readonly talk: readonly string[];
}

export interface Command {
  readonly name: string;
  /** Placeholder of the input in the help. */
  readonly input: string;
  readonly summary: string;
  /** Words behind the name of the command that do something useful. */
  readonly example: string;
  readonly options: readonly Option[];
  /** Options of which at most one may be given. */
  readonly oneOf?: readonly string[];
  readonly run: (request: Request) => Promise<Outcome>;
}

/** The command line is wrong: told on stderr, exit 2. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
