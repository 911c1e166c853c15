/** Saved text to document and back: limits, JSON, format and version, migration, validation. Nothing is lost on the way. */
import type { InputFault } from '../units/fault.ts';
import { parseJson } from './json-text.ts';
import { migrate, type Step } from './migrate/chain.ts';
import { PROJECT_STEPS, STACK_STEPS } from './migrate/steps.ts';
import { child, describe } from './place.ts';
import type { Project, StackFile } from './project.ts';
import { PROJECT_FORMAT } from './project-schema.ts';
import { STACK_FORMAT } from './stack-schema.ts';

export { MAX_CHARACTERS } from './json-text.ts';
export type { Checked } from './validate.ts';

import { type Checked, refused, validateProject, validateStackFile } from './validate.ts';

interface Format<Document> {
  readonly name: string;
  readonly steps: readonly Step[];
  readonly validate: (document: unknown) => Checked<Document>;
}

const PROJECT: Format<Project> = { name: PROJECT_FORMAT, steps: PROJECT_STEPS, validate: validateProject };
const STACK: Format<StackFile> = { name: STACK_FORMAT, steps: STACK_STEPS, validate: validateStackFile };

/** The `format` a document says it has, if it says any. */
export const formatOf = (document: unknown): unknown => child({ value: document, path: '' }, 'format').value;

function headFault(document: unknown, { name, steps }: Format<unknown>): InputFault | undefined {
  const root = { value: document, path: '' };
  if (typeof document !== 'object' || document === null || Array.isArray(document))
    return { code: 'document.type', path: 'document', got: describe(document), wanted: 'an object' };
  const format = child(root, 'format').value;
  if (format !== name)
    return { code: 'document.format', path: 'format', got: describe(format), wanted: JSON.stringify(name) };
  const version = child(root, 'version').value;
  const newest = steps.length + 1;
  const at = { path: 'version', got: describe(version) };
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return { ...at, code: 'document.version', wanted: `a whole number from 1 to ${newest}` };
  if (version <= newest) return undefined;
  const wanted = `at most ${newest}: this file was saved by a newer Shimwright and is left as it is`;
  return { ...at, code: 'document.newer-version', wanted };
}

function readDocument<Document>(document: unknown, format: Format<Document>): Checked<Document> {
  const fault = headFault(document, format);
  if (fault) return refused([fault]);
  const old = document as Record<string, unknown> & { version: number };
  return format.validate(migrate(old, old.version, format.steps));
}

function decode<Document>(text: string, format: Format<Document>): Checked<Document> {
  const json = parseJson(text);
  return json.ok ? readDocument(json.document, format) : json;
}

/** Reads a saved project. @returns the document at today's version, or every fault found */
export const decodeProject = (text: string): Checked<Project> => decode(text, PROJECT);

/** Reads a stack file. @returns the document at today's version, or every fault found */
export const decodeStackFile = (text: string): Checked<StackFile> => decode(text, STACK);

/** Reads whichever of the two formats the text says it is. */
export function decodeAny(text: string): Checked<Project | StackFile> {
  const json = parseJson(text);
  if (!json.ok) return json;
  if (formatOf(json.document) === PROJECT_FORMAT) return readDocument(json.document, PROJECT);
  if (formatOf(json.document) === STACK_FORMAT) return readDocument(json.document, STACK);
  const got = describe(formatOf(json.document));
  const wanted = `${JSON.stringify(PROJECT_FORMAT)} or ${JSON.stringify(STACK_FORMAT)}`;
  return refused([{ code: 'document.format', path: 'format', got, wanted }]);
}

const pretty = (document: unknown): string => `${JSON.stringify(document, null, 2)}\n`;

/** Text to save: two spaces a level, keys in the order of the document, a line break at the end. */
export const encodeProject = (document: Project): string => pretty(document);
export const encodeStackFile = (document: StackFile): string => pretty(document);
