/** Numbers with their words. The rules of a language come from Intl; a translation brings as many forms as its own has. */
const RULES = new Intl.PluralRules('en');

export const plural = (n: number, one: string, many: string): string =>
  `${n} ${RULES.select(n) === 'one' ? one : many}`;
