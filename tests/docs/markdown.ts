/** What the pages for people claim about the tree: read out of their Markdown, checked by the specs. */
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { ROOT } from '../architecture/import-graph.ts';

const SKIPPED = new Set(['node_modules', 'dist', '.git']);

/** Every Markdown file of the repository, by its path from the root. */
export const markdownFiles = (folder = ROOT): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return SKIPPED.has(entry.name) ? [] : markdownFiles(path);
    return entry.name.endsWith('.md') ? [relative(ROOT, path)] : [];
  });

const withoutBlocks = (text: string): string => text.replace(/```[\s\S]*?```/g, '');

/** Links to files that are not there. */
export function brokenLinks(path: string, text: string): string[] {
  const links = [...withoutBlocks(text).matchAll(/\]\(([^)\s]+)\)/g)].map(([, link]) => link.replace(/#.*$/, ''));
  const local = links.filter((link) => link !== '' && !/^[a-z]+:/.test(link));
  return local.filter((link) => !existsSync(join(ROOT, dirname(path), link)));
}

const FOLDERS = 'src|tests|workers|scripts|docs|reference-cases|schema|\\.ci';

/** Paths in `code` that are not there. What a build makes (dist) and a path with a gap in it (…, *, <id>) is no claim. */
export function missingPaths(text: string): string[] {
  const spans = [...withoutBlocks(text).matchAll(/`([^`\n]+)`/g)].map(([, span]) => span);
  const paths = spans.filter((span) => new RegExp(`^(${FOLDERS})(/[\\w./-]*)?$`).test(span));
  return paths.filter((span) => !existsSync(join(ROOT, span)));
}

/** Names of npm scripts that a page tells people to run. */
export const scriptsNamed = (text: string): string[] =>
  [...text.matchAll(/\bnpm (?:run (?:-s )?)?([a-z][a-z:-]*)/g)].map(([whole, name]) =>
    /^npm (run|start|test)/.test(whole) ? name : '',
  );

/** Blocks of a console session: one command behind `$`, then what it prints. */
export const sessions = (text: string): { command: string; printed: string }[] =>
  [...text.matchAll(/```console\n\$ ([^\n]+)\n([^$]*?)```/g)].map(([, command, printed]) => ({ command, printed }));

/** Rows of the table under a heading, without its head, each a list of cells. */
export function tableUnder(heading: string, text: string): string[][] {
  const section = text.slice(text.indexOf(`\n## ${heading}\n`) + 1).split('\n## ', 1)[0];
  const rows = section.split('\n').filter((line) => line.startsWith('|'));
  return rows.slice(2).map((row) =>
    row
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}
