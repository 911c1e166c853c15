/** Numbers of a normal distribution out of a seed: the same seed gives the same numbers. */

/** Marsaglia's xorshift of 32 bits, J. Stat. Software 8 (2003) 14 (from memory); in (0, 1). */
function uniforms(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (state + 0.5) / 2 ** 32;
  };
}

/** Box and Muller: mean 0, standard deviation 1. */
export function normals(seed: number, count: number): number[] {
  const next = uniforms(seed);
  for (let i = 0; i < 20; i++) next();
  return Array.from({ length: count }, () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next()));
}
