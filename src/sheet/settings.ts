/** Every number of a part of a build, by the key it has in the document, and what differs between two such parts. */
import { settingWords as words } from './text/settings.ts';

/** What a number of the document is, by the ending of its key. */
export type SettingKind = 'springRate' | 'length' | 'force' | 'modulus' | 'strength' | 'angle' | 'count' | 'plain';

/** Writes a number of the document with its unit, as the person has chosen. */
export type Writer = (kind: SettingKind, value: number) => string;

export interface SettingDifference {
  readonly name: string;
  readonly from: string;
  readonly to: string;
}

type Leaves = ReadonlyMap<string, unknown>;

function leavesOf(part: unknown, path = ''): [string, unknown][] {
  if (typeof part !== 'object' || part === null || Array.isArray(part)) return part === undefined ? [] : [[path, part]];
  return Object.entries(part).flatMap(([key, value]) => leavesOf(value, path === '' ? key : `${path}.${key}`));
}

const KINDS: readonly (readonly [ending: RegExp, kind: SettingKind])[] = [
  [/_N_mm$/, 'springRate'],
  [/_mm$/, 'length'],
  [/_N$/, 'force'],
  [/_GPa$/, 'modulus'],
  [/_MPa$/, 'strength'],
  [/_deg$/, 'angle'],
  [/(^|\.)(count|clicks|clickCount)$/, 'count'],
];

const kindOf = (path: string): SettingKind => KINDS.find(([ending]) => ending.test(path))?.[1] ?? 'plain';

export const nameOf = (path: string): string =>
  Object.hasOwn(words.names, path) ? words.names[path] : words.unknown(path);

function written(leaves: Leaves, path: string, write: Writer): string {
  const value = leaves.get(path);
  if (value === undefined) return words.absent;
  return typeof value === 'number' ? write(kindOf(path), value) : JSON.stringify(value);
}

/** The numbers of one part, in the order of the document. */
export function settingsIn(part: object, write: Writer): { readonly name: string; readonly value: string }[] {
  const leaves = new Map(leavesOf(part));
  return [...leaves.keys()].map((path) => ({ name: nameOf(path), value: written(leaves, path, write) }));
}

/**
 * What differs, setting by setting; a part that only one of them has is told by all its numbers.
 * @param writeFrom of the first of two numbers, which may leave the unit to the second
 */
export function differingSettings(
  before: object | undefined,
  after: object | undefined,
  write: Writer,
  writeFrom: Writer = write,
): SettingDifference[] {
  const [a, b] = [before, after].map((part) => new Map(leavesOf(part)));
  const paths = [...new Set([...a.keys(), ...b.keys()])].filter(
    (path) => JSON.stringify(a.get(path)) !== JSON.stringify(b.get(path)),
  );
  return paths.map((path) => ({
    name: nameOf(path),
    from: written(a, path, b.has(path) ? writeFrom : write),
    to: written(b, path, write),
  }));
}
