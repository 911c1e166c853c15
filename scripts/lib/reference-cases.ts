/** Reads the reference cases from disk; the only part of the proof that touches files. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { type Expected, type ProofCase, parseCase, parseExpected } from '../../src/proof/proof-case.ts';

export const REFERENCE_FOLDER = fileURLToPath(new URL('../../reference-cases', import.meta.url));

export interface StoredCase {
  /** `<field>/<folder>`, as the folders are named. */
  readonly folder: string;
  readonly case: ProofCase;
  readonly expected: Expected;
  readonly source: string;
  /** Path of the generator, where the numbers were made. */
  readonly generator?: string;
}

/** All cases, by folder name. @throws InputError or Error naming the folder when a file is missing or malformed */
export function loadReferenceCases(root: string = REFERENCE_FOLDER): StoredCase[] {
  return foldersIn(root)
    .flatMap((field) => foldersIn(join(root, field)).map((id) => `${field}/${id}`))
    .map((folder) => loadCase(root, folder));
}

const foldersIn = (path: string): string[] =>
  readdirSync(path, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort();

function loadCase(root: string, folder: string): StoredCase {
  const file = (name: string) => join(root, folder, name);
  const json = (name: string): unknown => JSON.parse(readFileSync(file(name), 'utf8'));
  try {
    return {
      folder,
      case: parseCase(json('case.json')),
      expected: parseExpected(json('expected.json')),
      source: readFileSync(file('SOURCE.md'), 'utf8'),
      ...(existsSync(file('derive.ts')) && { generator: file('derive.ts') }),
    };
  } catch (error) {
    throw new Error(`reference case ${folder}: ${(error as Error).message}`, { cause: error });
  }
}

export type Generator = (input: unknown) => Readonly<Record<string, number>>;

/** The `derive` of a generator file. @throws Error when the file exports none */
export async function loadGenerator(path: string): Promise<Generator> {
  const module: { derive?: Generator } = await import(pathToFileURL(path).href);
  if (!module.derive) throw new Error(`${path} exports no derive`);
  return module.derive;
}
