/** What computes the quantities of a reference case: one function of its input, pure, with failure as a value. */
import type { z } from '../model/zod.ts';
import { parseWith } from './proof-case.ts';

export type Quantities = Readonly<Record<string, number>>;

export type Evaluation =
  | { readonly status: 'evaluated'; readonly quantities: Quantities }
  | { readonly status: 'failed'; readonly reason: string };

export type Evaluator = (input: unknown) => Evaluation;

export const evaluated = (quantities: Quantities): Evaluation => ({ status: 'evaluated', quantities });
export const failed = (reason: string): Evaluation => ({ status: 'failed', reason });

/** An evaluator that checks its input first. @throws InputError `proof.case.input` naming the field */
export const evaluator =
  <Input>(schema: z.ZodType<Input>, run: (input: Input) => Evaluation): Evaluator =>
  (input) =>
    run(parseWith(schema, input, 'proof.case.input'));

/** The same evaluation for each row of a case, its quantities named `label quantity`; the first failure ends it. */
export function evaluateRows<Row extends { readonly label: string }>(
  rows: readonly Row[],
  run: (row: Row) => Evaluation,
): Evaluation {
  const all: Record<string, number> = {};
  for (const row of rows) {
    const evaluation = run(row);
    if (evaluation.status === 'failed') return failed(`${row.label}: ${evaluation.reason}`);
    for (const [name, value] of Object.entries(evaluation.quantities)) all[`${row.label} ${name}`] = value;
  }
  return evaluated(all);
}
