/**
 * A reference case: what is computed, what an outside source says, how far apart the two may be and why.
 * Written as `reference-cases/<field>/<id>/case.json` and `expected.json`; the same two documents serve tests and page.
 */
import { z } from '../model/zod.ts';
import { InputError } from '../units/fault.ts';

/**
 * - `exact`: a mathematical solution, recomputed
 * - `printed`: digits of a publication, with its rounding and its slips
 * - `curve`: read off a diagram
 * - `own`: our own derivation by a different method, or our own run of a general-purpose program
 * - `regression`: a number of this program, which flags a change and validates nothing
 */
export const CASE_KINDS = ['exact', 'printed', 'curve', 'own', 'regression'] as const;
export type CaseKind = (typeof CASE_KINDS)[number];

const caseSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  field: z.enum(['plate', 'stack', 'fluid', 'gas', 'hydraulics', 'cycle']),
  title: z.string().min(1),
  kind: z.enum(CASE_KINDS),
  evaluator: z.string().min(1),
  input: z.record(z.string(), z.unknown()),
});

const reason = z.string().min(12);
/** Relative tolerances stay below 0.1, so that an expected value moved by five of them is still of its own size. */
const toleranceSchema = z.union([
  z.strictObject({ relative: z.number().positive().max(0.1), reason }),
  z.strictObject({ absolute: z.number().positive(), reason }),
]);

const quantitySchema = z.strictObject({
  value: z.number(),
  unit: z.string().min(1),
  tolerance: z.string().min(1),
  note: z.string().min(1).optional(),
});

const expectedSchema = z.strictObject({
  tolerances: z.record(z.string(), toleranceSchema),
  quantities: z.record(z.string(), quantitySchema),
});

export type ProofCase = z.infer<typeof caseSchema>;
export type Tolerance = z.infer<typeof toleranceSchema>;
export type ExpectedQuantity = z.infer<typeof quantitySchema>;
export type Expected = z.infer<typeof expectedSchema>;

/** @throws InputError `proof.case.shape` with the field that is wrong */
export const parseCase = (document: unknown): ProofCase => parseWith(caseSchema, document, 'proof.case.shape');

/** @throws InputError `proof.expected.shape`, `proof.expected.tolerance` when a quantity names no tolerance of the file */
export function parseExpected(document: unknown): Expected {
  const expected = parseWith(expectedSchema, document, 'proof.expected.shape');
  if (Object.keys(expected.quantities).length === 0) {
    throw new InputError({ code: 'proof.expected.shape', path: 'quantities', got: 'none', wanted: 'at least one' });
  }
  for (const [name, { value, tolerance }] of Object.entries(expected.quantities)) {
    const allowed = expected.tolerances[tolerance];
    const usable = allowed && ('absolute' in allowed || value !== 0);
    if (usable) continue;
    const wanted = `one of ${Object.keys(expected.tolerances).join(', ')}; a value of 0 needs an absolute one`;
    throw new InputError({ code: 'proof.expected.tolerance', path: `quantities.${name}`, got: tolerance, wanted });
  }
  return expected;
}

/** Reads a document by a schema. @throws InputError with the first field at fault */
export function parseWith<Document>(schema: z.ZodType<Document>, document: unknown, code: string): Document {
  const parsed = schema.safeParse(document);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new InputError({
    code,
    path: issue.path.join('.') || 'document',
    got: 'something else',
    wanted: issue.message,
  });
}
