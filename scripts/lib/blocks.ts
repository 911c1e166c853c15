/** Parts of a page that a script writes, each between two marks: `<!-- name: begin -->` and `<!-- name: end -->`. */

/** @returns the page with every block between its marks; @throws Error when the marks of one are not there */
export function withBlocks(page: string, blocks: Readonly<Record<string, string>>): string {
  return Object.entries(blocks).reduce((text, [name, block]) => withBlock(text, name, block), page);
}

function withBlock(page: string, name: string, block: string): string {
  const begin = `<!-- ${name}: begin -->`;
  const start = page.indexOf(begin);
  const end = page.indexOf(`<!-- ${name}: end -->`);
  if (start < 0 || end < start) throw new Error(`the page has no marks for ${name}`);
  return `${page.slice(0, start)}${begin}\n\n${block}\n\n${page.slice(end)}`;
}
