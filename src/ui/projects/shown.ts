/** What the projects view shows, and how it writes days and sizes. */
import { signal } from '@preact/signals';
import { lockName } from '../storage/access.ts';
import { withDb } from '../storage/connection.ts';
import { heldNames } from '../storage/hold.ts';
import { type Aside, listAside, listProjects, type ShelfEntry } from '../storage/shelf.ts';
import { listenToTabs } from '../storage/tabs.ts';

export interface Shelf {
  readonly kept: readonly ShelfEntry[];
  readonly deleted: readonly ShelfEntry[];
  readonly aside: readonly Aside[];
  readonly isHeld: (id: string) => boolean;
}

const NOTHING: Shelf = { kept: [], deleted: [], aside: [], isHeld: () => false };

export const shelf = signal<Shelf>(NOTHING);

/** Which page of the view is open: all projects, or the saved states of one. */
export type Page =
  | { readonly kind: 'all'; readonly atNew?: boolean }
  | { readonly kind: 'states'; readonly id: string; readonly name: string };
export const page = signal<Page | undefined>(undefined);

/** The last thing done or refused, told inside the view. */
export interface Said {
  readonly message: string;
  readonly tone?: 'problem';
  readonly undo?: () => void;
}
export const said = signal<Said | undefined>(undefined);

export async function refresh(): Promise<void> {
  const held = await heldNames();
  const read = await withDb(async (db) => ({ entries: await listProjects(db), aside: await listAside(db) }));
  if (!read) return;
  shelf.value = {
    kept: read.entries.filter(({ deletedAt }) => deletedAt === undefined),
    deleted: read.entries.filter(({ deletedAt }) => deletedAt !== undefined),
    aside: read.aside,
    isHeld: (id) => held.has(lockName(id)),
  };
}

export function showAll(): void {
  page.value = { kind: 'all' };
  void refresh();
}

/** The same, at what a new project can start from. */
export function showNew(): void {
  page.value = { kind: 'all', atNew: true };
  void refresh();
}

export function closeView(): void {
  page.value = undefined;
  said.value = undefined;
}

listenToTabs(({ kind }) => {
  if (page.value && (kind === 'saved' || kind === 'shelf-changed')) void refresh();
});

const minutes = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
const seconds = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'medium' });
export const writeDay = (time: number): string => minutes.format(time);
export const writeMoment = (time: number): string => seconds.format(time);

const sizes = new Intl.NumberFormat(undefined, { maximumFractionDigits: 1 });
export const writeSize = (bytes: number): string =>
  bytes < 1_000_000 ? `${sizes.format(bytes / 1000)} kB` : `${sizes.format(bytes / 1_000_000)} MB`;
