/** Checks a document that is already in memory, such as one a person is editing: all faults at once, each at its field. */
import type { InputFault } from '../units/fault.ts';
import type { Place } from './place.ts';
import type { Project, StackFile } from './project.ts';
import { projectRelations } from './project-relations.ts';
import { projectSchema } from './project-schema.ts';
import { shapeFaults } from './shape-faults.ts';
import { stackRelations } from './stack-relations.ts';
import { stackFileSchema } from './stack-schema.ts';
import type { z } from './zod.ts';

export type Checked<Document> =
  | { readonly ok: true; readonly document: Document }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** A broken file can hold a fault in each of its entries; beyond this many, only how many more there are is told. */
export const MAX_FAULTS = 200;

export const refused = (faults: readonly InputFault[]): { ok: false; faults: readonly InputFault[] } => ({
  ok: false,
  faults: faults.length <= MAX_FAULTS ? faults : [...faults.slice(0, MAX_FAULTS), more(faults.length - MAX_FAULTS)],
});

const more = (count: number): InputFault => ({
  code: 'document.more-faults',
  path: 'document',
  got: `${count} more faults`,
  wanted: 'none',
});

function check<Document>(
  schema: z.ZodType<Document>,
  relations: (root: Place) => InputFault[],
  document: unknown,
): Checked<Document> {
  const parsed = schema.safeParse(document);
  const shape = parsed.success ? [] : shapeFaults(parsed.error.issues, document);
  const told = new Set(shape.map(({ path }) => path));
  const related = relations({ value: document, path: '' }).filter(({ path }) => !told.has(path));
  const faults = [...shape, ...related];
  return parsed.success && faults.length === 0 ? { ok: true, document: parsed.data } : refused(faults);
}

/** @returns the document with empty lists and notes filled in, or every fault; the argument is left as it is. */
export const validateProject = (document: unknown): Checked<Project> =>
  check<Project>(projectSchema, projectRelations, document);

/** @returns the document, or every fault; the argument is left as it is. */
export const validateStackFile = (document: unknown): Checked<StackFile> =>
  check<StackFile>(stackFileSchema, stackRelations, document);
