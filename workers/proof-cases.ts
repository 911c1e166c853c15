/** The reference cases as the build takes them along: their texts, unread, so that a spoilt one spoils nothing else. */
import type { CaseTexts } from '../src/proof/report.ts';

const TEXTS: Readonly<Record<string, string>> = import.meta.glob(
  '../reference-cases/*/*/{case.json,expected.json,SOURCE.md}',
  { query: '?raw', import: 'default', eager: true },
);

const PART_OF_FILE: Readonly<Record<string, keyof CaseTexts>> = {
  'case.json': 'case',
  'expected.json': 'expected',
  'SOURCE.md': 'source',
};

/** Every folder that holds one of the three files, by name. */
export const proofCases: readonly CaseTexts[] = gather(TEXTS);

function gather(texts: Readonly<Record<string, string>>): CaseTexts[] {
  const folders = new Map<string, CaseTexts>();
  for (const [path, text] of Object.entries(texts)) {
    const [field, id, file] = path.split('/').slice(-3);
    const folder = `${field}/${id}`;
    folders.set(folder, { ...(folders.get(folder) ?? { folder }), [PART_OF_FILE[file]]: text });
  }
  return [...folders.values()].sort((a, b) => (a.folder < b.folder ? -1 : 1));
}
