/** Holds a new run of the continuum model against the stored values of a case. */
import type { Expected } from '../../src/proof/proof-case.ts';
import type { NamedQuantity, QuantityKind } from './quantities.ts';

export interface Deviation {
  readonly kind: QuantityKind;
  readonly name: string;
  /** Relative deviation. */
  readonly share: number;
  readonly allowed: number;
}

/**
 * Another mesh of the same model may differ so much; below `from` the absolute size of that is allowed.
 * Forces of seat and plate are differences, so they get more.
 */
const ALLOWED: Readonly<Record<QuantityKind, { share: number; from: number }>> = {
  lift: { share: 0.003, from: 0.01 },
  stress: { share: 0.01, from: 20 },
  force: { share: 0.02, from: 5 },
};

/** Worst deviation of each kind of quantity that both have. @throws Error when they share none */
export function worstDeviations(quantities: readonly NamedQuantity[], { quantities: stored }: Expected): Deviation[] {
  const all = quantities.flatMap(({ name, kind, value }): Deviation[] => {
    if (!Object.hasOwn(stored, name)) return [];
    const { share: allowed, from } = ALLOWED[kind];
    const expected = stored[name].value;
    return [{ kind, name, allowed, share: Math.abs(value - expected) / Math.max(Math.abs(expected), from) }];
  });
  if (all.length === 0) throw new Error('the case shares no quantity with the run');
  return (Object.keys(ALLOWED) as QuantityKind[]).flatMap((kind) =>
    all
      .filter((deviation) => deviation.kind === kind)
      .sort((a, b) => b.share - a.share)
      .slice(0, 1),
  );
}
