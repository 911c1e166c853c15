/** Names of exported files: the project, what it is, the ending. */
import { fileNameFor } from '../storage/download.ts';

const stem = (words: string): string => fileNameFor(words).replace(/\.shimwright\.json$/, '');

/** `Trail rear`, `oil paths`, `svg` to `trail-rear-oil-paths.svg`. */
export const exportName = (project: string, what: string, ending: string): string =>
  `${stem(project)}-${stem(what)}.${ending}`;
