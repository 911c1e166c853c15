/** Words on lines of a limited length: pictures have no line breaks of their own. */

/** Words that are longer than a line are cut in pieces. */
export function wrapWords(words: string, letters: number): string[] {
  const pieces = words
    .split(/\s+/)
    .filter((word) => word !== '')
    .flatMap((word) => word.match(new RegExp(`.{1,${letters}}`, 'gsu')) ?? []);
  const lines: string[] = [];
  for (const piece of pieces) {
    const longer = lines.length === 0 ? piece : `${lines[lines.length - 1]} ${piece}`;
    if (lines.length > 0 && longer.length <= letters) lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines;
}
