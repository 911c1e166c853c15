/** Names of the theories that gave a result. */
import type { StackTheories } from '../../../workers/protocol.ts';
import { text } from '../text/en.ts';
import type { ForceCurve, Theory } from './solved.ts';

const STACKS = ['compression', 'rebound', 'base'] as const;

export const theoriesOf = ({ stacks }: ForceCurve): StackTheories => ({
  compression: stacks.compression.theory,
  rebound: stacks.rebound.theory,
  ...(stacks.base && { base: stacks.base.theory }),
});

/** One name where all stacks have the same, else each with its stacks. */
export function theoriesInWords(theories: StackTheories): string {
  const stacksOf = new Map<Theory, string[]>();
  for (const stack of STACKS) {
    const theory = theories[stack];
    if (theory) stacksOf.set(theory, [...(stacksOf.get(theory) ?? []), text.theories.stacks[stack]]);
  }
  const used = [...stacksOf];
  if (used.length === 1) return text.theory[used[0][0]];
  return used.map(([theory, stacks]) => text.theories.ofStacks(text.theory[theory], stacks.join(', '))).join(', ');
}

/** Of several builds: once where they agree. */
export function theoriesOfBuilds(
  builds: readonly { readonly name: string; readonly theories: StackTheories }[],
): string {
  const told = builds.map(({ name, theories }) => [name, theoriesInWords(theories)] as const);
  const different = new Set(told.map(([, used]) => used));
  if (different.size <= 1) return told[0]?.[1] ?? '';
  return told.map(([name, used]) => text.theories.ofBuild(name, used)).join('; ');
}
