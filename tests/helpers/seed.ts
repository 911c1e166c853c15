const DEFAULT_SEED = 20260611;

/**
 * The seed of the random cases.
 * @throws Error in CI when FC_SEED is missing, and anywhere when it is no whole number
 */
export function seedFrom({ CI, FC_SEED }: { CI?: string; FC_SEED?: string }): number {
  if (!FC_SEED && CI) throw new Error('FC_SEED is not set, and CI runs with a known seed only');
  const seed = Number(FC_SEED || DEFAULT_SEED);
  if (!Number.isSafeInteger(seed)) throw new Error(`FC_SEED: got ${FC_SEED}, wanted a whole number`);
  return seed;
}
