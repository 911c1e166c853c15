/** Lifts an older document to today's version, one version at a time. */

/** Turns a document of version n into one of version n + 1, keeping fields it does not know. */
export type Step = (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/**
 * @param steps steps[0] leads from version 1 to 2, steps[1] from 2 to 3, and so on; version = steps.length + 1 is today's
 * @param version the version the document says it has, 1 … steps.length + 1
 */
export function migrate(document: Record<string, unknown>, version: number, steps: readonly Step[]): unknown {
  return steps
    .slice(version - 1)
    .reduce<Record<string, unknown>>((doc, step, index) => ({ ...step(doc), version: version + index + 1 }), document);
}
