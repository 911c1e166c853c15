/** Reads the input of a command: a file, or stdin as `-`. */
import { createReadStream } from 'node:fs';
import { type Checked, MAX_CHARACTERS } from '../model/codec.ts';
import { formatFault, type InputFault } from '../units/fault.ts';
import { UsageError } from './command.ts';

/** Any text with more bytes than this has too many characters; the rest need not be read. */
const MOST_BYTES = 3 * MAX_CHARACTERS + 3;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'this is a folder, not a file',
  EACCES: 'this file may not be read',
};

async function bytesOf(stream: AsyncIterable<Buffer>): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of stream) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > MOST_BYTES) break;
  }
  return Buffer.concat(chunks);
}

/** What a message calls the input. */
export const nameOf = (file: string): string => (file === '-' ? 'stdin' : file);

/** @throws UsageError when the input cannot be read or is no UTF-8 text */
export async function readInput(file: string): Promise<string> {
  const bytes = await bytesOf(file === '-' ? process.stdin : createReadStream(file)).catch((error) => {
    throw new UsageError(`${nameOf(file)}: ${REASONS[error.code] ?? error.message}`);
  });
  try {
    return new TextDecoder('utf-8', { fatal: bytes.length <= MOST_BYTES }).decode(bytes);
  } catch {
    throw new UsageError(`${nameOf(file)}: this is no UTF-8 text`);
  }
}

/** One line a fault, behind the name of the input. */
export const faultLines = (file: string, faults: readonly InputFault[]): string[] =>
  faults.map((fault) => `${nameOf(file)}: ${formatFault(fault)}`);

/** @throws UsageError with every fault of a document that does not hold */
export async function readDocument<Document>(
  file: string,
  decode: (text: string) => Checked<Document>,
): Promise<Document> {
  const decoded = decode(await readInput(file));
  if (decoded.ok) return decoded.document;
  throw new UsageError(faultLines(file, decoded.faults).join('\n'));
}
