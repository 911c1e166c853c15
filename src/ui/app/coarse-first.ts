/** Every fourth, then every second, then the rest: the whole range stands early, and gets finer. */
export function coarseFirst<Item>(items: readonly Item[]): Item[] {
  const every = (step: number, from: number) => items.filter((_, i) => i % step === from);
  return [...every(4, 0), ...every(4, 2), ...every(2, 1)];
}
