/** Words laid on lines of at most so many characters; a longer word has a line of its own. */
export function fold(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const joined = `${lines[lines.length - 1]} ${word}`;
    if (lines.length > 0 && joined.length <= width) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
}
