/**
 * What a refusal wants, by its code. The layers that refuse say it in English, with the values in the order of the sentence;
 * a translation puts its own sentence beside the code, and what it leaves out stays English.
 */
import type { InputFault } from '../../units/fault.ts';

/** @param values the numbers of the English sentence, in its order and in the unit of the fault */
type Sentence = (values: readonly string[]) => string;

const SENTENCES: Readonly<Record<string, Sentence>> = {};

const VALUES = /-?\d+(?:[.,]\d+)?(?:e-?\d+)?/g;

export function wantedInWords(
  { code, wanted }: Pick<InputFault, 'code' | 'wanted'>,
  sentences: Readonly<Record<string, Sentence>> = SENTENCES,
): string {
  if (!Object.hasOwn(sentences, code)) return wanted;
  return sentences[code](wanted.match(VALUES) ?? []);
}
