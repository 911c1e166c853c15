/** A new build that starts as a copy of another. */
import type { Build } from './project.ts';

const LONGEST_ID = 60;

/** `Softer rebound, 2nd try` to `softer-rebound-2nd-try`, with a number behind it when that id is taken. */
export function idFor(name: string, taken: readonly string[]): string {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.replace(/[^\p{L}\p{N}]+/gu, '-').slice(0, LONGEST_ID);
  const id = words.replace(/^-+|-+$/g, '') || 'build';
  if (!taken.includes(id)) return id;
  let next = 2;
  while (taken.includes(`${id}-${next}`)) next++;
  return `${id}-${next}`;
}

/**
 * @returns a deep copy under a new name, with an id that none of `taken` has; unknown fields come along, measurements stay with the
 *   build that was measured
 */
export function newBuildFrom(build: Build, name: string, taken: readonly string[]): Build {
  const { measurements: _ofTheOther, ...parts } = build;
  const copy = JSON.parse(JSON.stringify(parts)) as Build;
  return { ...copy, id: idFor(name, taken), name, notes: '' };
}
